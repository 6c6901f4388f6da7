import type { HabitClaim } from "../habits/claim";
import type { PicturePoint, PlanPoint } from "../stage/frame";

/** What an error means on the stage, metres, mark minus truth: of a place on the floor, or of a height. */
export type StageError = { readonly across: number; readonly upstage: number } | { readonly height: number };

/** Feedback in the order it is said. `why` and `how` are empty when there is nothing to add. */
export type FeedbackWords = {
  /** Where the mark is on the paper against the truth. */
  readonly where: string;
  /** What the mark means on the stage. */
  readonly means: string;
  /** The idea behind the error, or the rule that was kept. */
  readonly why: string;
  /** How to find the place with a ruler. */
  readonly how: string;
};

export type GradedMark = {
  readonly point: string;
  /** As marked: of the picture, or of the plan for `picture-to-plan`. */
  readonly at: PicturePoint | PlanPoint;
  /** Where it should have been; of a drawing that goes on from the student's own marks, judged on its own foot. */
  readonly true: PicturePoint | PlanPoint;
  /** Distance on paper, millimetres; null when the mark means no place before the eye. */
  readonly offMm: number | null;
  readonly toleranceMm: number;
  readonly score: number;
  /** Null where the mark means no place on the stage (a foot marked on or above the horizon). */
  readonly plan: StageError | null;
  /** The habit that explains the mark, claimed over the set or only likely at this mark (then put as a question). */
  readonly habit: string | null;
  /** Where that habit puts the mark, in the picture; for showing it beside the truth. */
  readonly habitPlace: PicturePoint | null;
  readonly feedback: string;
  readonly words: FeedbackWords;
};

/** The eye that best explains the marks, metres, with the root mean square of what it leaves unexplained, paper millimetres. */
export type ImpliedViewer = {
  readonly distance: number;
  readonly eyeHeight: number;
  readonly offset: number;
  readonly residualMm: number;
};

export type Grade = {
  readonly exercise: string;
  readonly outcome: "scored" | "unready";
  readonly score: number | null;
  readonly marks: readonly GradedMark[];
  /** Asked points without a mark, in the task's order. */
  readonly missing: readonly string[];
  readonly habits: readonly HabitClaim[];
  readonly impliedViewer: ImpliedViewer | null;
};
