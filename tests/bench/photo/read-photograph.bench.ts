import sharp from "sharp";
import { bench, describe } from "vitest";
import { loadSheetTools } from "@/lib/cli/photo/load-sheet-tools";
import { drawingBox } from "@/lib/photo/pencil/drawing-box";
import { readDrawing } from "@/lib/photo/pencil/read-drawing";
import { readSheet } from "@/lib/photo/straighten/read-sheet";
import { registerPage } from "@/lib/photo/straighten/register-page";
import { shippedExercise } from "../../drawing/practice-sheet/exercises";
import { marksByHabit } from "../../photo/photographer/marks-by-habit";
import { takePhotograph } from "../../photo/photographer/take-photograph";

/** A telephone's usual photograph, and what it is promised to be read in; in the browser the same programs run in a worker. */
const MEGAPIXELS = 12;
const PROMISED_MS = 3_000;
const ROUNDS = 7;
const PIXELS_PER_MM = 8;

const tools = await loadSheetTools();
const sheets = [
  ["the-tide-office", "letter"],
  ["customs-hall", "tabloid"],
] as const;

const photographs = await Promise.all(
  sheets.map(async ([id, paper]) => {
    const exercise = shippedExercise(id);
    const marks = marksByHabit(exercise, null, 1);
    const { jpeg, truth } = await takePhotograph({
      exercise,
      paper,
      marks,
      seed: 1,
      megapixels: MEGAPIXELS,
      tiltDeg: 15,
    });
    const { data, info } = await sharp(jpeg).greyscale().raw().toBuffer({ resolveWithObject: true });
    return {
      id,
      paper,
      sheet: truth.sheet,
      grey: { width: info.width, height: info.height, grey: new Uint8Array(data) },
    };
  }),
);

/** Milliseconds of each part of reading a photograph. */
async function timed({ grey, sheet }: (typeof photographs)[number]): Promise<readonly [number, number, number]> {
  const start = performance.now();
  const read = await readSheet(tools, grey);
  if (read.kind === "refused") throw new Error(read.say);
  const known = performance.now();
  const { page } = registerPage(grey, read.fit, sheet, drawingBox(sheet), PIXELS_PER_MM);
  const straight = performance.now();
  readDrawing(page, sheet);
  return [known - start, straight - known, performance.now() - straight];
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}

const lines: string[] = [];
for (const photograph of photographs) {
  // The first round of a fresh process times the compiler, not the work.
  await timed(photograph);
  const rounds: (readonly [number, number, number])[] = [];
  for (let i = 0; i < ROUNDS; i++) rounds.push(await timed(photograph));
  const parts = [0, 1, 2].map((part) => median(rounds.map((round) => round[part] as number)));
  const whole = median(rounds.map((round) => round[0] + round[1] + round[2]));
  lines.push(
    `${`${photograph.id} on ${photograph.paper}`.padEnd(30)}${[...parts, whole].map((ms) => `${ms.toFixed(0)} ms`.padStart(14)).join("")}`,
  );
  if (!(whole < PROMISED_MS))
    throw new Error(`A photograph took ${Math.round(whole)} ms, not less than ${PROMISED_MS}.`);
}
console.log(
  [
    `Reading a photograph of ${MEGAPIXELS} megapixels, the median of ${ROUNDS} rounds: its sheet, the page seen straight, its pencil lines, and all three.`,
    `${"".padEnd(30)}${["sheet", "straightened", "drawing", "all"].map((head) => head.padStart(14)).join("")}`,
    ...lines,
  ].join("\n"),
);

describe("reading a photograph", () => {
  for (const photograph of photographs)
    bench(
      `${photograph.id} on ${photograph.paper}`,
      async () => {
        await timed(photograph);
      },
      { iterations: 3, warmupIterations: 1, time: 0, warmupTime: 0 },
    );
});
