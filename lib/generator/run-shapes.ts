import type { Dice } from "./dice";

export const SHAPES = ["corner", "box", "cut-corner", "jog", "cut-corner-and-jog", "apex", "bay"] as const;
/**
 * The ground plans of rooms: a corner of two walls, a box of three, a box with a corner cut off by a raking wall, one whose
 * back wall steps upstage, both of these, a room on its corner (two long raking walls), and a box with a splayed bay.
 */
export type Shape = (typeof SHAPES)[number];

export type RunStyle = {
  readonly shapes: readonly Shape[];
  /** Depth of the back wall, feet, least and most. */
  readonly deep: readonly [least: number, most: number];
  /** How far each side wall comes in on its way upstage, feet, least and most; 0 and 0 for walls square to the plaster line. */
  readonly splay: readonly [least: number, most: number];
  /** How far the back wall's ends differ in depth, feet at most; 0 for a wall parallel to the plaster line. */
  readonly skew: number;
  readonly returns: boolean;
};

type Spot = readonly [x: number, y: number];

/** The corners of a run, feet, from stage right round to stage left, for an opening this half as wide. Either hand alike. */
export function drawRun(dice: Dice, half: number, style: RunStyle): readonly Spot[] {
  const spots = shapeOf(dice, half, style);
  return dice.side() > 0 ? spots : spots.map(([x, y]): Spot => [-x, y]).reverse();
}

function shapeOf(dice: Dice, half: number, style: RunStyle): readonly Spot[] {
  const shape = dice.pick(style.shapes);
  const a: Spot = [-(half - dice.half(1.5, 4)), dice.half(1, 3)];
  const d: Spot = [half - dice.half(1.5, 4), dice.half(1, 3)];
  const deep = dice.half(...style.deep);
  const skew = style.skew === 0 ? 0 : dice.side() * dice.half(1.5, style.skew);
  const b: Spot = [a[0] + dice.half(...style.splay), deep];
  const c: Spot = [d[0] - dice.half(...style.splay), deep + skew];
  switch (shape) {
    case "corner":
      return [a, b, [dice.half(3, half - 5), deep + skew]];
    case "box":
      return [a, b, c, d];
    case "cut-corner":
      return [a, ...cutCorner(dice, a, b), c, d];
    case "jog":
      return [a, b, ...jog(dice, b, c), d];
    case "cut-corner-and-jog":
      return [a, ...cutCorner(dice, a, b), ...jog(dice, b, c), d];
    case "apex":
      return apex(dice, a, d, deep);
    case "bay":
      return [a, b, ...bay(dice, b, c), c, d];
  }
}

/** The corner b given up for a raking wall across it. */
function cutCorner(dice: Dice, [ax, ay]: Spot, [bx, by]: Spot): readonly Spot[] {
  const down = dice.whole(3, 5);
  const along = (by - down - ay) / (by - ay);
  return [
    [Math.round((ax + (bx - ax) * along) * 2) / 2, by - down],
    [bx + dice.whole(3, 5), by],
  ];
}

/** A back wall that steps: its deeper part is the one toward the middle, and the return between them rakes, so that it is seen. */
function jog(dice: Dice, [bx, by]: Spot, [cx, cy]: Spot): readonly Spot[] {
  const [step, splay] = [dice.whole(2, 4), dice.half(1, 2)];
  const x = dice.side() * dice.half(3, 7);
  const y = Math.round((by + ((cy - by) * (x - bx)) / (cx - bx)) * 2) / 2;
  return x < 0
    ? [
        [x, y],
        [x + splay, y + step],
        [cx, cy + step],
      ]
    : [
        [x - splay, y],
        [x, y - step],
        [cx, cy - step],
      ];
}

/** A room on its corner: short square sides, then two long raking walls to a point off the centre line. */
function apex(dice: Dice, a: Spot, d: Spot, deep: number): readonly Spot[] {
  const point: Spot = [dice.side() * dice.half(1.5, 5), deep + 1];
  const sides: readonly [Spot, Spot] = [
    [a[0] + dice.half(0, 1), a[1] + dice.half(3, 4.5)],
    [d[0] - dice.half(0, 1), d[1] + dice.half(3, 4.5)],
  ];
  return [a, sides[0], point, sides[1], d];
}

/** A splayed bay in the back wall. */
function bay(dice: Dice, [bx, by]: Spot, [cx, cy]: Spot): readonly Spot[] {
  const [half, deep, splay] = [dice.whole(4, 5), dice.whole(2, 4), dice.half(1.5, 2.5)];
  const middle = dice.whole(-2, 2);
  const y = (x: number) => Math.round((by + ((cy - by) * (x - bx)) / (cx - bx)) * 2) / 2;
  const [left, right] = [middle - half, middle + half];
  return [
    [left, y(left)],
    [left + splay, y(left) + deep],
    [right - splay, y(right) + deep],
    [right, y(right)],
  ];
}
