import { MARKER_MM } from "../../sheet/marker-places";
import type { GreyPixels } from "../pixels";
import type { SeenMarker } from "./find-markers";
import { fewMarkers, NOT_OUR_SHEET, type PhotoTrouble, TOO_BLURRED, TOO_DARK, TOO_SMALL } from "./photo-trouble";
import { shrinkGrey } from "./shrink-grey";

/**
 * Edges blurred so wide, millimetres of paper: as wide as a square of the code, half of which is lost; then a pencil's line of
 * half a millimetre loses half its darkness, or nearly all.
 */
const BLUR_MM = { code: 0.5, doubtful: 0.9, most: 1.8 } as const;
/** Pixels to the millimetre: a pencil's line is two wide, or one. */
const PIXELS_PER_MM = { doubtful: 4, least: 2.5 } as const;
/** Grey of the white paper, and between it and the black of a marker, 0 to 255. */
const WHITE = { doubtful: 80, least: 40 } as const;
const CONTRAST_LEAST = 24;
/** Of all pixels, the brightest but so many in a hundred stand for the paper. */
const BRIGHT_SHARE = 0.02;
/**
 * Steps between neighbours in the picture made four times smaller (which rids it of noise), to those in one made sixteen times smaller, where
 * they are greatest: a sharp edge is as steep in both, a blurred one less in the first.
 */
const SOFT = { times: 4, more: 4, share: 0.001, ratio: 0.5 } as const;

/** What the markers seen tell of the light, the blur and the size: refusals first, then doubts. */
export function judgeMarkers(seen: readonly SeenMarker[]): {
  readonly refusal: PhotoTrouble | null;
  readonly doubts: readonly PhotoTrouble[];
  /** Whether a code that cannot be read is so because of the blur. */
  readonly isSoft: boolean;
} {
  const perMm = seen.map(pixelsPerMm);
  const blurMm = median(seen.map(({ edgePx }, i) => edgePx / (perMm[i] as number)));
  const white = median(seen.map((each) => each.white));
  const contrast = median(seen.map((each) => each.white - each.black));
  const size = Math.min(...perMm);
  const isSoft = blurMm > BLUR_MM.code;
  if (white < WHITE.least || contrast < CONTRAST_LEAST) return { refusal: TOO_DARK, doubts: [], isSoft };
  if (size < PIXELS_PER_MM.least) return { refusal: TOO_SMALL, doubts: [], isSoft };
  if (blurMm > BLUR_MM.most) return { refusal: TOO_BLURRED, doubts: [], isSoft };
  const doubts = [
    ...(white < WHITE.doubtful ? [{ ...TOO_DARK, say: "The photograph is dark: faint lines may be missed." }] : []),
    ...(size < PIXELS_PER_MM.doubtful
      ? [{ ...TOO_SMALL, say: "The sheet is small in the photograph: fine lines may be missed." }]
      : []),
    ...(blurMm > BLUR_MM.doubtful
      ? [{ ...TOO_BLURRED, say: "The photograph is a little blurred: faint lines may be missed." }]
      : []),
  ];
  return { refusal: null, doubts, isSoft };
}

/** Why under four markers were found: what the picture as a whole tells, and whether a code of ours was read in it. */
export function judgeFew(grey: GreyPixels, seen: readonly SeenMarker[], hasOurCode: boolean): PhotoTrouble {
  if (brightness(grey) < WHITE.least) return TOO_DARK;
  if (isBlurred(grey)) return TOO_BLURRED;
  return seen.length === 0 && !hasOurCode ? NOT_OUR_SHEET : fewMarkers(seen.length);
}

function pixelsPerMm({ corners }: SeenMarker): number {
  const sides = corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % 4] as (typeof corners)[0];
    return Math.hypot(nextX - x, nextY - y);
  });
  return Math.min(...sides) / MARKER_MM;
}

function brightness({ grey }: GreyPixels): number {
  return topShare(countBytes(grey), BRIGHT_SHARE);
}

/** Whether edges are blurred along the rows or down the columns; a shaken picture is so one way only. */
function isBlurred(grey: GreyPixels): boolean {
  if (Math.min(grey.width, grey.height) < 2 * SOFT.times * SOFT.more) return false;
  const larger = shrinkGrey(grey, SOFT.times);
  const smaller = shrinkGrey(larger, SOFT.more);
  return (["across", "down"] as const).some((way) => steepness(larger, way) < SOFT.ratio * steepness(smaller, way));
}

/** How much neighbours differ where they differ most. */
function steepness({ width, height, grey }: GreyPixels, way: "across" | "down"): number {
  const counts = new Uint32Array(256);
  const back = way === "across" ? 1 : width;
  for (let j = 1; j < height; j++)
    for (let i = 1; i < width; i++) {
      const at = j * width + i;
      const step = Math.abs((grey[at] as number) - (grey[at - back] as number));
      counts[step] = (counts[step] as number) + 1;
    }
  return topShare(counts, SOFT.share);
}

function countBytes(bytes: Uint8Array): Uint32Array {
  const counts = new Uint32Array(256);
  for (const each of bytes) counts[each] = (counts[each] as number) + 1;
  return counts;
}

/** The least value that only a share of all lie at or over. */
function topShare(counts: Uint32Array, share: number): number {
  const most = share * counts.reduce((sum, each) => sum + each, 0);
  let [value, over] = [counts.length, 0];
  while (value > 0 && over <= most) {
    value -= 1;
    over += counts[value] as number;
  }
  return value;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}
