import { decodePhoto } from "@/lib/cli/photo/decode-photo";
import { DOUBTFUL, type DrawingReading } from "@/lib/photo/drawing-reading";
import { drawingBox } from "@/lib/photo/pencil/drawing-box";
import { readDrawing } from "@/lib/photo/pencil/read-drawing";
import { bentFromPhoto } from "@/lib/photo/straighten/bend";
import { doubtsLeft } from "@/lib/photo/straighten/judge-bend";
import { matchSheet } from "@/lib/photo/straighten/match-sheet";
import type { PhotoTrouble } from "@/lib/photo/straighten/photo-trouble";
import { readSheet, type SheetReading, type SheetTools } from "@/lib/photo/straighten/read-sheet";
import { registerPage } from "@/lib/photo/straighten/register-page";
import { type Truth, takePhotograph } from "../photographer/take-photograph";
import type { ProofShot } from "./shots";

/** What became of an asked point. */
export type PointOutcome = {
  readonly point: string;
  /** From where it was drawn to where it was read, millimetres of the sheet; null where nothing was read for it. */
  readonly offMm: number | null;
  readonly sure: boolean;
  /** How far the straightened page alone, its curl taken out, has its place off. */
  readonly pageMm: number;
};

export type Outcome = ProofShot & {
  readonly truth: Truth;
  readonly sheet: SheetReading;
  /** Of a sheet that was read: */
  readonly reading: DrawingReading | null;
  readonly points: readonly PointOutcome[];
  /** What the student is told of it. */
  readonly doubts: readonly PhotoTrouble[];
  /** Milliseconds of its two parts. */
  readonly took: readonly [sheet: number, drawing: number];
};

/** Pixels to the millimetre at which drawings are read. */
const PIXELS_PER_MM = 8;

/** Takes a photograph, and reads it with nothing but its file. */
export async function tryShot(tools: SheetTools, shot: ProofShot): Promise<Outcome> {
  const { jpeg, truth } = await takePhotograph(shot.shot);
  const decoded = await decodePhoto(jpeg);
  if (decoded.kind === "refused") throw new Error(decoded.say);
  const { grey } = decoded;
  const start = performance.now();
  const sheet = await readSheet(tools, grey);
  const known = performance.now();
  // A wrong exercise is counted, and not read on.
  if (sheet.kind === "refused" || !isRightSheet(sheet, truth))
    return { ...shot, truth, sheet, reading: null, points: [], doubts: [], took: [known - start, 0] };
  const match = matchSheet(shot.shot.exercise, sheet);
  if (match.kind === "refused") throw new Error(match.say);
  const { page, moved } = registerPage(grey, sheet.fit, match.sheet, drawingBox(match.sheet), PIXELS_PER_MM);
  const reading = readDrawing(page, match.sheet);
  const took = [known - start, performance.now() - known] as const;
  const points = [...truth.places].map(([point, place]): PointOutcome => {
    const read = reading.points.find((each) => each.point === point);
    const back = bentFromPhoto(sheet.fit, moved.bend, truth.photoFromSheet(place)) ?? [NaN, NaN];
    return {
      point,
      offMm: read?.at ? Math.hypot(read.at[0] - place[0], read.at[1] - place[1]) : null,
      sure: (read?.sure ?? 0) >= DOUBTFUL,
      pageMm: Math.hypot(back[0] - place[0], back[1] - place[1]),
    };
  });
  return { ...shot, truth, sheet, reading, points, doubts: doubtsLeft(sheet.doubts, moved), took };
}

/** Whether the code read is the one printed: the exercise, and all that says where things stand on the paper. */
export function isRightSheet(
  sheet: SheetReading,
  { sheet: { exercise, paper, scale } }: Pick<Truth, "sheet">,
): boolean {
  if (sheet.kind === "refused") return false;
  const { code } = sheet;
  return (
    code.exercise === exercise.id &&
    code.version === exercise.version &&
    code.paper === paper &&
    code.scale === scale.written
  );
}
