import { MARKER_MM } from "../../sheet/marker-places";
import type { GreyPixels } from "../pixels";
import type { SeenMarker } from "./find-markers";
import { fewMarkers, NOT_OUR_SHEET, type PhotoTrouble, TOO_BLURRED, TOO_DARK, TOO_SMALL } from "./photo-trouble";
import { shrinkGrey } from "./shrink-grey";

/** Edges blurred so wide, millimetres of paper: a pencil's line of half a millimetre loses half its darkness, or nearly all. */
const BLUR_MM = { doubtful: 0.9, most: 1.8 } as const;
/** Pixels to the millimetre: a pencil's line is two wide, or one. */
const PIXELS_PER_MM = { doubtful: 4, least: 2 } as const;
/** Grey of the white paper, and between it and the black of a marker, 0 to 255. */
const WHITE = { doubtful: 80, least: 40 } as const;
const CONTRAST_LEAST = 24;
/** Of all pixels, the brightest but so many in a hundred stand for the paper. */
const BRIGHT_SHARE = 0.02;
/** Steps between neighbours in the full picture to those in one four times smaller: a sharp edge is as steep in both, a blurred one less. */
const SOFT = { times: 4, share: 0.001, ratio: 0.36 } as const;

/** What the markers seen tell of the light, the blur and the size: refusals first, then doubts. */
export function judgeMarkers(seen: readonly SeenMarker[]): {
  readonly refusal: PhotoTrouble | null;
  readonly doubts: readonly PhotoTrouble[];
} {
  const perMm = seen.map(pixelsPerMm);
  const blurMm = median(seen.map(({ edgePx }, i) => edgePx / (perMm[i] as number)));
  const white = median(seen.map((each) => each.white));
  const contrast = median(seen.map((each) => each.white - each.black));
  const size = Math.min(...perMm);
  if (white < WHITE.least || contrast < CONTRAST_LEAST) return { refusal: TOO_DARK, doubts: [] };
  if (size < PIXELS_PER_MM.least) return { refusal: TOO_SMALL, doubts: [] };
  if (blurMm > BLUR_MM.most) return { refusal: TOO_BLURRED, doubts: [] };
  const doubts = [
    ...(white < WHITE.doubtful ? [{ ...TOO_DARK, say: "The photograph is dark: faint lines may be missed." }] : []),
    ...(size < PIXELS_PER_MM.doubtful
      ? [{ ...TOO_SMALL, say: "The sheet is small in the photograph: fine lines may be missed." }]
      : []),
    ...(blurMm > BLUR_MM.doubtful
      ? [{ ...TOO_BLURRED, say: "The photograph is a little blurred: faint lines may be missed." }]
      : []),
  ];
  return { refusal: null, doubts };
}

/** Why under four markers were found: what the picture as a whole tells, and whether a code of ours was read in it. */
export function judgeFew(grey: GreyPixels, seen: readonly SeenMarker[], hasOurCode: boolean): PhotoTrouble {
  if (brightness(grey) < WHITE.least) return TOO_DARK;
  if (isSoft(grey)) return TOO_BLURRED;
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

function isSoft(grey: GreyPixels): boolean {
  if (Math.min(grey.width, grey.height) < 2 * SOFT.times) return false;
  const [full, small] = [steepness(grey), steepness(shrinkGrey(grey, SOFT.times))];
  return small > 0 && full < SOFT.ratio * small;
}

/** How much neighbours along a row differ where they differ most. */
function steepness({ width, height, grey }: GreyPixels): number {
  const counts = new Uint32Array(256);
  for (let j = 0; j < height; j++)
    for (let i = 1; i < width; i++) {
      const step = Math.abs((grey[j * width + i] as number) - (grey[j * width + i - 1] as number));
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
