import type { Step } from "../../construction/step";
import type { PicturePoint, PlanPoint } from "../../stage/frame";

/** `sheet`: the empty sheet, part by part. `place`: where the point is. `line`: one line that finds it. `set-down`: the point itself. */
export type StepKind = "sheet" | "place" | "line" | "set-down" | "finished";

/** The parts of the empty picture, in the order they are drawn. */
export const SHEET_PARTS = ["proscenium", "rule", "horizon", "cvp", "stage"] as const;
export type SheetPart = (typeof SHEET_PARTS)[number];

/** A wrong idea that a class may hold at a point, and what it would do there. */
export type Watch = { readonly name: string; readonly where: string; readonly say: string };

/** For the teacher alone. */
export type TeacherNote = {
  /** What a millimetre of paper is worth there; empty where there is no such place. */
  readonly worth: string;
  readonly watch: readonly Watch[];
  /** What to ask the class. */
  readonly ask: string;
};

/** What is on the sheet at a step. Places are true ones: picture or plan metres. */
export type Shown = {
  readonly parts: readonly SheetPart[];
  /** Named points set down, in order. */
  readonly placed: readonly string[];
  /** The lines that find a point, all of them. */
  readonly lines: readonly Step[];
  /** How many of them are drawn. */
  readonly drawn: number;
  /** The place spoken of. */
  readonly lit: { readonly picture: PicturePoint | null; readonly plan: PlanPoint | null };
  /** The point just set down: the lines of the set that it completes stand out. */
  readonly fresh: string | null;
  /** The whole set stands in the picture, to be read back. */
  readonly toRead: boolean;
  /** The set as it stands when everything is drawn. */
  readonly finished: boolean;
};

/** One step of a demonstration, with its words. */
export type DemonstrationStep = {
  /** From 1. */
  readonly number: number;
  readonly kind: StepKind;
  /** The named point that it belongs to. */
  readonly point: string | null;
  readonly title: string;
  /** Where in the work it stands: "Line 2 of 5: distance point". */
  readonly part: string;
  /** Said to the class. */
  readonly sentence: string;
  readonly note: TeacherNote;
  readonly shown: Shown;
};

/** A step that does not know its number yet. */
export type UnnumberedStep = Omit<DemonstrationStep, "number">;

export const NOTHING_LIT: Shown["lit"] = { picture: null, plan: null };
