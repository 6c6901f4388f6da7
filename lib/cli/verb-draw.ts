import { writeFileSync } from "node:fs";
import { extname } from "node:path";
import { drawingPage } from "../drawing/drawing-pages/drawing-page";
import { DRAWING_VIEWS } from "../drawing/drawing-pages/drawing-view";
import { MOST_PIXELS, pageToPng, pixelsOf } from "../drawing/paper/page-to-png";
import { pageToSvg } from "../drawing/paper/page-to-svg";
import { pagesToPdf } from "../drawing/paper/pages-to-pdf";
import type { PaperPage } from "../drawing/paper/paper-page";
import { LINE_HANDS, rulePages } from "../drawing/paper/rule-pages";
import { KEY_DEGREES } from "../drawing/practice-sheet/answer-key-pages";
import { layOutPracticeSheet } from "../drawing/practice-sheet/lay-out-practice-sheet";
import { type KeyChoice, practiceSheetPages } from "../drawing/practice-sheet/practice-sheet-pages";
import type { Exercise } from "../exercise/exercise";
import { exercisePoints } from "../exercise/exercise-points";
import { nearestName } from "../exercise/nearest-name";
import { PAPERS, type Paper } from "../sheet/paper-size";
import { done, type Outcome, refused, wrongCall } from "./outcome";
import { readSoundExercise, resolvePath } from "./read-input";

export const DRAW_USAGE = "draw EXERCISE --view plan|picture|construction|both|sheet --out FILE.svg|.pdf|.png";

const VIEWS = [...DRAWING_VIEWS, "sheet"] as const;
const ENDINGS = [".svg", ".pdf", ".png"] as const;
const KEYS = [...KEY_DEGREES, "all"] as const;
/** 14,400 points, 72 to the inch: the largest page that readers of PDF must open (ISO 32000-1, annex C; from memory). */
const MOST_PDF_MM = 5080;
const DPI = { least: 30, usual: 300, most: 1200 } as const;

type Options = Readonly<Record<string, string>>;
type Drawn = { readonly pages: readonly PaperPage[]; readonly scale: string };

/** `draw EXERCISE --view V --out FILE`: a drawing in real paper millimetres, as SVG, PDF or PNG by the file's ending. */
export async function draw(words: readonly string[], text: boolean, options: Options): Promise<Outcome> {
  const [file] = words;
  if (file === undefined || words.length > 1) return wrongCall("draw needs one exercise file", DRAW_USAGE);
  const { view, out } = options;
  if (view === undefined) return wrongCall("say what to draw", `--view ${VIEWS.join("|")}`);
  if (out === undefined) return wrongCall("say where the drawing goes", "--out drawing.pdf");
  const refusal = refuseOptions(options);
  if (refusal) return refusal;
  const exercise = readSoundExercise(file);
  if (!exercise.ok) return refused(...exercise.errors);
  const drawn = drawPages(file, exercise.value, options);
  if ("exitCode" in drawn) return drawn;
  const pages = options.line === "ruled" ? rulePages(drawn.pages) : drawn.pages;
  const bytes = await writeBytes(pages, out, Number(options.dpi ?? DPI.usual), exercise.value.title);
  if (!(bytes instanceof Uint8Array)) return bytes;
  try {
    writeFileSync(resolvePath(out), bytes);
  } catch (error) {
    return refused({
      file: out,
      where: "",
      message: `it cannot be written: ${reason(error)}`,
      hint: "name another place",
    });
  }
  const [widthMm, heightMm] = sizeOf(drawn.pages);
  const said = { file: out, view, scale: drawn.scale, widthMm, heightMm };
  if (!text) return done(JSON.stringify({ ...said, pages: pages.length }));
  return done(`${out}: ${view} at ${drawn.scale}, ${pages.length === 1 ? "one page" : `${pages.length} pages`}`);
}

