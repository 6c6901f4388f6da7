import type { LengthUnits } from "../measure/length";
import type { Plan } from "../plan/plan";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";

export const UNITS = ["floor", "walls", "openings", "furniture", "levels", "stage", "reading", "sets"] as const;
/** A unit of the course. */
export type Unit = (typeof UNITS)[number];

export const TASK_KINDS = ["plan-to-picture", "picture-to-plan"] as const;
export type TaskKind = (typeof TASK_KINDS)[number];

export const STRICTNESSES = ["thumbnail", "sketch", "drafted"] as const;
export type Strictness = (typeof STRICTNESSES)[number];

export const TOOLS = ["straightedge"] as const;
export type Tool = (typeof TOOLS)[number];

/** What the student is asked to do. Names of points as in the plan's named points. */
export type Task = {
  readonly kind: TaskKind;
  /** In the order asked. */
  readonly marks: readonly string[];
  /** Drawn on the sheet from the start. */
  readonly given: readonly string[];
  /** After each mark the drawing goes on from the true point or from the student's own. */
  readonly goOnFrom: "true" | "own";
  /** Places are printed on the plan, or read with the scale rule. */
  readonly dimensions: "printed" | "rule";
  readonly tools: readonly Tool[];
  readonly hints: "allowed" | "none";
  readonly strictness: Strictness;
};

/** An exercise as everything inside knows it: metres and radians, defaults filled in, the viewer's distance worked out. */
export type Exercise = {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  readonly brief: string;
  readonly scenario: string;
  readonly unit: Unit;
  readonly level: number;
  readonly skills: readonly string[];
  readonly notes: string;
  /** How lengths are shown. */
  readonly units: LengthUnits;
  /** As written, `1/4in=1ft`. */
  readonly scale: string;
  /** Stage metres to paper metres: 48 for `1/4in=1ft`. */
  readonly scaleRatio: number;
  readonly stage: Stage;
  readonly viewer: Viewer;
  readonly plan: Plan;
  readonly task: Task;
};
