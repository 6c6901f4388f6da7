import type { Exercise } from "@/lib/exercise/exercise";
import type { DrawingReading } from "@/lib/photo/drawing-reading";
import type { PhotoPoint } from "@/lib/photo/pixels";
import type { Paper } from "@/lib/sheet/paper-size";
import type { SheetBox } from "@/lib/sheet/sheet-box";
import type { SheetCode } from "@/lib/sheet/sheet-code";

/** Upper left, upper right, lower right, lower left of the opening. */
export type FourPoints = readonly [PhotoPoint, PhotoPoint, PhotoPoint, PhotoPoint];

/** Lines of the student's own that stand for their eye: a point on each, pixels of the photograph. */
export type OwnLines = { readonly horizon: PhotoPoint; readonly backWallFoot: PhotoPoint };

/** What the page asks of the worker. Each has a number, and so has the answer. */
export type Asked =
  /** Decode a photograph and find out which sheet it shows. */
  | {
      readonly ask: "photo";
      readonly file: Blob;
      /** Whether a sheet is looked for; else it is only opened, for its corners to be set by hand. */
      readonly look: boolean;
      /** The longer side of the photograph as it is shown, pixels; what a screen needs where nothing is said. */
      readonly longerPx?: number;
    }
  /** Read the pencil on the sheet that was found. */
  | { readonly ask: "drawing"; readonly exercise: Exercise; readonly code: SheetCode }
  /** Show the lines for the name on the sheet that was found. */
  | { readonly ask: "name"; readonly exercise: Exercise; readonly code: SheetCode }
  /** Straighten the photograph by four corners set by hand, and read it. */
  | {
      readonly ask: "corners";
      readonly exercise: Exercise;
      readonly corners: FourPoints;
      readonly ownLines: OwnLines | null;
    }
  /** See a picture straight on, by the corners of a rectangle that lies flat on its paper and is so wide and high, millimetres. */
  | {
      readonly ask: "straighten";
      readonly corners: FourPoints;
      readonly size: readonly [width: number, height: number];
      /** How much is shown of what lies round the rectangle: a little, or all that the photograph has. */
      readonly round: "a little" | "all";
      /** The longer side of the straightened picture, pixels. */
      readonly longerPx?: number;
    }
  /** Of the photograph opened last, what is darker than its paper, for a drawing to be laid over it. */
  | { readonly ask: "lines" }
  /** Look at one frame of the live view. */
  | { readonly ask: "frame"; readonly frame: ImageBitmap };

/** A refusal in the words of the reader of photographs. */
export type Refused = { readonly kind: "refused"; readonly say: string; readonly remedy: string };

/** A photograph as it is shown: upright, smaller, as a picture file. `scale` takes its pixels to those of the photograph. */
export type Shown = {
  readonly picture: Blob;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
};

export type PhotoAnswer =
  | {
      readonly kind: "sheet";
      readonly code: SheetCode;
      readonly residualMm: number | null;
      readonly seen: number;
      readonly shown: Shown;
    }
  /** Opened, and no sheet looked for. */
  | { readonly kind: "opened"; readonly shown: Shown }
  | (Refused & { /** Null where nothing could be decoded. */ readonly shown: Shown | null });

/** A drawing seen straight on, and what was read of it. */
export type ReadDrawing = {
  readonly kind: "read";
  readonly paper: Paper;
  /** What of the sheet the picture shows, millimetres. */
  readonly box: SheetBox;
  readonly picture: Blob;
  readonly reading: DrawingReading;
  /** Heights of the student's own horizon and back wall's foot, metres of the picture; null where none were set. */
  readonly ownEye: { readonly horizonZ: number; readonly backWallFootZ: number } | null;
  /** What is doubtful about the photograph, in sentences. */
  readonly doubts: readonly string[];
};

export type DrawingAnswer = ReadDrawing | Refused;

/** The lines for the name seen straight on. */
export type NameAnswer = { readonly kind: "name"; readonly picture: Blob } | Refused;

/** A picture seen straight on, with some of what lies round the rectangle; `widthMm`: how wide all of it is on its paper. */
export type StraightAnswer =
  | {
      readonly kind: "straight";
      readonly picture: Blob;
      readonly width: number;
      readonly height: number;
      readonly widthMm: number;
    }
  | Refused;

/** What is darker than the paper, as a picture that is clear elsewhere: black, to be turned light in the dark. */
export type LinesAnswer = { readonly kind: "lines"; readonly picture: Blob } | Refused;

/** What a frame of the live view shows. */
export type FrameAnswer = {
  readonly kind: "frame";
  /** Markers of our sheets, 0 to 8. */
  readonly seen: number;
  /** The same markers' middles, shares of the frame's width and height, to tell whether the camera rests. */
  readonly at: readonly (readonly [id: number, x: number, y: number])[];
  readonly dark: boolean;
  readonly tilted: boolean;
};

export type Answer = PhotoAnswer | DrawingAnswer | NameAnswer | StraightAnswer | LinesAnswer | FrameAnswer;

export type ToWorker = Asked & { readonly id: number };
export type FromWorker =
  | { readonly id: number; readonly step: string }
  | { readonly id: number; readonly answer: Answer }
  | { readonly id: number; readonly failed: string };
