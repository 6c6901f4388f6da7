import { mix } from "./dice";
import type { Stroke } from "./hand-strokes";
import type { PageRaster } from "./page-raster";
import type { Smudge } from "./scribbles";

/** The share of light that graphite swallows where it covers the paper wholly (common practice, no source). */
const SWALLOWS = 0.8;
/** The paper's tooth: hills and hollows this far apart, millimetres; a light hand touches the hills alone. */
const TOOTH_MM = 0.16;
/** Graphite laid on graphite, of what the same stroke lays on paper (common practice, no source). */
const ON_GRAPHITE = 0.6;
/** How soft a stroke's edge is, millimetres. */
const EDGE_MM = 0.12;

/** Draws strokes and smudges on to a page's raster, in place: the lightest hand breaks up over the paper's tooth. */
export function layGraphite(
  page: PageRaster,
  strokes: readonly Stroke[],
  smudged: readonly Smudge[],
  seed: number,
): void {
  const cover = new Uint8Array(page.width * page.height);
  const own = new Uint8Array(cover.length);
  for (const stroke of strokes) {
    press(page, own, stroke);
    layOver(page, cover, own, stroke);
  }
  for (const smudge of smudged) rub(page, smudge);
  const tooth = toothOf(page.perMm, seed);
  for (let y = 0, i = 0; y < page.height; y++)
    for (let x = 0; x < page.width; x++, i++) {
      const pressed = cover[i] ?? 0;
      if (pressed === 0) continue;
      const pressure = pressed / 255;
      // A hill takes graphite before a hollow; on the whole as much is laid as the hand presses.
      const taken = Math.min(1, Math.max(0, pressure * (0.35 + 1.3 * tooth(x, y))));
      page.light[i] = Math.round((page.light[i] ?? 0) * (1 - SWALLOWS * taken));
    }
}

/** Puts a stroke's own cover over what is there, and wipes it: graphite on graphite is darker, but takes less than paper does. */
function layOver(
  { width, height, perMm }: PageRaster,
  cover: Uint8Array,
  own: Uint8Array,
  { along, widthMm }: Stroke,
): void {
  const reach = widthMm / 2 + 2 * EDGE_MM;
  const side = (of: 0 | 1, limit: number): readonly [number, number] => {
    const places = along.map((place) => place[of]);
    const [least, most] = [Math.min(...places) - reach, Math.max(...places) + reach];
    return [Math.max(0, Math.floor(least * perMm)), Math.min(limit - 1, Math.ceil(most * perMm))];
  };
  const [[left, right], [top, bottom]] = [side(0, width), side(1, height)];
  for (let y = top; y <= bottom; y++)
    for (let i = y * width + left; i <= y * width + right; i++) {
      const added = own[i] as number;
      if (added === 0) continue;
      const there = cover[i] as number;
      cover[i] = Math.max(there, added) + ON_GRAPHITE * Math.min(there, added) * (1 - Math.max(there, added) / 255);
      own[i] = 0;
    }
}

/** Raises the cover along a stroke to its pressure, soft at its edges. */
function press({ width, height, perMm }: PageRaster, cover: Uint8Array, { along, widthMm }: Stroke): void {
  const [half, soft] = [(widthMm / 2) * perMm, EDGE_MM * perMm];
  const reach = half + soft;
  for (let k = 1; k < along.length; k++) {
    const [a, b] = [along[k - 1], along[k]] as [Stroke["along"][number], Stroke["along"][number]];
    const [ax, ay, bx, by] = [a[0] * perMm, a[1] * perMm, b[0] * perMm, b[1] * perMm];
    const [dx, dy] = [bx - ax, by - ay];
    const square = dx * dx + dy * dy || 1;
    const [x0, x1] = [
      Math.max(0, Math.floor(Math.min(ax, bx) - reach)),
      Math.min(width - 1, Math.ceil(Math.max(ax, bx) + reach)),
    ];
    const [y0, y1] = [
      Math.max(0, Math.floor(Math.min(ay, by) - reach)),
      Math.min(height - 1, Math.ceil(Math.max(ay, by) + reach)),
    ];
    for (let y = y0; y <= y1; y++)
      for (let x = x0; x <= x1; x++) {
        const t = Math.min(1, Math.max(0, ((x + 0.5 - ax) * dx + (y + 0.5 - ay) * dy) / square));
        const off = Math.hypot(x + 0.5 - ax - t * dx, y + 0.5 - ay - t * dy);
        if (off >= reach) continue;
        const edge = Math.min(1, (reach - off) / (2 * soft));
        const pressed = 255 * (a[2] + (b[2] - a[2]) * t) * edge * edge * (3 - 2 * edge);
        const i = y * width + x;
        if (pressed > (cover[i] ?? 0)) cover[i] = pressed;
      }
  }
}

function rub({ width, height, perMm, light }: PageRaster, { at, half, angle, darkness }: Smudge): void {
  const reach = 2 * Math.max(...half) * perMm;
  const [cx, cy] = [at[0] * perMm, at[1] * perMm];
  const [c, s] = [Math.cos(angle) / perMm, Math.sin(angle) / perMm];
  for (let y = Math.max(0, Math.floor(cy - reach)); y < Math.min(height, cy + reach); y++)
    for (let x = Math.max(0, Math.floor(cx - reach)); x < Math.min(width, cx + reach); x++) {
      const [u, v] = [((x - cx) * c + (y - cy) * s) / half[0], ((y - cy) * c - (x - cx) * s) / half[1]];
      const i = y * width + x;
      light[i] = Math.round((light[i] ?? 0) * (1 - darkness * Math.exp(-u * u - v * v)));
    }
}

const TILE = 256;

/** The paper's tooth as heights 0 to 1 between random ones of a lattice, in a tile that repeats. */
function toothOf(perMm: number, seed: number): (x: number, y: number) => number {
  const lattice = Float32Array.from({ length: TILE * TILE }, (_, i) => mix(i ^ Math.imul(seed, 0x85ebca6b)) / 2 ** 32);
  const step = 1 / (TOOTH_MM * perMm);
  return (x, y) => {
    const [u, v] = [x * step, y * step];
    const [i, j] = [Math.floor(u), Math.floor(v)];
    const [a, b] = [u - i, v - j];
    const at = (p: number, q: number) => lattice[((q & 255) << 8) | (p & 255)] ?? 0.5;
    return (at(i, j) * (1 - a) + at(i + 1, j) * a) * (1 - b) + (at(i, j + 1) * (1 - a) + at(i + 1, j + 1) * a) * b;
  };
}
