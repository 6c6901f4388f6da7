import { findShelf, put, take } from "@/app/_parts/kept-work/shelf";
import { LINE_HANDS, type LineHand } from "@/lib/drawing/paper/rule-pages";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";
import { FORMATS, type Format, KEYS, type Key, VIEWS, type View } from "./order";

/** What was chosen last: kept for the next sheet. */
export type Choices = {
  readonly view: View;
  readonly format: Format;
  readonly paper: Paper;
  readonly key: Key;
  readonly line: LineHand;
};

export const USUAL: Choices = { view: "sheet", format: "pdf", paper: "letter", key: "none", line: "hand" };

const CHOICES_KEY = "plasterline.sheet";

export function keepChoices({ view, format, paper, key, line }: Choices): void {
  const shelf = findShelf();
  if (shelf) put(shelf, CHOICES_KEY, [view, format, paper, key, line].join(" "));
}

/** The choices that were kept; of what is none of them, the usual ones. */
export function keptChoices(): Choices {
  const shelf = findShelf();
  const [view, format, paper, key, line] = String((shelf && take(shelf, CHOICES_KEY)) ?? "").split(" ");
  return {
    view: VIEWS.find((each) => each === view) ?? USUAL.view,
    format: FORMATS.find((each) => each === format) ?? USUAL.format,
    paper: PAPERS.find((each) => each === paper) ?? USUAL.paper,
    key: KEYS.find((each) => each === key) ?? USUAL.key,
    line: LINE_HANDS.find((each) => each === line) ?? USUAL.line,
  };
}
