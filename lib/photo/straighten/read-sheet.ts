import { markerPlaces } from "../../sheet/marker-places";
import { PAPERS, type Paper, PRINT_MARGIN_MM, paperSize } from "../../sheet/paper-size";
import type { SheetPlace } from "../../sheet/place-drawings";
import { grow, holds, type SheetBox } from "../../sheet/sheet-box";
import type { SheetCode } from "../../sheet/sheet-code";
import type { PageFit } from "../page-fit";
import type { GreyPixels } from "../pixels";
import { findMarkers } from "./find-markers";
import { fitPage, LEAST_MARKERS, type MarkerFit } from "./fit-page";
import { judgeFew, judgeMarkers } from "./judge-photo";
import { photoFromSheet, sheetFromPhoto } from "./map-page";
import { measurePaper } from "./measure-paper";
import type { OpenCv } from "./open-cv";
import {
  BUNCHED,
  fewMarkers,
  markersLeftOut,
  NEWER_SHEET,
  NO_CODE,
  NONE_TO_CHECK_BY,
  NOT_A_PLANE,
  notFlat,
  OTHER_CODE,
  PARTLY_OUTSIDE,
  type PhotoTrouble,
  printedAtAnotherSize,
  SPOILED_CODE,
  TOO_BLURRED,
  TWO_SHEETS,
} from "./photo-trouble";
import { type CodeReading, type ReadBarcodes, readCode } from "./read-code";
import { hasBox } from "./seen-box";
import { sharpenGrey } from "./sharpen-grey";
import { shrinkGrey } from "./shrink-grey";
import { straighten } from "./straighten";

/** The programs that a sheet is read with, loaded by whoever asks: a page's worker, or the command line. */
export type SheetTools = { readonly cv: OpenCv; readonly readBarcodes: ReadBarcodes };

export type SheetReading =
  | {
      readonly kind: "straight";
      readonly code: SheetCode;
      /** The middle of the code as it lies in the fit: whoever lays the sheet out again can hold it to its layout. */
      readonly codeAt: SheetPlace;
      readonly fit: PageFit;
      /** Ids of the markers that the fit rests on. */
      readonly markers: readonly number[];
      /** What is doubtful about the photograph, though it can be read. */
      readonly doubts: readonly PhotoTrouble[];
    }
  | (PhotoTrouble & { readonly kind: "refused" });

/** The code stands at the right on every sheet, within this share of its width. */
const CODE_SHARE = 0.45;
/** Its squares are half a millimetre and more: four pixels each. Where they run together, sharper ones (reach and times) are tried. */
const CODE_TRIES: readonly { readonly pixelsPerMm: number; readonly sharpen: readonly [number, number] | null }[] = [
  { pixelsPerMm: 8, sharpen: null },
  { pixelsPerMm: 8, sharpen: [2, 2] },
  { pixelsPerMm: 10, sharpen: [3, 1] },
];
/** A photograph larger than this is shrunk for a search of the whole of it, pixels along its longer side. */
const WHOLE_PX = 5000;
/** Left over by markers of flat paper photographed well, at most; more is curled paper. Millimetres. */
const FLAT_MM = 0.15;
/** The paper that the code names may fit the markers so much worse than another, and no more: else the code is another sheet's. */
const OTHER_PAPER = { times: 2, mm: 0.05 } as const;

/**
 * Which sheet a photograph shows and where it lies in it: at least four of its markers found, its code read, the page fitted
 * on the paper that the code names. Anything else is refused with what to do about it, never guessed at.
 */
