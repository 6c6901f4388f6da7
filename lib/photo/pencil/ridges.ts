/** A point on the middle of a stroke, to a fraction of a pixel; [nx, ny] is across the stroke, of length 1. */
export type RidgePoint = {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
  readonly strength: number;
};

/** The points of all strokes, each at the pixel it stands in (0 where there is none, else its place in `points` from 1). */
export type Ridges = {
  readonly width: number;
  readonly height: number;
  readonly points: readonly RidgePoint[];
  readonly at: Int32Array;
  /** How strongly each pixel answers to the filter, as the points do. */
  readonly strength: Float32Array;
  /** Points stronger than this begin a stroke. */
  readonly begins: number;
};

/** Sigma of the filter, millimetres: strokes from 0.2 to 1.1 mm wide, or drawn twice side by side, answer to it with at least half of their strength. */
const SIGMA_MM = 0.27;
/** A stroke begins where the filter answers this many times as strongly as to bare paper, and goes on while it does this much. */
const BEGINS = 6;
const GOES_ON = 3.2;
/** Weaker answers than these are not the pencil's on paper without any noise (a stroke of 3 % of white answers with 0.014). */
const LEAST_BEGINS = 0.016;
const LEAST_GOES_ON = 0.008;
/** A point stands in a pixel if the ridge's top is this near the pixel's middle, pixels; half a pixel, and a little for rounding. */
const IN_PIXEL = 0.6;
/** The middle of the absolute values of normal noise lies at this many sigmas. */
const MIDDLE_OF_NORMAL = 0.6745;

/**
 * The middles of dark strokes: where the second derivative across them of the smoothed darkness is at its strongest, with the
 * threshold set by the paper's own noise (Steger, "An unbiased detector of curvilinear structures", IEEE PAMI 1998, from memory).
 */
export function findRidges(dark: Float32Array, width: number, height: number, pixelsPerMm: number): Ridges {
  const sigma = Math.max(0.8, SIGMA_MM * pixelsPerMm);
  const [g, d, dd] = kernels(sigma);
  const alongG = convolveRows(dark, width, height, g);
  const alongD = convolveRows(dark, width, height, d);
  const xx = convolveColumns(convolveRows(dark, width, height, dd), width, height, g);
  const xy = convolveColumns(alongD, width, height, d);
  const yy = convolveColumns(alongG, width, height, dd);
  const gx = convolveColumns(alongD, width, height, g);
  const gy = convolveColumns(alongG, width, height, d);
  const scale = sigma * sigma;
  const strength = new Float32Array(width * height);
  for (let i = 0; i < strength.length; i++) {
    const [a, b, c] = [xx[i] as number, xy[i] as number, yy[i] as number];
    const apart = (a - c) / 2;
    // A square root: `Math.hypot` guards against overflow, and takes ten times as long.
    strength[i] = -((a + c) / 2 - Math.sqrt(apart * apart + b * b)) * scale;
  }
  const noise = noiseOf(xx) * scale;
  const begins = Math.max(LEAST_BEGINS, BEGINS * noise);
  const goesOn = Math.max(LEAST_GOES_ON, GOES_ON * noise);
  const points: RidgePoint[] = [];
  const at = new Int32Array(width * height);
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      if ((strength[i] as number) < goesOn) continue;
      const [a, b, c] = [xx[i] as number, xy[i] as number, yy[i] as number];
      const bend = -(strength[i] as number) / scale;
      let [nx, ny] = Math.abs(a - bend) > Math.abs(c - bend) ? [b, bend - a] : [bend - c, b];
      const length = Math.hypot(nx, ny);
      if (length === 0) [nx, ny] = [1, 0];
      else [nx, ny] = [nx / length, ny / length];
      const t = -((gx[i] as number) * nx + (gy[i] as number) * ny) / bend;
      if (Math.abs(t * nx) > IN_PIXEL || Math.abs(t * ny) > IN_PIXEL) continue;
      points.push({ x: x + 0.5 + t * nx, y: y + 0.5 + t * ny, nx, ny, strength: strength[i] as number });
      at[i] = points.length;
    }
  return { width, height, points, at, strength, begins };
}

/** The gaussian and its first two derivatives, sampled. */
function kernels(sigma: number): readonly [Float32Array, Float32Array, Float32Array] {
  const reach = Math.ceil(3 * sigma);
  const made = [0, 1, 2].map(() => new Float32Array(2 * reach + 1)) as [Float32Array, Float32Array, Float32Array];
  for (let k = -reach; k <= reach; k++) {
    const bell = Math.exp((-k * k) / (2 * sigma * sigma)) / (Math.sqrt(2 * Math.PI) * sigma);
    made[0][k + reach] = bell;
    made[1][k + reach] = (k / (sigma * sigma)) * bell;
    made[2][k + reach] = ((k * k) / sigma ** 4 - 1 / (sigma * sigma)) * bell;
  }
  // Cut off, the second derivative no longer sums to nothing, and even paper would answer.
  const rest = made[2].reduce((sum, value) => sum + value, 0) / made[2].length;
  made[2].forEach((value, k) => {
    made[2][k] = value - rest;
  });
  return made;
}

function convolveRows(from: Float32Array, width: number, height: number, kernel: Float32Array): Float32Array {
  const reach = (kernel.length - 1) / 2;
  const to = new Float32Array(from.length);
  const padded = new Float32Array(width + 2 * reach);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    padded.set(from.subarray(row, row + width), reach);
    padded.fill(from[row] as number, 0, reach);
    padded.fill(from[row + width - 1] as number, reach + width);
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = 0; k < kernel.length; k++) sum += (padded[x + k] as number) * (kernel[k] as number);
      to[row + x] = sum;
    }
  }
  return to;
}

function convolveColumns(from: Float32Array, width: number, height: number, kernel: Float32Array): Float32Array {
  const reach = (kernel.length - 1) / 2;
  const to = new Float32Array(from.length);
  const rows = new Int32Array(kernel.length);
  for (let y = 0; y < height; y++) {
    for (let k = 0; k < kernel.length; k++) rows[k] = Math.max(0, Math.min(height - 1, y + k - reach)) * width;
    const out = y * width;
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = 0; k < kernel.length; k++) sum += (from[(rows[k] as number) + x] as number) * (kernel[k] as number);
      to[out + x] = sum;
    }
  }
  return to;
}

/** Sigma of what bare paper answers, from the middle of all answers: most of a page is bare. */
function noiseOf(answers: Float32Array): number {
  const some: number[] = [];
  // Every place in turn would be slow, and a step that a row's length divides would only see columns.
  for (let i = 0; i < answers.length; i += 37) some.push(Math.abs(answers[i] as number));
  some.sort((a, b) => a - b);
  return (some[Math.floor(some.length / 2)] ?? 0) / MIDDLE_OF_NORMAL;
}
