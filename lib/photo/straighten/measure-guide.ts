import type { PageFit } from "../page-fit";
import type { GreyPixels } from "../pixels";
import { type Bend, photoFromBent } from "./bend";
import type { Guide } from "./printed-guides";
import { sampleGrey } from "./sample-grey";

/** Distances across a stretch at which greys are read, and rows of them along it, millimetres. */
const ACROSS_MM = 0.08;
const ALONG_MM = 0.3;
/** A line's likeness takes in so much paper on either side of it, a marker's edge so much of black and white; millimetres. */
const BESIDE_MM = 0.45;
const EDGE_MM = 0.7;
/** The blur of a line's edge, millimetres: about a pixel of a photograph of the whole sheet. */
const BLUR_MM = 0.12;
/** How alike what is seen must be to what is printed (correlation), and by what share darker than the paper. */
const ALIKE = 0.9;
const DARKER = { line: 0.1, edge: 0.3 } as const;
/** Another place across the stretch that is so nearly as alike as the best one leaves it open which of them is the print. */
const RIVAL = { share: 0.9, apartMm: 0.3 } as const;

/**
 * How far to the right of where a fit and a bend have it a printed stretch is seen, looking along it, sheet millimetres; null where no
 * plain dark line, or no marker's edge, is seen within `reachMm`.
 */
export function measureGuide(
  grey: GreyPixels,
  fit: PageFit,
  bend: Bend | null,
  guide: Guide,
  reachMm: number,
): number | null {
  const half = guide.widthMm === null ? EDGE_MM : guide.widthMm / 2 + BESIDE_MM;
  const side = Math.round(half / ACROSS_MM);
  const reach = Math.round(reachMm / ACROSS_MM);
  const profile = readAcross(grey, fit, bend, guide, side + reach);
  if (!profile) return null;
  const print = printAcross(guide, side);
  const likeness = new Float64Array(2 * reach + 1);
  let best = 0;
  for (let k = 0; k < likeness.length; k++) {
    likeness[k] = alike(profile, k, print);
    if ((likeness[k] as number) > (likeness[best] as number)) best = k;
  }
  const top = likeness[best] as number;
  if (!(top >= ALIKE) || best === 0 || best === likeness.length - 1) return null;
  const isDouble = likeness.some(
    (each, k) => Math.abs(k - best) * ACROSS_MM > RIVAL.apartMm && each > RIVAL.share * top,
  );
  if (isDouble || !isDarker(profile, best, side, guide)) return null;
  const [before, after] = [likeness[best - 1] as number, likeness[best + 1] as number];
  const curve = before + after - 2 * top;
  return (best - reach + (curve < 0 ? (before - after) / (2 * curve) : 0)) * ACROSS_MM;
}

/** The greys across a stretch, each the mean along it; null where the photograph ends. */
function readAcross(
  grey: GreyPixels,
  fit: PageFit,
  bend: Bend | null,
  { at, along, lengthMm }: Guide,
  side: number,
): Float64Array | null {
  const normal = [-along[1], along[0]] as const;
  const here = photoFromBent(fit, bend, at);
  const ahead = photoFromBent(fit, bend, [at[0] + along[0], at[1] + along[1]]);
  const aside = photoFromBent(fit, bend, [at[0] + normal[0], at[1] + normal[1]]);
  if (!here || !ahead || !aside) return null;
  // So near together the photograph is as good as evenly stretched.
  const [sx, sy] = [ahead[0] - here[0], ahead[1] - here[1]];
  const [tx, ty] = [aside[0] - here[0], aside[1] - here[1]];
  const reach = [lengthMm / 2, side * ACROSS_MM] as const;
  const [wide, high] = [
    reach[0] * Math.abs(sx) + reach[1] * Math.abs(tx),
    reach[0] * Math.abs(sy) + reach[1] * Math.abs(ty),
  ];
  if (here[0] < wide || here[1] < high || here[0] > grey.width - wide || here[1] > grey.height - high) return null;
  const rows = Math.max(2, Math.round(lengthMm / ALONG_MM));
  const profile = new Float64Array(2 * side + 1);
  for (let i = 0; i < profile.length; i++) {
    const t = (i - side) * ACROSS_MM;
    let sum = 0;
    for (let row = 0; row < rows; row++) {
      const s = ((row + 0.5) / rows - 0.5) * lengthMm;
      sum += sampleGrey(grey, here[0] + s * sx + t * tx, here[1] + s * sy + t * ty);
    }
    profile[i] = sum / rows;
  }
  return profile;
}

/** What print has across a stretch, brightness from 0 to 1. */
function printAcross({ widthMm }: Guide, side: number): Float64Array {
  return Float64Array.from({ length: 2 * side + 1 }, (_, i) => {
    const t = (i - side) * ACROSS_MM;
    const past = widthMm === null ? t : widthMm / 2 - Math.abs(t);
    return 1 / (1 + Math.exp((2 * past) / BLUR_MM));
  });
}

/** Correlation of a part of a profile with what is printed, -1 to 1; 0 where the paper is blank. */
function alike(profile: Float64Array, from: number, print: Float64Array): number {
  const n = print.length;
  let [a, b, aa, bb, ab] = [0, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const [p, q] = [profile[from + i] as number, print[i] as number];
    a += p;
    b += q;
    aa += p * p;
    bb += q * q;
    ab += p * q;
  }
  const spread = (aa - (a * a) / n) * (bb - (b * b) / n);
  return spread > 1e-9 ? (ab - (a * b) / n) / Math.sqrt(spread) : 0;
}

function isDarker(profile: Float64Array, from: number, side: number, { widthMm }: Guide): boolean {
  const [left, middle, right] = [profile[from], profile[from + side], profile[from + 2 * side]] as [
    number,
    number,
    number,
  ];
  if (widthMm === null) return left - right > DARKER.edge * left;
  return Math.min(left, right) - middle > DARKER.line * Math.max(left, right);
}
