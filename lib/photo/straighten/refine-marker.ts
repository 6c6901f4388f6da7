import { MARKER_SQUARES } from "../../sheet/marker-bits";
import type { GreyPixels, PhotoPoint } from "../pixels";
import { sampleGrey } from "./sample-grey";

export type FourCorners = readonly [PhotoPoint, PhotoPoint, PhotoPoint, PhotoPoint];

/** A marker's outer corners to a fraction of a pixel, and how wide its edges are blurred. */
export type RefinedMarker = {
  /** The marker's own upper left, upper right, lower right, lower left. */
  readonly corners: FourCorners;
  /** From black to white across its edges, pixels: about 1 in a picture as sharp as its pixels. */
  readonly edgePx: number;
  /** Grey of its black and of the white round it, 0 to 255. */
  readonly black: number;
  readonly white: number;
};

/** Looked along each edge, as a share of it: clear of the corners, where two edges' blurs mix. */
const FROM = 0.08;
/** Profiles across an edge: about one a pixel, within these. */
const PROFILES = { least: 12, most: 64 } as const;
/** How far a profile reaches either way, in the marker's squares: its border is one wide, the white round it more. */
const REACH = 0.8;
/** The outer part of a profile, from which its levels are taken: beyond this share of its reach. */
const LEVEL = 0.6;
/** Steps of a profile, pixels. */
const STEP_PX = 0.5;
/** Less than this between black and white is no edge, grey levels. */
const CONTRAST = 16;
/** So many of an edge's profiles have to show it, as a share: a thumb on an edge must not bend it. */
const ENOUGH = 0.6;
/** A place farther than so many times the median distance from the edge's line is left out of it, and pixels it may be off anyway. */
const OUTLIER = { times: 3, px: 0.15 } as const;
const ROUNDS = 3;
/** Two edges nearer to parallel than this (the sine of the angle between them) belong to no square in view. */
const PARALLEL = 0.1;

type Line = { readonly at: PhotoPoint; readonly along: PhotoPoint };
type Edge = Line & { readonly widths: readonly number[]; readonly black: number; readonly white: number };

/** The corners of a black square on white near four guesses, as the meeting of its four edges' lines; null where an edge is not plainly seen. */
export function refineMarker(picture: GreyPixels, guess: FourCorners): RefinedMarker | null {
  let corners = guess;
  let found: readonly Edge[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const edges = [0, 1, 2, 3].map((i) =>
      findEdge(picture, corners[i] as PhotoPoint, corners[(i + 1) % 4] as PhotoPoint),
    );
    if (!edges.every((each): each is Edge => each !== null)) return null;
    const met = [0, 1, 2, 3].map((i) => meetLines(edges[(i + 3) % 4] as Edge, edges[i] as Edge));
    if (!met.every((each): each is PhotoPoint => each !== null)) return null;
    corners = met as unknown as FourCorners;
    found = edges;
  }
  return {
    corners,
    edgePx: median(found.flatMap(({ widths }) => widths)),
    black: mean(found.map(({ black }) => black)),
    white: mean(found.map(({ white }) => white)),
  };
}

/** The line of the edge from one corner to the next, clockwise on the paper: black on its right, white on its left. */
function findEdge(picture: GreyPixels, from: PhotoPoint, to: PhotoPoint): Edge | null {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (!(length > MARKER_SQUARES)) return null;
  const outward = [dy / length, -dx / length] as const;
  const reach = Math.max((REACH * length) / MARKER_SQUARES, 2);
  const count = Math.round(Math.min(Math.max(length * (1 - 2 * FROM), PROFILES.least), PROFILES.most));
  const [places, widths]: [PhotoPoint[], number[]] = [[], []];
  let [black, white] = [0, 0];
  for (let n = 0; n < count; n++) {
    const t = FROM + ((1 - 2 * FROM) * (n + 0.5)) / count;
    const [x, y] = [from[0] + t * dx, from[1] + t * dy];
    const profile = crossEdge(picture, [x, y], outward, reach);
    if (!profile) continue;
    places.push([x + outward[0] * profile.at, y + outward[1] * profile.at]);
    widths.push(profile.width);
    black += profile.black;
    white += profile.white;
  }
  if (places.length < ENOUGH * count) return null;
  const line = fitLine(places);
  return line && { ...line, widths, black: black / places.length, white: white / places.length };
}

/** Where a profile from black to white passes half way between the two, pixels outward from its middle. */
function crossEdge(picture: GreyPixels, [x, y]: PhotoPoint, [ox, oy]: readonly [number, number], reach: number) {
  const half = Math.ceil(reach / STEP_PX);
  const greys = Array.from({ length: 2 * half + 1 }, (_, k) => {
    const out = (k - half) * STEP_PX;
    return sampleGrey(picture, x + ox * out, y + oy * out);
  });
  const tail = Math.max(1, Math.floor((1 - LEVEL) * half));
  const [black, white] = [mean(greys.slice(0, tail)), mean(greys.slice(-tail))];
  if (!(white - black > CONTRAST)) return null;
  const level = (black + white) / 2;
  let [best, at, steepest] = [Number.POSITIVE_INFINITY, Number.NaN, 0];
  for (let k = 0; k + 1 < greys.length; k++) {
    const [a, b] = [greys[k] as number, greys[k + 1] as number];
    steepest = Math.max(steepest, b - a);
    if (!(a < level && b >= level)) continue;
    const out = (k - half + (level - a) / (b - a)) * STEP_PX;
    if (Math.abs(out) < best) [best, at] = [Math.abs(out), out];
  }
  return Number.isNaN(at) ? null : { at, black, white, width: ((white - black) * STEP_PX) / steepest };
}

/** The line nearest to places, by least squares across it, with those far off left out. */
function fitLine(places: readonly PhotoPoint[]): Line | null {
  let [kept, line] = [places, leastSquares(places)];
  for (let round = 0; round < ROUNDS && line; round++) {
    const { at, along } = line;
    const off = (p: PhotoPoint) => Math.abs((p[0] - at[0]) * along[1] - (p[1] - at[1]) * along[0]);
    const most = OUTLIER.px + OUTLIER.times * median(kept.map(off));
    kept = places.filter((each) => off(each) <= most);
    line = leastSquares(kept);
  }
  return kept.length >= ENOUGH * places.length ? line : null;
}

function leastSquares(places: readonly PhotoPoint[]): Line | null {
  if (places.length < 2) return null;
  const at: PhotoPoint = [mean(places.map(([x]) => x)), mean(places.map(([, y]) => y))];
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of places) {
    xx += (x - at[0]) ** 2;
    xy += (x - at[0]) * (y - at[1]);
    yy += (y - at[1]) ** 2;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return { at, along: [Math.cos(angle), Math.sin(angle)] };
}

function meetLines(a: Line, b: Line): PhotoPoint | null {
  const cross = a.along[0] * b.along[1] - a.along[1] * b.along[0];
  if (!(Math.abs(cross) > PARALLEL)) return null;
  const t = ((b.at[0] - a.at[0]) * b.along[1] - (b.at[1] - a.at[1]) * b.along[0]) / cross;
  return [a.at[0] + t * a.along[0], a.at[1] + t * a.along[1]];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}
