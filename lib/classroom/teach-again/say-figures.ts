import { type ItemFigures, SMALL_CLASS } from "./item-analysis";
import { chiSquare2, type Spread } from "./spread-ellipse";

/**
 * Bounds of a correlation that tells apart fairly and well: 0.2 and 0.4, as the manual of the R package performance has
 * them for item discriminations, https://easystats.github.io/performance/reference/item_reliability.html.
 */
const FAIR = 0.2;
const GOOD = 0.4;

/** Shares of a class's marks that the ellipses about their mean hold, if they spread normally. */
export const SHARES = [0.5, 0.95] as const;

/** Whether figures of so many students can be leaned on; empty where they can. */
export function saySmall(students: number): string {
  if (students >= SMALL_CLASS) return "";
  return `This is a small class, of ${students}: with fewer than ${SMALL_CLASS}, one drawing more or less changes these figures much. Look at the drawings themselves.`;
}

export function sayDifficulty({ difficulty }: ItemFigures): string {
  return difficulty === null ? "nobody yet" : `${Math.round(100 * difficulty)} %`;
}

export function sayDiscrimination({ discrimination }: ItemFigures): string {
  if (discrimination.kind === "none") return discrimination.why === "few" ? "too few to tell" : "all scores are alike";
  const { r, pairs } = discrimination;
  const words = r >= GOOD ? "well" : r >= FAIR ? "fairly" : r >= 0 ? "hardly" : "the wrong way round";
  const small = pairs < SMALL_CLASS ? `, of only ${pairs}` : "";
  return `${r.toFixed(2)}, ${words}${small}`;
}

/** The spread of marks in words, lengths in millimetres of paper. */
export function saySpread(spread: Spread, toMm: (metres: number) => number): string {
  const quantiles = SHARES.map((share) => `${chiSquare2(share).toFixed(3)} for ${100 * share} %`).join(" and ");
  if (spread.kind === "few") return `With ${spread.n === 1 ? "one mark" : `${spread.n} marks`} there is no spread yet.`;
  if (spread.kind === "one-place") return `All ${spread.n} marks lie at one place.`;
  const [long, short] = [toMm(spread.long), toMm(spread.short)].map((mm) => mm.toFixed(1));
  return `${spread.n} marks. They spread by ${long} mm of paper one way and ${short} mm across it (standard deviations). The ellipses hold half and 95 % of marks spread like these: quantiles of chi-square with 2 degrees of freedom, ${quantiles}.`;
}
