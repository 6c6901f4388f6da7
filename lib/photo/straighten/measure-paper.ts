import { PAPERS, type Paper, paperSize } from "../../sheet/paper-size";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { PageFit } from "../page-fit";
import type { GreyPixels } from "../pixels";
import { photoFromSheet } from "./map-page";
import { sampleGrey } from "./sample-grey";

export type PaperMeasure =
  /**
   * The paper's edges stand where they do on a sheet printed at its full size. An A3 sheet printed on A4 is alike in every
   * proportion: only its bar tells.
   */
  | { readonly kind: "fits" }
  /** Printed so many times its size, on a paper of this name. */
  | { readonly kind: "another size"; readonly share: number; readonly on: Paper }
  /** The edges are not plainly seen, or fit no paper. */
  | { readonly kind: "unknown" };

/** Looked for from so far inside the paper's edge, where nothing is printed, to so far outside, millimetres. */
const LOOK = { inside: 6, outside: 34 } as const;
const STEP_MM = 0.25;
/** An edge parts the mean grey of so many millimetres on either side. */
const SIDE_MM = 1.5;
/** By this much at least, grey levels. */
const CONTRAST = 18;
/** Profiles across a side, clear of the corners. */
const PROFILES = 24;
const CLEAR = 0.08;
/** So many of them, as a share, have the edge within this of their middle one, millimetres. */
const AGREED = { share: 0.6, mm: 1 } as const;
/** Width and height have to tell one size, this near; and a size nearer to the full one than this is taken for it: edges are seen to half a millimetre. */
const SAME_SHARE = 0.008;
const FULL = 0.018;
/** Sizes that a printer's "fit to page" makes of one paper on another, and somewhat more. */
const SHARES = { least: 0.6, most: 1.5 } as const;

/**
 * At what size a sheet was printed, by its paper: a page printed smaller has its markers smaller too, and they alone cannot tell; but
 * the paper round them is then larger than it should be. Needs all four edges against a table of another grey.
 */
export function measurePaper(grey: GreyPixels, fit: PageFit, paper: Paper): PaperMeasure {
  const { widthMm, heightMm } = paperSize(paper);
  const along = (n: number) => CLEAR + ((1 - 2 * CLEAR) * (n + 0.5)) / PROFILES;
  const left = findEdge(grey, fit, (n, out) => [-out, along(n) * heightMm]);
  const right = findEdge(grey, fit, (n, out) => [widthMm + out, along(n) * heightMm]);
  const above = findEdge(grey, fit, (n, out) => [along(n) * widthMm, -out]);
  const below = findEdge(grey, fit, (n, out) => [along(n) * widthMm, heightMm + out]);
  if (left === null || right === null || above === null || below === null) return { kind: "unknown" };
  const [wide, high] = [widthMm + left + right, heightMm + above + below];
  const sizes = [paper, ...PAPERS.filter((each) => each !== paper)].flatMap((on) => {
    const size = paperSize(on);
    const [across, down] = [size.widthMm / wide, size.heightMm / high];
    const share = (across + down) / 2;
    return Math.abs(across - down) < SAME_SHARE && share > SHARES.least && share < SHARES.most ? [{ on, share }] : [];
  });
  const [size] = sizes;
  if (!size) return { kind: "unknown" };
  if (size.on === paper && Math.abs(size.share - 1) < FULL) return { kind: "fits" };
  return { kind: "another size", ...size };
}

/** How far outside its place an edge of the paper lies, millimetres; null where it is not plainly seen. */
function findEdge(grey: GreyPixels, fit: PageFit, at: (profile: number, outMm: number) => SheetPlace): number | null {
  const found = Array.from({ length: PROFILES }, (_, n) => steepest(profile(grey, fit, (out) => at(n, out))));
  const seen = found.filter((each) => each !== null).sort((a, b) => a - b);
  const middle = seen[seen.length >> 1];
  if (middle === undefined) return null;
  const agreed = seen.filter((each) => Math.abs(each - middle) < AGREED.mm);
  if (agreed.length < AGREED.share * PROFILES) return null;
  return agreed.reduce((sum, each) => sum + each, 0) / agreed.length;
}

/** The greys outward across an edge; it ends where the photograph does. */
function profile(grey: GreyPixels, fit: PageFit, place: (outMm: number) => SheetPlace): readonly number[] {
  const greys: number[] = [];
  for (let out = -LOOK.inside; out <= LOOK.outside; out += STEP_MM) {
    const point = photoFromSheet(fit, place(out));
    if (!point || point[0] < 0 || point[1] < 0 || point[0] > grey.width || point[1] > grey.height) break;
    greys.push(sampleGrey(grey, point[0], point[1]));
  }
  return greys;
}

/** Where the greys on either side differ most, millimetres outward; null where they hardly do. */
function steepest(greys: readonly number[]): number | null {
  const side = Math.round(SIDE_MM / STEP_MM);
  const mean = (from: number) => greys.slice(from, from + side).reduce((sum, each) => sum + each, 0) / side;
  let [best, at] = [CONTRAST, -1];
  for (let i = side; i + side <= greys.length; i++) {
    const step = Math.abs(mean(i) - mean(i - side));
    if (step > best) [best, at] = [step, i];
  }
  return at < 0 ? null : (at - 0.5) * STEP_MM - LOOK.inside;
}
