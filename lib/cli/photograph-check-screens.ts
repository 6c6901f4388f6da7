import { join } from "node:path";
import type { Page } from "@playwright/test";
import sharp from "sharp";
import { pageToPng } from "../drawing/paper/page-to-png";
import { layOutPracticeSheet } from "../drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "../drawing/practice-sheet/student-page";
import { exercisePoints } from "../exercise/exercise-points";
import { loadExercises } from "../exercise/load-exercises";
import { revealedWays } from "../habits/reveal";
import { listEdges } from "../plan/list-edges";
import type { Screen } from "./photograph-screens";

const EXERCISE = "alcove";
const HABIT = "plan-depth";
const DPI = 200;
const MM_PER_INCH = 25.4;
/** A hard pencil's line. */
const PENCIL = 'fill="none" stroke="#5c5c60" stroke-width="0.45" stroke-linecap="round" stroke-opacity="0.75"';

/** The screens of Check: a sheet drawn on by someone with a habit, scanned, confirmed and marked. */
export const CHECK_SCREENS: readonly Screen[] = [
  { name: "check-1-choose", show: (page) => open(page) },
  { name: "check-2-confirm", show: (page) => confirm(page) },
  { name: "check-3-result", show: mark },
];

async function open(page: Page): Promise<void> {
  await page.goto("/check");
  await page.waitForLoadState("networkidle");
}

async function confirm(page: Page): Promise<void> {
  await open(page);
  const file = { name: "sheet.png", mimeType: "image/png", buffer: await scannedSheet() };
  await page.locator("input[type=file]").first().setInputFiles(file);
  await page.getByRole("heading", { name: "Is this what you drew?" }).waitFor();
}

async function mark(page: Page): Promise<void> {
  await confirm(page);
  await page.getByRole("button", { name: "That is it: mark it" }).click();
  await page.locator(".check-number").waitFor();
}

/** The printed sheet with the lines of a set drawn where the habit puts their ends. */
async function scannedSheet(): Promise<Buffer> {
  const course = (await loadExercises(join(process.cwd(), "exercises"))).flatMap((entry) =>
    entry.ok ? [entry.exercise] : [],
  );
  const written = course.find(({ id }) => id === EXERCISE);
  const sheet = written && layOutPracticeSheet(written, { paper: "letter" });
  if (!sheet) throw new Error(`The course has no ${EXERCISE}, or its sheet does not fit.`);
  const { exercise, layout } = sheet;
  const points = exercisePoints(exercise);
  const way = revealedWays(exercise).find(({ id }) => id === HABIT);
  const places = new Map(
    exercise.task.marks.map((name, i) => {
      const [X, Z] = way?.places[i] ?? points.get(name)?.picture ?? [0, 0];
      const mm = 1000 / exercise.scaleRatio;
      return [name, [layout.picture.at[0] + X * mm, layout.picture.at[1] - Z * mm]] as const;
    }),
  );
  const lines = listEdges(exercise.plan, points).flatMap(({ from, to }) => {
    const [a, b] = [places.get(from), places.get(to)];
    return a && b ? [`<path d="M${a[0]} ${a[1]}L${b[0]} ${b[1]}" ${PENCIL}/>`] : [];
  });
  const { widthMm, heightMm } = layout;
  const [width, height] = [widthMm, heightMm].map((mm) => Math.round((mm * DPI) / MM_PER_INCH));
  const pencil = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${widthMm} ${heightMm}">${lines.join("")}</svg>`;
  return sharp(await pageToPng(studentPage(sheet, null), { dpi: DPI }))
    .composite([{ input: Buffer.from(pencil) }])
    .png()
    .toBuffer();
}
