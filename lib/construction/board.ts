import type { LengthUnits } from "../measure/length";
import { project } from "../perspective/project";
import { centreVanishingPoint, distancePoints } from "../perspective/vanishing-point";
import type { Plan } from "../plan/plan";
import type { PicturePoint, StagePoint } from "../stage/frame";
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
const SAME_PLACE_M = 1e-12;

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

export type Side = "left" | "right";

/** The distance point, or its half, third or quarter, on one side; n = 1, 2, 3, 4. */
export function distancePointPart(viewer: Viewer, part: number, side: Side): PicturePoint {
  const [left, right] = distancePoints(viewer);
  const whole = side === "left" ? left : right;
  return part === 1 ? whole : [viewer.offset + (whole[0] - viewer.offset) / part, viewer.eyeHeight];
}

export type LandmarkName =
  | "centre"
  | "under the CVP"
  | "CVP"
  | `opening ${"foot" | "top"} ${Side}`
  | `back wall ${"foot" | "top"} ${Side}`
  | `apron ${Side}`;

/** A point every sheet has before anything is drawn. `stage` is the place of the stage it shows; null for the CVP, which shows none. */
export type Landmark = {
  readonly name: LandmarkName;
  readonly at: PicturePoint;
  readonly stage: StagePoint | null;
  readonly say: string;
};

/** A board with its landmarks worked out. */
export type Sheet = Board & { readonly landmarks: readonly Landmark[] };

export function startSheet(board: Board): Sheet {
  return { ...board, landmarks: landmarks(board) };
}

export function landmark({ landmarks }: Sheet, name: LandmarkName): Landmark | null {
  return landmarks.find((one) => one.name === name) ?? null;
}

/** The points every sheet has before anything is drawn, besides the distance, vanishing and measuring points. */
function landmarks({ stage, viewer }: Board): readonly Landmark[] {
  const half = stage.opening.width / 2;
  const height = stage.opening.height;
  const shown = (name: LandmarkName, place: StagePoint, say: string): readonly Landmark[] => {
    const seen = project(viewer, place);
    return seen.seen ? [{ name, at: seen.at, stage: place, say }] : [];
  };
  const [footLeft, footRight, topLeft, topRight] = backWallCorners(stage);
  return [
    ...shown("centre", [0, 0, 0], "the foot of the centre line"),
    ...shown("under the CVP", [viewer.offset, 0, 0], "the foot of the line under the CVP"),
    ...shown("opening foot left", [-half, 0, 0], "the left corner of the opening"),
    ...shown("opening foot right", [half, 0, 0], "the right corner of the opening"),
    ...shown("opening top left", [-half, 0, height], "the left top corner of the opening"),
    ...shown("opening top right", [half, 0, height], "the right top corner of the opening"),
    { name: "CVP", at: centreVanishingPoint(viewer), stage: null, say: "the CVP" },
    ...shown("back wall foot left", footLeft, "the back wall's foot at the left"),
    ...shown("back wall foot right", footRight, "the back wall's foot at the right"),
    ...shown("back wall top left", topLeft, "the back wall's top at the left"),
    ...shown("back wall top right", topRight, "the back wall's top at the right"),
    ...shown("apron left", [-half, -stage.apron, 0], "the left corner of the apron"),
    ...shown("apron right", [half, -stage.apron, 0], "the right corner of the apron"),
  ];
}
