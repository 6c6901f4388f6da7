import type { Vector3 } from "../../geometry/matrix3";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import { doorHinges } from "../door-hinges";
import type { Opening, Wall } from "../plan";
import { openingRims } from "./opening-rim";
import { prism } from "./prism";
import type { Solid, SolidLine } from "./solid";
import type { WallSpace } from "./wall-space";

/** How far a leaf stands open, radians. */
export const AJAR = (62 * Math.PI) / 180;
/** A leaf's thickness, metres: 1 3/4 in, common practice, no source. */
export const LEAF_M = 0.044;
/** Panels: the stiles and rails left round them as a share of the leaf's width, and where the lock rail stands, as shares of its height. */
const STILE = 0.16;
const RAILS = [0.07, 0.42, 0.5, 0.94] as const;
/** Height of the knob above the leaf's foot as a share of its height; its reach across, metres. */
const KNOB = { up: 0.46, in: 0.07, size: 0.05 } as const;

/**
 * The leaves of a door ajar, each hung at its jamb on the face it swings toward, as long as its share of the opening. Its foot is
 * level, and clears the floor under it. Panels and a knob are drawn on both sides.
 */
export function doorLeaves(space: WallSpace, stage: Pick<Stage, "rake">, opening: Opening): readonly Solid[] {
  const rim = openingRims(space, stage).find((one) => one.opening === opening);
  if (!rim) return [];
  const { wall, line } = space;
  const length = (rim.end - rim.start) / opening.leaves;
  return doorHinges(line, opening).flatMap((hinge) => {
    const hung = hangLeaf(space, wall, hinge === "start" ? rim.start : rim.end, hinge, opening, length);
    const foot = Math.max(
      ...hung.map(([, y]) => floorHeight(stage, y) + wall.base),
      rim.sill ?? Number.NEGATIVE_INFINITY,
    );
    if (!(foot < rim.head)) return [];
    const id = `${wall.id}.${opening.id}.leaf${opening.leaves === 2 ? `.${hinge}` : ""}`;
    const body = prism({
      id,
      element: wall.id,
      kind: "leaf",
      outline: counterClockwise(hung),
      bottom: foot,
      top: rim.head,
    });
    return [{ faces: body.faces, lines: [...body.lines, ...panels(id, wall, body, hung, foot, rim.head)] }];
  });
}

/** The leaf's outline: the hinge, its free edge, and the same on its other side. */
function hangLeaf(
  space: WallSpace,
  wall: Wall,
  u: number,
  hinge: "start" | "end",
  opening: Pick<Opening, "swing">,
  length: number,
): readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint] {
  const toward = hinge === "start" ? 1 : -1;
  const out = opening.swing === "offstage" ? 1 : -1;
  const v = opening.swing === "offstage" ? wall.thickness : 0;
  const [cos, sin] = [Math.cos(AJAR), Math.sin(AJAR)];
  const place = (a: number, b: number): PlanPoint => {
    // a along the leaf, b through it; shut, it lies within the wall.
    const [x, y] = space.at(u + toward * (a * cos + b * sin), v + out * (a * sin - b * cos), 0);
    return [x, y];
  };
  return [place(0, 0), place(length, 0), place(length, LEAF_M), place(0, LEAF_M)];
}

function counterClockwise(ring: readonly PlanPoint[]): readonly PlanPoint[] {
  const area = ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as PlanPoint;
    return sum + x * v - u * y;
  }, 0);
  return area > 0 ? ring : [...ring].reverse();
}

function panels(
  id: string,
  wall: Wall,
  { faces }: Solid,
  [hinge, free, freeBack, hingeBack]: readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint],
  foot: number,
  head: number,
): readonly SolidLine[] {
  const sides = [
    ["front", hinge, free],
    ["back", hingeBack, freeBack],
  ] as const;
  const length = Math.hypot(free[0] - hinge[0], free[1] - hinge[1]);
  return sides.flatMap(([name, from, to]) => {
    const at = (share: number, up: number): StagePoint => [
      from[0] + (to[0] - from[0]) * share,
      from[1] + (to[1] - from[1]) * share,
      foot + (head - foot) * up,
    ];
    const on = faces.findIndex(({ outline }) => [at(0, 0), at(1, 1)].every((corner) => outline.some(same(corner))));
    const ring = (part: string, corners: readonly StagePoint[]) =>
      corners.map(
        (corner, i): SolidLine => ({
          id: `${id}.${name}.${part}.${i + 1}`,
          element: wall.id,
          from: corner,
          to: corners[(i + 1) % corners.length] as StagePoint,
          faces: [on],
          kind: "detail",
        }),
      );
    const panel = (part: string, low: number, high: number) =>
      ring(part, [at(STILE, low), at(1 - STILE, low), at(1 - STILE, high), at(STILE, high)]);
    const [half, tall] = [KNOB.size / 2 / length, KNOB.size / 2 / (head - foot)];
    const middle = 1 - KNOB.in / length;
    const knob = [
      at(middle, KNOB.up - tall),
      at(middle + half, KNOB.up),
      at(middle, KNOB.up + tall),
      at(middle - half, KNOB.up),
    ];
    return [...panel("low", RAILS[0], RAILS[1]), ...panel("high", RAILS[2], RAILS[3]), ...ring("knob", knob)];
  });
}

function same([x, y, z]: Vector3): (other: Vector3) => boolean {
  return (other) => Math.hypot(other[0] - x, other[1] - y, other[2] - z) < 1e-9;
}
