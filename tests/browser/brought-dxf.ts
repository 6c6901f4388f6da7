import { dxfText, type Group, line } from "../draft/bring/dxf-text";

type Feet = readonly [x: number, y: number];

/** A wall drawn as its two faces, closed at its ends, six inches thick: the onstage face from a to b, the other offstage of it. */
function wall([ax, ay]: Feet, [bx, by]: Feet, thickness = 0.5): Group[] {
  const length = Math.hypot(bx - ax, by - ay);
  const [ox, oy] = [(-(by - ay) / length) * thickness, ((bx - ax) / length) * thickness];
  return [
    line("WALLS", [ax, ay], [bx, by]),
    line("WALLS", [ax + ox, ay + oy], [bx + ox, by + oy]),
    line("WALLS", [ax, ay], [ax + ox, ay + oy]),
    line("WALLS", [bx, by], [bx + ox, by + oy]),
  ].flat();
}

/**
 * A box set as an office would draw it, in feet, far from the file's origin and a quarter turn round: a raking wall either side,
 * the back wall with a door in it, a centre line and a plaster line, lettering and a hatch.
 */
const BROUGHT_CORNERS: readonly Feet[] = [
  [-12, 3],
  [-9, 15],
  [9, 15],
  [12, 3],
];

/** Feet of the stage to feet of the file: a quarter turn counter-clockwise, and a long way off. */
export function toFile([x, y]: Feet): Feet {
  return [1000 - y, 2000 + x];
}

export function broughtDxf({ unit = 2 }: { readonly unit?: number } = {}): string {
  const [a, b, c, d] = BROUGHT_CORNERS as [Feet, Feet, Feet, Feet];
  const jambs: readonly [Feet, Feet] = [
    [-1.5, 15],
    [1.5, 15],
  ];
  const turned = (groups: readonly Group[]): Group[] => {
    const found: Group[] = [];
    let x = 0;
    for (const [code, value] of groups) {
      if (code === 10 || code === 11) x = Number(value);
      else if (code === 20 || code === 21) {
        const [fx, fy] = toFile([x, Number(value)]);
        found.push([code - 10, fx], [code, fy]);
      } else found.push([code, value]);
    }
    return found;
  };
  const entities = turned([
    ...wall(a, b),
    ...wall(b, jambs[0]),
    ...wall(jambs[1], c),
    ...wall(c, d),
    // The door: its leaf open upstage, hinged stage right, and the swing of its edge.
    ...line("DOORS", [-1.5, 15.5], [-1.5, 18.5]),
    ...line("DOORS", [-1.5, 15], [1.5, 15]),
    [0, "ARC"],
    [8, "DOORS"],
    [10, -1.5],
    [20, 15.5],
    [40, 3],
    // Degrees in the file, where the drawing lies a quarter turn round.
    [50, 90],
    [51, 180],
    ...line("CENTRE LINE", [0, -4], [0, 22]),
    ...line("PLASTER LINE", [-20, 0], [20, 0]),
    ...line("FURNITURE", [3, 6], [6, 6]),
    ...line("FURNITURE", [6, 6], [6, 9]),
    [0, "TEXT"],
    [8, "LETTERING"],
    [10, 0],
    [20, 8],
    [40, 1],
    [1, "THE LAMP ROOM"],
    [0, "HATCH"],
    [8, "HATCHING"],
    [10, 0],
    [20, 0],
  ]);
  return dxfText({
    HEADER:
      unit === 0
        ? []
        : [
            [9, "$INSUNITS"],
            [70, unit],
          ],
    ENTITIES: entities,
  });
}
