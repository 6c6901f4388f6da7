import type { DrawingPoint, Lettering } from "../display-list";
import { makeLettering } from "../make-stroke";
import { type FaceName, letteredWidthMm } from "./letter-widths";

/** Distance from one line's foot to the next, in letter heights. */
export const LINE_STEP = 1.9;

/** Where a line may end: at spaces, but not inside a length, as before the fraction of an inch or between a number and its unit. */
const SPACES = /(?<!\d)[ \n\t]+(?!\d+\/\d)|(?<=\d)[ \n\t]+(?!\d+\/\d|(?:mm|cm|m|in|ft)\b)/;

export type TextBlock = {
  /** Upper left corner of the first line's capitals, in a list that counts millimetres (see `PAPER_RATIO`). */
  readonly at: DrawingPoint;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly face?: FaceName;
};

/** The lines a text is broken into so that each fits a width, at spaces only, and not inside a length: a word wider than that has a line of its own. */
export function breakLines(
  text: string,
  { widthMm, heightMm, face = "plain" }: Pick<TextBlock, "widthMm" | "heightMm" | "face">,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(SPACES).filter((part) => part !== "")) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length > 0 && letteredWidthMm(longer, heightMm, face) <= widthMm) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** A paragraph as lettering, line under line, and how far down it reaches: what follows may begin at that second coordinate. */
export function layOutText(
  id: string,
  text: string,
  block: TextBlock,
): { readonly list: readonly Lettering[]; readonly foot: number } {
  const { at, heightMm, face = "plain" } = block;
  const list = breakLines(text, block).map((line, i) =>
    makeLettering(`${id}.${i + 1}`, [at[0], at[1] - heightMm - i * heightMm * LINE_STEP], line, {
      anchor: "start",
      heightMm,
      ...(face === "drafting" ? {} : { face }),
    }),
  );
  return { list, foot: at[1] - heightMm * (1 + Math.max(0, list.length - 1) * LINE_STEP) };
}
