import { writeFileSync } from "node:fs";
import type { Mark, MarkSet } from "../exercise/marks";
import { DOUBTFUL, type PointReading } from "../photo/drawing-reading";
import { drawingBox } from "../photo/pencil/drawing-box";
import { readDrawing } from "../photo/pencil/read-drawing";
import { doubtsLeft, type Moved } from "../photo/straighten/judge-bend";
import { markFromSheet } from "../photo/straighten/mark-places";
import { matchSheet } from "../photo/straighten/match-sheet";
import { readSheet } from "../photo/straighten/read-sheet";
import { registerPage } from "../photo/straighten/register-page";
import { done, type Outcome, refused, wrongCall } from "./outcome";
import { loadSheetTools } from "./photo/load-sheet-tools";
import { readPhotoFile, troubleInFile } from "./photo/read-photo-file";
import { readSoundExercise, resolvePath } from "./read-input";

export const READ_USAGE = "read EXERCISE PHOTO";

/** Pixels to the millimetre of the page seen straight on: a pencil's line is four wide. */
const PIXELS_PER_MM = 8;

/**
 * `read EXERCISE PHOTO`: the marks that a photographed practice sheet has in pencil, as a file of marks. What is doubtful is left out, since nobody is
 * asked; `--text` says which points those are. `--out` writes the file and prints what it holds.
 */
export async function read(
  words: readonly string[],
  text: boolean,
  { out }: Readonly<Record<string, string>>,
): Promise<Outcome> {
  const [exerciseFile, photoFile] = words;
  if (exerciseFile === undefined || photoFile === undefined || words.length > 2)
    return wrongCall("read needs an exercise file and a photograph of its sheet", READ_USAGE);
  const exercise = readSoundExercise(exerciseFile);
  if (!exercise.ok) return refused(...exercise.errors);
  const grey = await readPhotoFile(photoFile);
  if (!grey.ok) return refused(...grey.errors);
  const reading = await readSheet(await loadSheetTools(), grey.value);
  if (reading.kind === "refused") return refused(troubleInFile(photoFile, reading));
  const match = matchSheet(exercise.value, reading);
  if (match.kind === "refused") return refused(troubleInFile(photoFile, match));
  const { sheet } = match;
  const { page, moved } = registerPage(grey.value, reading.fit, sheet, drawingBox(sheet), PIXELS_PER_MM);
  const { points } = readDrawing(page, sheet);
  const { id, version } = exercise.value;
  const marks: MarkSet = {
    format: "plasterline.marks/1",
    exercise: id,
    version,
    scale: sheet.scale.written,
    marks: points.flatMap(({ point, at, sure }): Mark[] =>
      at && sure >= DOUBTFUL ? [{ point, at: markFromSheet(sheet, at), with: "paper" }] : [],
    ),
  };
  const written = JSON.stringify(marks, null, 2);
  const trouble = out === undefined ? null : write(out, written);
  if (trouble) return trouble;
  if (text)
    return done(
      inWords(
        points,
        doubtsLeft(reading.doubts, moved).map(({ say }) => say),
        reading.fit.residualMm,
        moved,
        out,
      ),
    );
  if (out === undefined) return done(written);
  return done(
    JSON.stringify({ file: out, marks: marks.marks.length, doubtful: doubtful(points), missing: missing(points) }),
  );
}

function doubtful(points: readonly PointReading[]): readonly string[] {
  return points.filter(({ at, sure }) => at && sure < DOUBTFUL).map(({ point }) => point);
}

function missing(points: readonly PointReading[]): readonly string[] {
  return points.filter(({ at }) => !at).map(({ point }) => point);
}

function inWords(
  points: readonly PointReading[],
  doubts: readonly string[],
  residualMm: number | null,
  { bend, beforeMm, afterMm }: Moved,
  out: string | undefined,
): string {
  const [unsure, none] = [doubtful(points), missing(points)];
  const count = points.length - unsure.length - none.length;
  return [
    `${count} of ${points.length} points read${out === undefined ? "" : ` into ${out}`}`,
    ...(residualMm === null ? [] : [`  the sheet's markers stand within ${mm(residualMm)} of where they were printed`]),
    ...(bend && beforeMm !== null && afterMm !== null
      ? [`  the paper curls: its printed lines lay ${mm(beforeMm)} from their places, and ${mm(afterMm)} as it is read`]
      : []),
    ...doubts.map((say) => `  ${say}`),
    ...(unsure.length > 0 ? [`  doubtful, and left out: ${unsure.join(", ")}`] : []),
    ...(none.length > 0 ? [`  not found: ${none.join(", ")}`] : []),
  ].join("\n");
}

function mm(length: number): string {
  return `${length.toFixed(2)} mm`;
}

function write(out: string, written: string): Outcome | null {
  try {
    writeFileSync(resolvePath(out), `${written}\n`);
    return null;
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    const why =
      code === "ENOENT"
        ? "there is no such folder"
        : code === "EISDIR"
          ? "it is a folder"
          : `the computer says ${code}`;
    return refused({ file: out, where: "", message: `it cannot be written: ${why}`, hint: "name another place" });
  }
}
