import { printLength } from "../measure/print-length";
import { centreVanishingPoint } from "../perspective/vanishing-point";
import { floorHeight } from "../stage/stage";
import { distancePointPart, landmark, type Sheet, type Side } from "./board";
import { floorDiagonalLoci } from "./floor-diagonals";
import { type Locus, layOff, level, NOTHING_M } from "./locus";
import type { Catalogue, Target } from "./target";

const PARTS = [
  { part: 1, name: "distance point", rank: 2 },
  { part: 2, name: "half distance point", rank: 3 },
  { part: 3, name: "third distance point", rank: 5 },
  { part: 4, name: "quarter distance point", rank: 4 },
] as const;

/** Lines through a target that need only the frame: its ray, the lines to the distance points, level lines. */
export function floorLoci(board: Sheet, target: Target, { placed }: Catalogue): readonly Locus[] {
  return [
    rayLocus(board, target),
    ...PARTS.flatMap((kind) => (["right", "left"] as const).map((side) => distanceLocus(board, target, kind, side))),
    ...backWallLoci(board, target),
    ...levelLoci(target, placed),
    ...floorDiagonalLoci(board, target),
  ];
}

function rayLocus(board: Sheet, { at: [x, y, z] }: Target): Locus {
  return {
    method: y < 0 ? "ray run forward" : z === 0 ? "ray to the CVP" : "true height",
    rank: 0,
    draw: (steps) => {
      const start = layOff(board, steps, x, z);
      const why = z === 0 ? "lines square to the plaster line all go there" : "that carries the height with it";
      return steps.line({
        through: [start.at, centreVanishingPoint(board.viewer)],
        toward: "centre vanishing point",
        say:
          y < 0
            ? `Draw from the CVP through ${start.say} and run the line on forward, over the apron: ${why}.`
            : `Draw from ${start.say} to the CVP: ${why}.`,
      });
    },
  };
}

const SHARES: Readonly<Record<number, string>> = { 2: "half the", 3: "a third of the", 4: "a quarter of the" };

/** Lines at 45 degrees run to the distance points; a half, third or quarter of the depth goes with a half, third or quarter of D. */
function distanceLocus(
  board: Sheet,
  { at: [x, y, z] }: Target,
  { part, name, rank }: (typeof PARTS)[number],
  side: Side,
): Locus {
  const toward = distancePointPart(board.viewer, part, side);
  const shift = side === "right" ? -y / part : y / part;
  return {
    method: name,
    rank,
    draw: (steps) => {
      const base = layOff(board, steps, x, 0);
      const start = layOff(board, steps, x + shift, z, base.foot);
      const size = printLength(Math.abs(shift), board.units);
      const depth = y < 0 ? "way to the plaster line" : "depth";
      const whole = printLength(Math.abs(y), board.units);
      const lies = `lies ${size} ${shift > 0 ? "right" : "left"} of ${base.say}`;
      const why =
        part === 1
          ? `it ${lies}, the whole ${depth}, and lines at 45° go there`
          : `it ${lies}, ${SHARES[part]} ${depth} of ${whole}, and ${SHARES[part]} distance goes with ${SHARES[part]} ${depth}`;
      return steps.line({
        through: [start.at, toward],
        toward: name,
        say:
          y < 0
            ? `Draw from the ${side} ${name} through ${start.say} and run the line on forward: ${why}.`
            : `Draw from ${start.say} to the ${side} ${name}: ${why}.`,
      });
    },
  };
}

function backWallLoci(board: Sheet, { at: [, y, z] }: Target): readonly Locus[] {
  const { stage } = board;
  if (Math.abs(y - stage.depth) > NOTHING_M) return [];
  return (["foot", "top"] as const).flatMap((part) => {
    const [a, b] = [landmark(board, `back wall ${part} left`), landmark(board, `back wall ${part} right`)];
    const height = part === "foot" ? floorHeight(stage, stage.depth) : stage.opening.height;
    if (!a || !b || Math.abs(z - height) > NOTHING_M) return [];
    const method = `back wall's ${part}`;
    return [
      {
        method,
        rank: 1,
        draw: (steps) =>
          steps.line({
            through: [a.at, b.at],
            toward: "back wall",
            say: `Draw the ${method} across: the point lies on it.`,
          }),
      } satisfies Locus,
    ];
  });
}

function levelLoci({ at: [, y, z] }: Target, placed: Catalogue["placed"]): readonly Locus[] {
  return placed
    .filter(({ stage }) => Math.abs(stage[1] - y) < NOTHING_M && Math.abs(stage[2] - z) < NOTHING_M)
    .map((point) => ({
      method: "level across",
      rank: 1,
      draw: (steps) =>
        steps.line({
          through: level(point.at),
          toward: "level",
          say: `Draw level across from ${point.say}, which has the same depth and height: lines parallel to the plaster line stay level.`,
        }),
    }));
}
