/**
 * Paper that curls as paper can: about one straight direction, on a cylinder, its lengths kept. Sheet millimetres; `rise` is
 * towards the camera, 0 along the line through the paper's middle.
 */
export type Curl = {
  /** The direction across the straight one: where the paper bends. */
  readonly across: readonly [number, number];
  readonly middle: readonly [number, number];
  /** Of the cylinder, millimetres; null for flat paper. */
  readonly radius: number | null;
};

/** A curl that lifts the paper's farthest part so far over its middle; below 0 the middle stands over the edges. */
export function curlPaper(liftMm: number, straightDeg: number, widthMm: number, heightMm: number): Curl {
  const angle = (straightDeg * Math.PI) / 180;
  const across = [-Math.sin(angle), Math.cos(angle)] as const;
  const reach = (Math.abs(across[0]) * widthMm + Math.abs(across[1]) * heightMm) / 2;
  // The height of an arc over its half chord, to second order: reach^2 / 2R.
  return { across, middle: [widthMm / 2, heightMm / 2], radius: liftMm === 0 ? null : reach ** 2 / (2 * liftMm) };
}

/** Where a place of the flat sheet lies once the paper is curled: right, down, and away from the camera. */
export function curledPlace(
  { across, middle, radius }: Curl,
  [x, y]: readonly [number, number],
): [number, number, number] {
  if (radius === null) return [x, y, 0];
  const s = (x - middle[0]) * across[0] + (y - middle[1]) * across[1];
  const moved = radius * Math.sin(s / radius) - s;
  return [x + moved * across[0], y + moved * across[1], -radius * (1 - Math.cos(s / radius))];
}

/** Newton's steps from the flat paper: each doubles the digits, and the bend is slight. */
const STEPS = 6;

/** The place of the flat sheet that a ray meets first: the ray starts at `from` and runs along `to`, both right, down and away. */
export function meetCurled(
  { across, middle, radius }: Curl,
  from: readonly [number, number, number],
  to: readonly [number, number, number],
): [number, number] {
  const flat = -from[2] / to[2];
  if (radius === null) return [from[0] + flat * to[0], from[1] + flat * to[1]];
  const start = (from[0] - middle[0]) * across[0] + (from[1] - middle[1]) * across[1];
  const slope = (to[0] * across[0] + to[1] * across[1]) / to[2];
  // The arc's place s at which the ray, at that height, is as far across: f(s) = start + slope (z(s) - z0) - R sin(s / R).
  let s = start + slope * -from[2];
  for (let i = 0; i < STEPS; i++) {
    const [sine, cosine] = [Math.sin(s / radius), Math.cos(s / radius)];
    const f = start + slope * (-radius * (1 - cosine) - from[2]) - radius * sine;
    s -= f / (-slope * sine - cosine);
  }
  const along = (-radius * (1 - Math.cos(s / radius)) - from[2]) / to[2];
  const [x, y] = [from[0] + along * to[0], from[1] + along * to[1]];
  const unrolled = s - radius * Math.sin(s / radius);
  return [x + unrolled * across[0], y + unrolled * across[1]];
}
