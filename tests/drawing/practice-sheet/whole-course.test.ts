import { describe, expect, it } from "vitest";
import type { PlaneBox } from "@/lib/drawing/clear-lettering";
import { displayBounds } from "@/lib/drawing/display-bounds";
import type { DisplayItem, Lettering } from "@/lib/drawing/display-list";
import { letteredWidthMm } from "@/lib/drawing/paper/letter-widths";
import { type Layer, PAPER_RATIO, type PaperPage } from "@/lib/drawing/paper/paper-page";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { practiceSheetPages } from "@/lib/drawing/practice-sheet/practice-sheet-pages";
import { type Exercise, UNITS } from "@/lib/exercise/exercise";
import { findVariant } from "@/lib/generator/find-variant";
import { variantId } from "@/lib/generator/variant-id";
import { MARKER_QUIET_MM } from "@/lib/sheet/marker-places";
import { PAPERS, type Paper, PRINT_MARGIN_MM } from "@/lib/sheet/paper-size";
import { grow, holds, overlap, type SheetBox, sheetBox } from "@/lib/sheet/sheet-box";
import { SHIPPED } from "@/tests/exercises/shipped";

type Placed = { readonly group: string; readonly id: string; readonly box: SheetBox };

/** The layer of the plan: before it the picture, after it what is drawn in millimetres. */
const PLAN_LAYER = 4;
/** Lettering widths are estimates and lines have a width: things may touch by this much, millimetres. */
const TOUCH_MM = 0.05;
/** Of the words' boxes the estimate of a descender, millimetres. */
const HANG = 0.3;
/** Letters may touch by a corner's width of white, millimetres. */
const LETTERS_TOUCH_MM = 0.15;

/** Every single thing on a page in millimetres of the paper, from what is drawn and not from the layout. */
function thingsOn(page: PaperPage): Placed[] {
  return page.layers.flatMap((layer, i) =>
    layer.list.flatMap((item): Placed[] => {
      const box = boxOf(item, layer);
      return box ? [{ group: groupOf(item, i), id: item.id, box }] : [];
    }),
  );
}

function boxOf(item: DisplayItem, layer: Layer): SheetBox | null {
  const mm = 1000 / layer.scaleRatio;
  const bounds =
    item.kind === "lettering" && layer.scaleRatio === PAPER_RATIO
      ? faceBox(item)
      : displayBounds([item], layer.scaleRatio);
  const cut = bounds && cutTo(bounds, layer.window);
  if (!cut) return null;
  const [left, bottom, right, top] = cut;
  const [x, y] = layer.at;
  return { left: x + left * mm, right: x + right * mm, top: y - top * mm, bottom: y - bottom * mm };
}

/** Lettering of a list that counts millimetres, by the face's own widths. */
function faceBox({ at, text, heightMm, anchor, face, shiftMm }: Extract<DisplayItem, { kind: "lettering" }>): PlaneBox {
  const width = letteredWidthMm(text, heightMm, face ?? "drafting");
  const left = at[0] + shiftMm[0] - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
  return [left, at[1] + shiftMm[1] - heightMm * HANG, left + width, at[1] + shiftMm[1] + heightMm];
}

function cutTo(box: PlaneBox, window: PlaneBox | undefined): PlaneBox | null {
  if (!window) return box;
  const [left, bottom] = [Math.max(box[0], window[0]), Math.max(box[1], window[1])];
  const [right, top] = [Math.min(box[2], window[2]), Math.min(box[3], window[3])];
  return left <= right && bottom <= top ? [left, bottom, right, top] : null;
}

function groupOf({ id }: DisplayItem, layer: number): string {
  if (layer < PLAN_LAYER) return "picture";
  if (layer === PLAN_LAYER) return "plan";
  const [first = "", second = ""] = id.split(".");
  if (first === "marker") return `marker ${second}`;
  if (first === "sheet") return second === "task" ? "tasks" : second;
  return first;
}

