import { printLength } from "../measure/print-length";
import { centreVanishingPoint } from "../perspective/vanishing-point";
import type { PicturePoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import { landmark, type Sheet, type Side } from "./board";
import { type Locus, layOff, level, NOTHING_M } from "./locus";
import type { Steps } from "./steps";
import type { Target } from "./target";

/** The floor is halved this often at the most: to eighths. */
const HALVINGS = 3;

/** The corners of the drawn floor. */
type Floor = { readonly left: Edge; readonly right: Edge };
type Edge = { readonly near: PicturePoint; readonly far: PicturePoint };

/**
 * Lines through a target on the floor that the floor's own diagonals give: the diagonal itself, its depth level across
 * from where a ray meets the diagonal, and halves, quarters and eighths by crossing diagonals alone.
 */
export function floorDiagonalLoci(board: Sheet, { at: [x, y, z] }: Target): readonly Locus[] {
  const { stage } = board;
  const floor = drawnFloor(board);
  const onFloor = Math.abs(z - floorHeight(stage, y)) < NOTHING_M;
  if (!floor || !onFloor || y <= NOTHING_M || y > stage.depth + NOTHING_M) return [];
  const share = y / stage.depth;
  return [
    ...(["right", "left"] as const).flatMap((from) => diagonalLoci(board, floor, [x, y], from)),
    ...halvingLoci(floor, share),
  ];
}

function drawnFloor(board: Sheet): Floor | null {
  const edge = (side: Side): Edge | null => {
    const [near, far] = [landmark(board, `opening foot ${side}`), landmark(board, `back wall foot ${side}`)];
    return near && far && { near: near.at, far: far.at };
  };
  const [left, right] = [edge("left"), edge("right")];
  return left && right && { left, right };
}

function diagonalLoci(board: Sheet, floor: Floor, [x, y]: readonly [number, number], from: Side): readonly Locus[] {
  const { stage, viewer } = board;
  const half = stage.opening.width / 2;
  const across = (from === "right" ? 1 : -1) * half * (1 - (2 * y) / stage.depth);
  const [near, far] = from === "right" ? [floor.right.near, floor.left.far] : [floor.left.near, floor.right.far];
  const drawDiagonal = (steps: Steps) =>
    steps.line({
      through: [near, far],
      toward: "floor diagonal",
      say: `Draw the floor's diagonal, from the ${from} corner of the opening to the far corner of the back wall's foot.`,
    });
  const itself: readonly Locus[] =
    Math.abs(across - x) < NOTHING_M ? [{ method: "floor diagonal", rank: 2, draw: drawDiagonal }] : [];
  if (stage.rake !== 0) return itself; // on a rake the floor's rays run to a point that the sheet does not have
  const levelFromDiagonal: Locus = {
    method: "floor diagonals",
    rank: 7,
    draw: (steps) => {
      const start = layOff(board, steps, across, 0);
      const ray = steps.line({
        through: [start.at, centreVanishingPoint(viewer)],
        toward: "centre vanishing point",
        say: `Draw from ${start.say} to the CVP: the floor's diagonal takes all its width as it takes all its depth, so here it is ${printLength(y, board.units)} deep.`,
      });
      const crossing = steps.meet(ray, drawDiagonal(steps), "at the depth you want");
      return crossing === null
        ? null
        : steps.line({
            through: level(steps.at(crossing)),
            toward: "level",
            say: `Draw level across through crossing ${crossing}: all of that line has the same depth.`,
          });
    },
  };
  return [...itself, levelFromDiagonal];
}

/** The depth of a half, quarter or eighth of the floor, by crossing the diagonals of the part it halves, again and again. */
function halvingLoci(floor: Floor, share: number): readonly Locus[] {
  const path = halvings(share);
  return path === null
    ? []
    : [{ method: "crossing diagonals", rank: 6, draw: (steps) => drawHalvings(steps, floor, path) }];
}

/** Which part to halve next, near or far, until the share is the middle of the part; null when eighths do not reach it. */
function halvings(share: number): readonly ("near" | "far")[] | null {
  let [low, high] = [0, 1];
  const path: ("near" | "far")[] = [];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (Math.abs(share - middle) < NOTHING_M) return path;
    path.push(share < middle ? "near" : "far");
    if (share < middle) high = middle;
    else low = middle;
  }
  return null;
}

function drawHalvings(steps: Steps, floor: Floor, path: readonly ("near" | "far")[]): number | null {
  let part = floor;
  let name = "the floor";
  for (const half of [...path, null]) {
    const diagonal = (from: PicturePoint, to: PicturePoint, which: string) =>
      steps.line({ through: [from, to], toward: "floor diagonal", say: `Draw ${which} diagonal of ${name}.` });
    const middle = steps.meet(
      diagonal(part.left.near, part.right.far, "one"),
      diagonal(part.right.near, part.left.far, "the other"),
      `at the middle of ${name}: half its depth, not half its height on the paper`,
    );
    if (middle === null) return null;
    const across = steps.line({
      through: level(steps.at(middle)),
      toward: "level",
      say: `Draw level across through crossing ${middle}: all of that line has the same depth.`,
    });
    if (half === null || across === null) return across;
    const left = meetEdge(steps, across, floor.left, "left");
    const right = meetEdge(steps, across, floor.right, "right");
    if (left === null || right === null) return null;
    const [l, r] = [steps.at(left), steps.at(right)];
    name = `the ${half === "near" ? "nearer" : "farther"} half, from step ${across}`;
    part =
      half === "near"
        ? { left: { near: part.left.near, far: l }, right: { near: part.right.near, far: r } }
        : { left: { near: l, far: part.left.far }, right: { near: r, far: part.right.far } };
  }
  return null;
}

function meetEdge(steps: Steps, across: number, edge: Edge, side: Side): number | null {
  const line = steps.line({
    through: [edge.near, edge.far],
    toward: "floor's edge",
    say: `Draw the floor's ${side} edge, from the opening to the back wall.`,
  });
  return steps.meet(across, line, `on the floor's ${side} edge`);
}
