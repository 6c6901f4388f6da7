import type { VanishingPlace } from "../../perspective/whose-eye/drawn-line";
import type { PicturePoint } from "../../stage/frame";

/** A pencil line between two named points of the set; `at` has its ends as drawn, in the same order, metres of the picture. */
export type PaperLine = {
  readonly from: string;
  readonly to: string;
  readonly at: readonly [PicturePoint, PicturePoint];
};

/** What a line is on the stage, and so what it keeps to in the picture. */
export type LineRule =
  /** An upright: it stays upright. */
  | "upright"
  /** Parallel to the plaster line: it keeps its own slope, level for a level one. */
  | "frontal"
  /** It runs to a vanishing point. */
  | "receding";

export type JudgedLine = {
  readonly from: string;
  readonly to: string;
  readonly rule: LineRule;
  /** In words, for a sentence: "the foot of W2". */
  readonly name: string;
  /** Where it should run: [x, y, w] stands for the point (x / w, y / w) of the picture, and with w = 0 for a direction. */
  readonly place: VanishingPlace;
  /** From the direction it should have to the one drawn, degrees, counter-clockwise as one looks at the sheet. */
  readonly turnedDeg: number;
  /** With a ruler laid from its near end as it should run: how far beside it the far end lies, millimetres, never negative. */
  readonly offMm: number;
  /** How far a hand may be off there before anything is said, millimetres: two sigma. */
  readonly allowedMm: number;
  /** Whether that is more than a hand's slip. */
  readonly off: boolean;
  /** Where it crosses the horizon, drawn on both ways; null for a line that is level, or nearly so. */
  readonly crosses: PicturePoint | null;
  /** Empty for a line that keeps to its rule. */
  readonly say: string;
};

export type MeetingVerdict =
  /** In their vanishing point, as near as a hand comes. */
  | "true"
  /** On the horizon, but beside their vanishing point: parallel and level, at another angle to the plaster line. */
  | "beside"
  /** In one point above the horizon or below it (on a raked floor: above or below the height where its lines vanish). */
  | "off the horizon"
  /** Not in one point. */
  | "scattered"
  /** Drawn parallel on the sheet, though they run away from the viewer. */
  | "parallel"
  /** So short, or so nearly one line, that the lines do not tell. */
  | "cannot tell";

/** Lines that are parallel on the stage and run away from the viewer, and where they meet. */
export type JudgedMeeting = {
  /** Their places in the list of judged lines, two at least. */
  readonly lines: readonly number[];
  /** Walls, platforms, pieces of furniture that they belong to. */
  readonly elements: readonly string[];
  readonly vanishingPoint: PicturePoint;
  /** Where they meet as drawn, least squares, and of the verdict `beside` on the horizon; null where they are parallel or do not tell. */
  readonly at: PicturePoint | null;
  /** One sigma of that place, millimetres right and up; null with it. */
  readonly giveMm: readonly [right: number, up: number] | null;
  /** That place less the vanishing point, millimetres right and up; null with it. */
  readonly missMm: readonly [right: number, up: number] | null;
  readonly verdict: MeetingVerdict;
  /** Always a sentence; a good one says which rule was kept. */
  readonly say: string;
};

/** A figure of an eye as the lines tell it, with one sigma; metres. */
export type Told = { readonly metres: number; readonly give: number };

/** The eye that the lines' directions alone imply, wherever their ends lie; null for what they do not tell. */
export type EyeOfLines = {
  readonly kind: "told" | "disagree" | "cannot tell";
  readonly distance: Told | null;
  readonly eyeHeight: Told | null;
  readonly offset: Told | null;
  /** Root mean square of the lines' misses in sigmas of a hand; null where no more lines are than figures. */
  readonly misfit: number | null;
  readonly say: string;
};

export type LinesJudgement =
  | {
      readonly kind: "judged";
      /** In the order given. Lines too short to have a direction are left out; `skipped` has their places. */
      readonly lines: readonly JudgedLine[];
      readonly skipped: readonly number[];
      readonly meetings: readonly JudgedMeeting[];
      readonly eye: EyeOfLines;
      /** What is worth telling the student: an eye of their own, then meetings, then lines that none of these explains, the worst first. */
      readonly remarks: readonly string[];
    }
  /** The task is drawn on the plan, where nothing is foreshortened. */
  | { readonly kind: "plan" };

/** Lines and meetings held against one eye. */
export type Held = { readonly lines: readonly JudgedLine[]; readonly meetings: readonly JudgedMeeting[] };
