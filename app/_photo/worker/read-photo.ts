import { layOutPracticeSheet, type PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import type { PageFit } from "@/lib/photo/page-fit";
import { drawingBox } from "@/lib/photo/pencil/drawing-box";
import { readDrawing } from "@/lib/photo/pencil/read-drawing";
import type { GreyPixels } from "@/lib/photo/pixels";
import type { StraightPage } from "@/lib/photo/straight-page";
import { findMarkers } from "@/lib/photo/straighten/find-markers";
import { fitCorners } from "@/lib/photo/straighten/fit-corners";
import { doubtsLeft } from "@/lib/photo/straighten/judge-bend";
import { sheetFromPhoto } from "@/lib/photo/straighten/map-page";
import type { OpenCv } from "@/lib/photo/straighten/open-cv";
import type { PhotoTrouble } from "@/lib/photo/straighten/photo-trouble";
import { readSheet } from "@/lib/photo/straighten/read-sheet";
import { registerPage } from "@/lib/photo/straighten/register-page";
import { straighten } from "@/lib/photo/straighten/straighten";
import { PAPERS } from "@/lib/sheet/paper-size";
import { grow } from "@/lib/sheet/sheet-box";
import type { SheetCode } from "@/lib/sheet/sheet-code";
import { fromSheet, openingBox, sheetFrame } from "../places";
import { pictureOf } from "./decode-photo";
import type { Tools } from "./load-tools";
import type {
  DrawingAnswer,
  FourPoints,
  FrameAnswer,
  NameAnswer,
  OwnLines,
  PhotoAnswer,
  ReadDrawing,
  Refused,
  Shown,
} from "./messages";

/** The straightened drawing has so many pixels to the millimetre, less where that would be more than the bound. */
const PIXELS_PER_MM = 8;
const MOST_STRAIGHT_PIXELS = 5e6;
/** The lines for the name, so much larger than handwriting needs, and so much of the paper round them. */
const NAME_PIXELS_PER_MM = 6;
const ROUND_NAME_MM = 1.5;
/** Paper in a frame darker than this, of 255, is too dark to find faint pencil on. */
const DARK = 90;
/** Of a marker's sides, the shortest to the longest: less is a camera held too far aslant. */
const SQUARE_LEAST = 0.55;

export type FoundSheet = {
  readonly answer: PhotoAnswer;
  readonly fit: PageFit | null;
  /** What is doubtful about the photograph before the print round its drawing was looked at. */
  readonly doubts: readonly PhotoTrouble[];
};

/** Which sheet a photograph shows and where it lies in it. */
export async function findSheet(tools: Tools, grey: GreyPixels, shown: Shown): Promise<FoundSheet> {
  const reading = await readSheet(tools, grey);
  if (reading.kind === "refused") {
    const { say, remedy } = reading;
    return { answer: { kind: "refused", say, remedy, shown }, fit: null, doubts: [] };
  }
  const { code, fit, markers, doubts } = reading;
  return {
    answer: {
      kind: "sheet",
      code,
      residualMm: fit.residualMm,
      seen: markers.length,
      shown,
    },
    fit,
    doubts,
  };
}

function sayTrouble({ say, remedy }: PhotoTrouble): string {
  return `${say} ${remedy}`;
}

/** The pencil on a sheet whose place in the photograph is known. */
export async function readPencil(
  grey: GreyPixels,
  fit: PageFit,
  exercise: Exercise,
  code: SheetCode,
  doubts: readonly PhotoTrouble[],
): Promise<DrawingAnswer> {
  const sheet = sheetOfCode(exercise, code);
  if (!sheet) return OTHER_FORM;
  const { box, pixelsPerMm } = straightBox(sheet);
  const { page, moved } = registerPage(grey, fit, sheet, box, pixelsPerMm);
  return { ...(await readOn(page, sheet, null)), doubts: doubtsLeft(doubts, moved).map(sayTrouble) };
}

/** The lines for the name, for somebody to read: no hand is read here. */
export async function showName(
  grey: GreyPixels,
  fit: PageFit,
  exercise: Exercise,
  code: SheetCode,
): Promise<NameAnswer> {
  const sheet = sheetOfCode(exercise, code);
  if (!sheet) return OTHER_FORM;
  const box = grow(sheet.layout.name, ROUND_NAME_MM);
  return { kind: "name", picture: await pictureOf(straighten(grey, fit, box, NAME_PIXELS_PER_MM)) };
}

/** The sheet that a code was printed on; null where the exercise is laid out otherwise by now. */
function sheetOfCode(exercise: Exercise, { paper, copy, scale }: SheetCode): PracticeSheet | null {
  const sheet = layOutPracticeSheet(exercise, { paper, copy });
  return sheet?.scale.written === scale ? sheet : null;
}

const OTHER_FORM: Refused = {
  kind: "refused",
  say: "This sheet was printed from another form of the exercise than the one that is here now.",
  remedy: "Print the sheet anew and draw on that, or set the four corners of the opening by hand.",
};

/** The same for a drawing that is on no sheet of ours, by the four corners of its opening. */
export async function readByCorners(
  grey: GreyPixels,
  exercise: Exercise,
  corners: FourPoints,
  ownLines: OwnLines | null,
): Promise<DrawingAnswer> {
  const sheet = sheetForCorners(exercise);
  if (!sheet) return NO_ROOM;
  const fitted = fitCorners(corners, openingBox(sheet), grey);
  if (fitted.kind === "refused") return { kind: "refused", say: fitted.say, remedy: fitted.remedy };
  const { fit } = fitted;
  const frame = sheetFrame(sheet);
  const heights =
    ownLines &&
    [ownLines.horizon, ownLines.backWallFoot].map((point) => {
      const at = sheetFromPhoto(fit, point);
      return at ? fromSheet(frame, at)[1] : Number.NaN;
    });
  const ownEye = heights && { horizonZ: heights[0] as number, backWallFootZ: heights[1] as number };
  const { box, pixelsPerMm } = straightBox(sheet);
  return readOn(straighten(grey, fit, box, pixelsPerMm), sheet, ownEye);
}

/** A drawing of one's own is taken as if it were on the first paper that has room for the exercise. */
function sheetForCorners(exercise: Exercise): PracticeSheet | null {
  return PAPERS.reduce<PracticeSheet | null>((found, paper) => found ?? layOutPracticeSheet(exercise, { paper }), null);
}

const NO_ROOM: Refused = {
  kind: "refused",
  say: "The stage of this exercise is too large for any paper.",
  remedy: "Choose another exercise.",
};

function straightBox(sheet: PracticeSheet): Pick<StraightPage, "box" | "pixelsPerMm"> {
  const box = drawingBox(sheet);
  const area = (box.right - box.left) * (box.bottom - box.top);
  return { box, pixelsPerMm: Math.min(PIXELS_PER_MM, Math.sqrt(MOST_STRAIGHT_PIXELS / area)) };
}

async function readOn(page: StraightPage, sheet: PracticeSheet, ownEye: ReadDrawing["ownEye"]): Promise<ReadDrawing> {
  return {
    kind: "read",
    paper: sheet.paper,
    box: page.box,
    reading: readDrawing(page, sheet),
    picture: await pictureOf(page),
    ownEye,
    doubts: [],
  };
}

/** What a frame of the live view shows, for the words while framing. */
export function judgeFrame(cv: OpenCv, grey: GreyPixels): FrameAnswer {
  const seen = findMarkers(cv, grey);
  const at = seen.map(({ id, corners }) => {
    const x = corners.reduce((sum, [right]) => sum + right, 0) / (4 * grey.width);
    const y = corners.reduce((sum, [, down]) => sum + down, 0) / (4 * grey.height);
    return [id, x, y] as const;
  });
  return {
    kind: "frame",
    seen: new Set(seen.map(({ id }) => id)).size,
    at,
    dark: brightest(grey) < DARK,
    tilted: seen.some(({ corners }) => squareness(corners) < SQUARE_LEAST),
  };
}

/** The grey that one pixel in ten is brighter than. */
function brightest({ grey }: GreyPixels): number {
  const counts = new Uint32Array(256);
  for (const value of grey) counts[value] = (counts[value] as number) + 1;
  let left = grey.length / 10;
  for (let value = 255; value > 0; value--) {
    left -= counts[value] as number;
    if (left <= 0) return value;
  }
  return 0;
}

function squareness(corners: FourPoints): number {
  const sides = corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % 4] as FourPoints[number];
    return Math.hypot(nextX - x, nextY - y);
  });
  return Math.min(...sides) / Math.max(...sides);
}