/** What is wrong with a page on one paper: outside what a printer reaches, in a marker's or the code's white, over something else. */
function faultsOf(exercise: Exercise, paper: Paper): string[] {
  const sheet = layOutPracticeSheet(exercise, { paper, copy: 12 });
  const [page] = practiceSheetPages(exercise, { paper, copy: 12 });
  if (!sheet || !page) return [`It does not fit ${paper}.`];
  const printable = grow({ left: 0, top: 0, right: page.widthMm, bottom: page.heightMm }, TOUCH_MM - PRINT_MARGIN_MM);
  const things = thingsOn(page);
  const outside = things.filter(({ box }) => !holds(printable, box)).map(({ id }) => `${id} is outside of ${paper}`);
  const quiet = [
    ...sheet.layout.markers.map(({ id, box }) => ({ group: `marker ${id}`, box: grow(box, MARKER_QUIET_MM) })),
    { group: "code", box: sheet.layout.code },
  ];
  const kept = quiet.flatMap(({ group, box }) =>
    things
      .filter((thing) => thing.group !== group && overlap(grow(box, -TOUCH_MM), thing.box))
      .map(({ id }) => `${id} is in the white of the ${group} on ${paper}`),
  );
  const over = things.flatMap((a, i) =>
    things
      .slice(i + 1)
      .filter((b) => a.group !== b.group && overlap(grow(a.box, -TOUCH_MM), b.box))
      .map((b) => `${a.id} and ${b.id} on ${paper}`),
  );
  return [...outside, ...kept, ...over];
}

/** Letters that lie over other letters, which cannot be read; the sign of the centre line is two letters crossed. */
function crossedLetters(page: PaperPage): string[] {
  const letters = page.layers.flatMap((layer) =>
    layer.list.flatMap((item) =>
      item.kind === "lettering" && !item.id.startsWith("plan.stage.centre-line") ? [letterBox(item, layer)] : [],
    ),
  );
  return letters.flatMap((a, i) =>
    letters
      .slice(i + 1)
      .filter((b) => overlap(grow(a.box, -LETTERS_TOUCH_MM), b.box))
      .map((b) => `“${a.text}” and “${b.text}”: ${page.title}`),
  );
}

/** The capitals of a lettering by its face's own widths. */
function letterBox({ at, text, heightMm, anchor, face, shiftMm }: Lettering, { scaleRatio, at: [x, y] }: Layer) {
  const mm = 1000 / scaleRatio;
  const width = letteredWidthMm(text, heightMm, face ?? "drafting");
  const left = x + at[0] * mm + shiftMm[0] - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
  const foot = y - at[1] * mm - shiftMm[1];
  return { text, box: sheetBox(left, foot - heightMm, width, heightMm) };
}

/** One of every other level of each unit, as a class set would print it. */
const GENERATED = UNITS.flatMap((unit) =>
  [1, 3, 5].flatMap((level): [string, Exercise][] => {
    const id = variantId({ unit, level, seed: 11 });
    const made = findVariant(id);
    return made ? [[id, made.exercise]] : [];
  }),
);

describe("the practice sheets of the whole course", () => {
  it.each(SHIPPED.map(({ exercise }) => [exercise.id, exercise] as const))(
    "%s fits all four papers, and nothing lies over anything else",
    (_, exercise) => {
      expect(PAPERS.flatMap((paper) => faultsOf(exercise, paper))).toEqual([]);
    },
  );

  it.each(SHIPPED.map(({ exercise }) => [exercise.id, exercise] as const))(
    "%s has no letters over letters, on its sheet or its keys",
    (_, exercise) => {
      const pages = (["letter", "a4"] as const).flatMap((paper) => practiceSheetPages(exercise, { paper, key: "all" }));
      expect(pages.flatMap(crossedLetters)).toEqual([]);
    },
  );
});

describe("the practice sheets of generated exercises", () => {
  it("are of every unit", () => expect(GENERATED).toHaveLength(3 * UNITS.length));

  it.each(GENERATED)("%s fits the small papers, and nothing lies over anything else", (_, exercise) => {
    const papers = ["letter", "a4"] as const;
    expect(papers.flatMap((paper) => faultsOf(exercise, paper))).toEqual([]);
    const pages = papers.flatMap((paper) => practiceSheetPages(exercise, { paper, key: "points" }));
    expect(pages.flatMap(crossedLetters)).toEqual([]);
  });
});
