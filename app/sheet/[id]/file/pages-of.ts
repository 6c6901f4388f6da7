import { drawingPage } from "@/lib/drawing/drawing-pages/drawing-page";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";
import { rulePages } from "@/lib/drawing/paper/rule-pages";
import { classSetPages, copiesPages } from "@/lib/drawing/practice-sheet/class-set-pages";
import { whyNoPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { practiceSheetPages } from "@/lib/drawing/practice-sheet/practice-sheet-pages";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Order } from "../order";

/** The pages of an order, in order; none where the paper has no room for them: see `whyNone`. */
export function pagesOf(exercise: Exercise, order: Order): readonly PaperPage[] {
  const pages = drawnPages(exercise, order);
  return order.line === "ruled" ? rulePages(pages) : pages;
}

function drawnPages(exercise: Exercise, order: Order): readonly PaperPage[] {
  const { view, paper, copies, seed, point } = order;
  if (view !== "sheet") {
    const drawn = drawingPage(exercise, { view, paper, point });
    return drawn ? [drawn.page] : [];
  }
  const key = order.key === "none" ? false : order.key;
  if (seed !== null) {
    const { unit, level, units } = exercise;
    return classSetPages({ unit, level, units, firstSeed: seed, count: copies, paper, key });
  }
  return copies === 1
    ? practiceSheetPages(exercise, { paper, key })
    : copiesPages(exercise, { count: copies, paper, key });
}

/** Why an order has no pages, in a sentence. */
export function whyNone(exercise: Exercise, { view, paper }: Order): string {
  const why = view === "sheet" ? whyNoPracticeSheet(exercise, paper) : null;
  return why ?? "The stage is too large for this paper at any scale.";
}