/** What is wrong with the options alone. */
function refuseOptions({ view = "", out = "", paper, key, dpi, point, line }: Options): Outcome | null {
  const unknown =
    notOneOf("view", view, VIEWS) ??
    (paper === undefined ? null : notOneOf("paper", paper, PAPERS)) ??
    (key === undefined ? null : notOneOf("key", key, KEYS)) ??
    (line === undefined ? null : notOneOf("line", line, LINE_HANDS));
  if (unknown) return unknown;
  if (!isOneOf(extname(out).toLowerCase(), ENDINGS))
    return wrongCall(`${out} has no ending that says what to write`, `end it in ${ENDINGS.join(", ")}`);
  if (key !== undefined && view !== "sheet") return wrongCall("--key belongs to --view sheet", DRAW_USAGE);
  if (point !== undefined && view !== "construction")
    return wrongCall("--point belongs to --view construction", DRAW_USAGE);
  const dots = Number(dpi ?? DPI.usual);
  if (!(dots >= DPI.least && dots <= DPI.most))
    return wrongCall(`--dpi is a number from ${DPI.least} to ${DPI.most}, not ${dpi}`, `--dpi ${DPI.usual}`);
  return null;
}

function drawPages(file: string, exercise: Exercise, { view, paper, key, point }: Options): Drawn | Outcome {
  if (point !== undefined && !exercisePoints(exercise).has(point)) {
    const hint = `did you mean ${nearestName(point, exercisePoints(exercise).keys())}?`;
    return refused({ file, where: "/plan", message: `${point} names no point of the plan`, hint });
  }
  const tooLarge = () =>
    refused({
      file,
      where: "/stage",
      message: `the drawing does not fit on ${paper ?? "letter"} paper at any standard scale`,
      hint: "choose a larger paper: --paper tabloid or a3",
    });
  if (view === "sheet") {
    const on = (paper ?? (exercise.units === "m" ? "a4" : "letter")) as Paper;
    const laid = layOutPracticeSheet(exercise, { paper: on, copy: null });
    if (!laid) return tooLarge();
    const pages = practiceSheetPages(exercise, { paper: on, key: (key as KeyChoice | undefined) ?? false });
    return { pages, scale: laid.exercise.scale };
  }
  const drawn = drawingPage(exercise, {
    view: view as (typeof DRAWING_VIEWS)[number],
    point: point ?? null,
    ...(paper === undefined ? {} : { paper: paper as Paper }),
  });
  return drawn ? { pages: [drawn.page], scale: drawn.scale.written } : tooLarge();
}

async function writeBytes(
  pages: readonly PaperPage[],
  out: string,
  dpi: number,
  title: string,
): Promise<Uint8Array | Outcome> {
  const ending = extname(out).toLowerCase();
  if (ending === ".pdf") {
    if (Math.max(...sizeOf(pages)) <= MOST_PDF_MM) return pagesToPdf(pages, { title });
    return wrongCall(`a PDF's page is at most ${MOST_PDF_MM} mm wide and high`, "name a paper: --paper a3");
  }
  const [page, ...more] = pages;
  if (!page || more.length > 0)
    return wrongCall(`${ending} holds one page, and this has ${pages.length}`, "end the file in .pdf");
  if (ending === ".svg") return new TextEncoder().encode(pageToSvg(page));
  if (pixelsOf(page, dpi) > MOST_PIXELS)
    return wrongCall(
      `a picture of ${pixelsOf(page, dpi)} pixels is more than anyone can use`,
      "take a smaller --dpi, or name a paper: --paper a3",
    );
  return pageToPng(page, { dpi });
}

/** Width and height of the first page, as exact as the file says them. */
function sizeOf([first]: readonly PaperPage[]): readonly [widthMm: number, heightMm: number] {
  if (!first) throw new Error("A drawing has at least one page.");
  return [Math.round(first.widthMm * 1000) / 1000, Math.round(first.heightMm * 1000) / 1000];
}

function notOneOf(option: string, value: string, known: readonly string[]): Outcome | null {
  if (isOneOf(value, known)) return null;
  return wrongCall(
    `--${option} ${value} is unknown`,
    `did you mean ${nearestName(value, known)}? There are ${known.join(", ")}`,
  );
}

function isOneOf(value: string, known: readonly string[]): boolean {
  return known.includes(value);
}

function reason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "ENOENT") return "there is no such folder";
  if (code === "EACCES" || code === "EPERM" || code === "EROFS") return "nothing may be written there";
  if (code === "EISDIR") return "it is a folder";
  if (code === "ENOTDIR") return "a part of the path is a file, not a folder";
  if (code === "ENAMETOOLONG") return "the name is too long";
  return code === "ENOSPC" ? "the disk is full" : `something went wrong${code === "" ? "" : ` (${code})`}`;
}