export async function readSheet({ cv, readBarcodes }: SheetTools, grey: GreyPixels): Promise<SheetReading> {
  const seen = findMarkers(cv, grey);
  if (new Set(seen.map(({ id }) => id)).size < seen.length) return refuse(TWO_SHEETS);
  if (seen.length < LEAST_MARKERS) {
    const { kind } = await readCode(readBarcodes, shrunk(grey));
    return refuse(judgeFew(grey, seen, kind !== "none" && kind !== "not ours"));
  }
  const { refusal, doubts, isSoft } = judgeMarkers(seen);
  if (refusal) return refuse(refusal);
  const fits = PAPERS.map((paper) => ({ paper, result: fitPage(seen, markerPlaces(paper), grey) }));
  const best = bestFit(fits);
  const code = await findCode(readBarcodes, grey, best);
  if (code.kind !== "read") return refuse(codeTrouble(code.kind, isSoft));
  const result = fits.find(({ paper }) => paper === code.code.paper)?.result;
  if (result?.kind !== "fitted") return refuse(fitTrouble(result?.why, seen.length));
  const { fit, used, leftOut } = result;
  if (residual(fit) > OTHER_PAPER.times * residual(best?.fit ?? fit) + OTHER_PAPER.mm) return refuse(NOT_A_PLANE);
  const { widthMm, heightMm } = paperSize(code.code.paper);
  const paper: SheetBox = { left: 0, top: 0, right: widthMm, bottom: heightMm };
  // Where the code stands is known to lie on the sheet, or it is another sheet's.
  const at = sheetFromPhoto(fit, code.at);
  if (!at || !holds(paper, { left: at[0], top: at[1], right: at[0], bottom: at[1] })) return refuse(TWO_SHEETS);
  const size = measurePaper(grey, fit, code.code.paper);
  return {
    kind: "straight",
    code: code.code,
    codeAt: at,
    fit,
    markers: used,
    doubts: [
      ...doubts,
      ...(leftOut.length > 0 ? [markersLeftOut(leftOut.length)] : []),
      ...(used.length === LEAST_MARKERS ? [NONE_TO_CHECK_BY] : []),
      ...(residual(fit) > FLAT_MM ? [notFlat(residual(fit))] : []),
      ...(size.kind === "another size" ? [printedAtAnotherSize(size.share)] : []),
      ...(hasBox(grey, fit, grow(paper, -PRINT_MARGIN_MM)) ? [] : [PARTLY_OUTSIDE]),
    ],
  };
}

type PaperFit = { readonly paper: Paper; readonly result: MarkerFit };
type BestFit = { readonly paper: Paper; readonly fit: PageFit } | null;

function bestFit(fits: readonly PaperFit[]): BestFit {
  return fits
    .flatMap(({ paper, result }) => (result.kind === "fitted" ? [{ paper, fit: result.fit }] : []))
    .reduce<BestFit>((best, each) => (best && residual(best.fit) <= residual(each.fit) ? best : each), null);
}

/** The code where it should be, in the page seen straight on by the paper whose markers fit best; else anywhere in the photograph. */
async function findCode(readBarcodes: ReadBarcodes, grey: GreyPixels, best: BestFit): Promise<CodeReading> {
  for (const { pixelsPerMm, sharpen } of best ? CODE_TRIES : []) {
    const { paper, fit } = best as Exclude<BestFit, null>;
    const { widthMm, heightMm } = paperSize(paper);
    const box: SheetBox = { left: widthMm * (1 - CODE_SHARE), top: 0, right: widthMm, bottom: heightMm };
    const page = straighten(grey, fit, box, pixelsPerMm);
    const found = await readCode(readBarcodes, sharpen ? sharpenGrey(page, ...sharpen) : page);
    const at =
      found.kind === "read" &&
      photoFromSheet(fit, [box.left + found.at[0] / pixelsPerMm, box.top + found.at[1] / pixelsPerMm]);
    if (found.kind === "read" && at) return { ...found, at };
    if (found.kind === "several") return found;
  }
  const small = shrunk(grey);
  const found = await readCode(readBarcodes, small);
  if (found.kind !== "read") return found;
  const times = Math.round(grey.width / small.width);
  return { ...found, at: [found.at[0] * times, found.at[1] * times] };
}

function shrunk(grey: GreyPixels): GreyPixels {
  return shrinkGrey(grey, Math.max(1, Math.ceil(Math.max(grey.width, grey.height) / WHOLE_PX)));
}

function residual({ residualMm }: PageFit): number {
  return residualMm ?? 0;
}

function refuse(trouble: PhotoTrouble): SheetReading {
  return { kind: "refused", ...trouble };
}

function codeTrouble(kind: Exclude<CodeReading["kind"], "read">, isSoft: boolean): PhotoTrouble {
  if (kind === "none" && isSoft) return TOO_BLURRED;
  if (kind === "several") return TWO_SHEETS;
  if (kind === "not ours") return OTHER_CODE;
  if (kind === "newer") return NEWER_SHEET;
  return kind === "spoiled" ? SPOILED_CODE : NO_CODE;
}

function fitTrouble(why: "few" | "twice" | "bunched" | "contradictory" | undefined, count: number): PhotoTrouble {
  if (why === "few") return fewMarkers(count);
  if (why === "twice") return TWO_SHEETS;
  return why === "bunched" ? BUNCHED : NOT_A_PLANE;
}
