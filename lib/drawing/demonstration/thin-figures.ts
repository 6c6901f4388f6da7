import type { DisplayList, Lettering } from "../display-list";
import { textWidthMm } from "../lettering-box";

/** Figures of a rule keep this much between them, mm. */
const BETWEEN_MM = 1.6;

/**
 * The figures of a rule, thinned until they stand clear of one another: every one of them, or every second, third and so on
 * from the centre line out. What is no figure stays.
 */
export function thinFigures(
  list: DisplayList,
  isFigure: (item: Lettering) => boolean,
  scaleRatio: number,
): DisplayList {
  const figures = list.flatMap((item) => (item.kind === "lettering" && isFigure(item) ? [item] : []));
  const places = figures.map(({ at }) => Math.abs(at[0])).sort((a, b) => a - b);
  const step = places.find((place) => place > 0);
  if (step === undefined) return list;
  const widest = Math.max(...figures.map(({ text, heightMm }) => textWidthMm(text, heightMm)));
  const stepMm = (step * 1000) / scaleRatio;
  const every = Math.max(1, Math.ceil((widest + BETWEEN_MM) / stepMm));
  return list.filter((item) => {
    if (item.kind !== "lettering" || !isFigure(item)) return true;
    return Math.round(Math.abs(item.at[0]) / step) % every === 0;
  });
}
