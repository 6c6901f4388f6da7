import { INCH_M } from "../../../measure/length";

/** Units of SVG lengths in metres of paper. A pixel is none of them: programs mean different sizes by it. */
const PAPER: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  q: 0.00025,
  in: INCH_M,
  pt: INCH_M / 72,
  pc: INCH_M / 6,
};

const NAMES: Readonly<Record<string, string>> = {
  mm: "millimetres",
  cm: "centimetres",
  q: "quarter millimetres",
  in: "inches",
  pt: "points",
  pc: "picas",
};

export type SvgLength = { readonly amount: number; readonly paperM: number | null; readonly name: string | null };

const LENGTH = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(mm|cm|q|in|pt|pc|px|%|em|ex)?\s*$/i;

/** A length as an attribute has it; null when it is none, or one of no fixed size. */
export function svgLength(written: string | undefined): SvgLength | null {
  const [, amount, unit = ""] = LENGTH.exec(written ?? "") ?? [];
  const small = unit.toLowerCase();
  if (amount === undefined || ["%", "em", "ex"].includes(small)) return null;
  return { amount: Number(amount), paperM: PAPER[small] ?? null, name: NAMES[small] ?? null };
}

/** A number of a shape, in user units; what is missing or no number is `otherwise`. Millimetres and the like count 96 units an inch. */
export function userUnits(written: string | undefined, otherwise = 0): number {
  const length = svgLength(written);
  if (!length) return otherwise;
  return length.paperM === null ? length.amount : (length.amount * length.paperM * 96) / INCH_M;
}

/** The four numbers of a viewBox, or null. */
export function viewBoxOf(written: string | undefined): readonly [number, number, number, number] | null {
  const numbers = (written ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [x, y, width, height] = numbers;
  if (numbers.length !== 4 || !numbers.every(Number.isFinite)) return null;
  return width && height && width > 0 && height > 0 ? [x as number, y as number, width, height] : null;
}
