import type { Place } from "@/app/_parts/kept-work/attempt";
import { displayBounds } from "@/lib/drawing/display-bounds";
import type { DisplayList } from "@/lib/drawing/display-list";
import { GIVEN_LINES, OWN_LINES } from "@/lib/drawing/draw-edges";
import { drawFinishedPicture } from "@/lib/drawing/draw-finished-picture";
import type { Grade } from "@/lib/grading/grade";
import { toPaperMm } from "@/lib/measure/scale";
import { BLANK_PLAN } from "@/lib/plan/blank-plan";
import { crosses, edgesIn } from "./drawings";
import { nameCorners } from "./plan-so-far";
import { planeOf } from "./plane-of";
import { drawRuledPlan, emptyPlan } from "./ruled-plan";
import type { SetRoom } from "./set-room";
import type { Bounds } from "./view";

/** A wider sheet is laid out as if it were this wide, millimetres, so that its letters can be told in half a screen. */
const WIDEST_MM = 160;
/** White paper round the drawings, millimetres. */
const MARGIN_MM = 3;

/** The student's drawing and the finished one, to be shown one over the other: the same bounds, the same scale. */
export type Compared = {
  readonly own: DisplayList;
  readonly finished: DisplayList;
  readonly bounds: Bounds;
  /** What letters and margins are laid out for. */
  readonly scaleRatio: number;
};

/** Both drawings of a finished exercise, without what the sheet was drawn by: no horizon, no errors. */
export function compareLists(paper: SetRoom, grade: Grade): Compared {
  const plane = planeOf(paper.exercise);
  const { left, right } = paper.bounds[plane];
  const wideMm = toPaperMm(right - left, paper.exercise.scaleRatio);
  const scaleRatio = paper.exercise.scaleRatio * Math.max(1, wideMm / WIDEST_MM);
  const room = { ...paper, exercise: { ...paper.exercise, scaleRatio } };
  const { own, finished } = plane === "plan" ? comparePlans(room, grade) : comparePictures(room, grade);
  const [from, to] = [displayBounds(own, scaleRatio), displayBounds(finished, scaleRatio)];
  const margin = (MARGIN_MM * scaleRatio) / 1000;
  const bounds = {
    left: Math.min(from?.[0] ?? left, to?.[0] ?? left) - margin,
    bottom: Math.min(from?.[1] ?? 0, to?.[1] ?? 0) - margin,
    right: Math.max(from?.[2] ?? right, to?.[2] ?? right) + margin,
    top: Math.max(from?.[3] ?? 0, to?.[3] ?? 0) + margin,
  };
  return { own, finished, bounds, scaleRatio };
}

type Pair = Pick<Compared, "own" | "finished">;

function comparePictures(room: SetRoom, grade: Grade): Pair {
  const { exercise } = room;
  // The same empty stage by the same hand under both, so that only the set can differ.
  const stage = drawFinishedPicture({ ...exercise, plan: BLANK_PLAN });
  return { own: [...stage, ...linesOf(room, ownPlaces(room, grade))], finished: drawFinishedPicture(exercise) };
}

function comparePlans(room: SetRoom, grade: Grade): Pair {
  const { exercise } = room;
  const own = ownPlaces(room, grade);
  const lines = [...emptyPlan(exercise), ...linesOf(room, own)];
  return { own: [...lines, ...nameCorners(room, own, lines)], finished: drawRuledPlan(exercise, exercise.plan) };
}

function linesOf(room: SetRoom, own: ReadonlyMap<string, Place>): DisplayList {
  const given = truePlaces(room.exercise.task.given, room.truth);
  const givenLines = edgesIn(room, given, GIVEN_LINES);
  const known = new Set(givenLines.map(({ id }) => bare(id)));
  const ownLines = edgesIn(room, own, OWN_LINES).filter(({ id }) => !known.has(bare(id)));
  return [...givenLines, ...ownLines, ...crosses(room, own)];
}

function ownPlaces({ exercise, truth }: SetRoom, grade: Grade): Map<string, Place> {
  const marked = grade.marks.map((mark): [string, Place] => [mark.point, mark.at]);
  return new Map([...truePlaces(exercise.task.given, truth), ...marked]);
}

function truePlaces(names: readonly string[], truth: ReadonlyMap<string, Place>): Map<string, Place> {
  return new Map(
    names.flatMap((name): [string, Place][] => {
      const at = truth.get(name);
      return at ? [[name, at]] : [];
    }),
  );
}

function bare(id: string): string {
  return id.slice(id.indexOf(".") + 1);
}
