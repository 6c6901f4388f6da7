import type { LengthUnits } from "../measure/length";
import { project } from "../perspective/project";
import { centreVanishingPoint, distancePoints } from "../perspective/vanishing-point";
import type { Plan } from "../plan/plan";
import type { PicturePoint } from "../stage/frame";
import { backWallCorners, type Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";

/** What a construction starts from. */
export type Board = {
  readonly plan: Plan;
  readonly stage: Stage;
  readonly viewer: Viewer;
  /** How the sentences write lengths. */
  readonly units: LengthUnits;
  readonly scaleRatio: number;
  /** Named points that are on the sheet already: the given ones, and those placed before. */
  readonly placed: ReadonlyMap<string, PicturePoint>;
  /** The method a lesson is about: used wherever it applies, shortest or not. */
  readonly favour?: "crossing diagonals";
};

/** Paper left round the proscenium opening, millimetres: what a hand sheet has. */
const MARGIN_MM = 45;

/** Points nearer than this are one point of the sheet, metres. */
export const SAME_PLACE_M = 1e-9;

export function samePlace(a: PicturePoint, b: PicturePoint): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_PLACE_M;
}

/** Whether a picture point lies on the paper: the opening, the apron before it, and a margin. */
export function onPaper({ stage, viewer, scaleRatio }: Board, [X, Z]: PicturePoint): boolean {
  const margin = (MARGIN_MM * scaleRatio) / 1000;
  const edge = project(viewer, [viewer.offset, -stage.apron, 0]);
  const lowest = edge.seen ? Math.min(0, edge.at[1]) : 0;
  return Math.abs(X) <= stage.opening.width / 2 + margin && Z >= lowest - margin && Z <= stage.opening.height + margin;
}

/** The distance point, or its half, third or quarter, on one side; n = 1, 2, 3, 4. */
export function distancePointPart(viewer: Viewer, part: number, side: "left" | "right"): PicturePoint {
  const [left, right] = distancePoints(viewer);
  const whole = side === "left" ? left : right;
  return part === 1 ? whole : [viewer.offset + (whole[0] - viewer.offset) / part, viewer.eyeHeight];
}

export type Landmark = { readonly at: PicturePoint; readonly say: string };

/** A board with its landmarks worked out. */
export type Sheet = Board & { readonly landmarks: readonly Landmark[] };

export function startSheet(board: Board): Sheet {
  return { ...board, landmarks: landmarks(board) };
}

/** The points every sheet has before anything is drawn, besides the distance, vanishing and measuring points. */
function landmarks({ stage, viewer }: Board): readonly Landmark[] {
  const half = stage.opening.width / 2;
  const height = stage.opening.height;
  const names = [
    "the back wall's foot at the left",
    "the back wall's foot at the right",
    "the back wall's top at the left",
    "the back wall's top at the right",
  ];
  const back = backWallCorners(stage).flatMap((corner, i) => {
    const seen = project(viewer, corner);
    return seen.seen ? [{ at: seen.at, say: names[i] as string }] : [];
  });
  return [
    { at: [0, 0], say: "the foot of the centre line" },
    { at: [viewer.offset, 0], say: "the foot of the line under the CVP" },
    { at: [-half, 0], say: "the left corner of the opening" },
    { at: [half, 0], say: "the right corner of the opening" },
    { at: [-half, height], say: "the left top corner of the opening" },
    { at: [half, height], say: "the right top corner of the opening" },
    { at: centreVanishingPoint(viewer), say: "the CVP" },
    ...back,
  ];
}
