/** The papers a sheet is printed on, upright. */
export const PAPERS = ["letter", "tabloid", "a4", "a3"] as const;
export type Paper = (typeof PAPERS)[number];

export type PaperSize = { readonly widthMm: number; readonly heightMm: number };

const SIZES: Readonly<Record<Paper, PaperSize>> = {
  letter: { widthMm: 215.9, heightMm: 279.4 },
  tabloid: { widthMm: 279.4, heightMm: 431.8 },
  a4: { widthMm: 210, heightMm: 297 },
  a3: { widthMm: 297, heightMm: 420 },
};

/** Nothing is printed nearer to the paper's edge: most office printers reach to 4 or 6 mm of it (common practice, no source). */
export const PRINT_MARGIN_MM = 8;

/** Width and height of a paper standing upright: ISO 216 (A4, A3) and ANSI/ASME Y14.1 (A, which is Letter; B, which is Tabloid). */
export function paperSize(paper: Paper): PaperSize {
  return SIZES[paper];
}
