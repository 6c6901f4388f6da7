import sharp from "sharp";
import type { Camera } from "./camera";
import type { Conditions } from "./conditions";
import { type Dice, mix } from "./dice";
import { GAMMA } from "./page-raster";

/** Red, green and blue of warm room light, against grey. */
const WARM = [1.03, 1, 0.93] as const;
const BINS = 4096;
/** Normal draws kept in a list, a power of two: a pixel takes one of them by its own number. */
const DRAWS = 1 << 16;

/** From light on the sensor to the stored file: blurred, grainy, compressed, and perhaps stored on its side. */
export async function develop(
  sensor: Float32Array,
  { width, height }: Pick<Camera, "width" | "height">,
  conditions: Conditions,
  dice: Dice,
): Promise<Buffer> {
  const { blurPx, motionPx, motionDeg, exposure, noise, jpegQuality, orientation } = conditions;
  const moved = motionPx > 0 ? smear(sensor, width, motionPx, motionDeg) : sensor;
  const blurred = blurPx > 0 ? blur(moved, width, blurPx) : moved;
  const draws = Float32Array.from({ length: DRAWS }, () => dice.normal(1));
  const salt = Math.floor(dice.next() * 2 ** 32);
  // Of light, half of a level's grain is the light's own (with its root) and half the sensor's.
  const grain = (noise * GAMMA) / 255 / exposure;
  const levels = WARM.map((tint) =>
    Uint8Array.from({ length: BINS }, (_, i) =>
      Math.round(255 * Math.min(1, ((1.25 * i) / BINS) ** (1 / GAMMA) * tint)),
    ),
  ) as [Uint8Array, Uint8Array, Uint8Array];
  const [red, green, blue] = levels;
  const [perLight, perDraw] = [exposure ** GAMMA / 0.88, exposure ** GAMMA * grain];
  const perBin = BINS / 1.25;
  const rgb = new Uint8Array(3 * width * height);
  for (let i = 0; i < blurred.length; i++) {
    const light = blurred[i] as number;
    const draw = draws[mix(i ^ salt) & (DRAWS - 1)] as number;
    const seen = perLight * light + perDraw * draw * Math.sqrt(0.25 + 0.75 * light);
    const bin = Math.min(BINS - 1, Math.max(0, Math.floor(seen * perBin)));
    rgb[3 * i] = red[bin] as number;
    rgb[3 * i + 1] = green[bin] as number;
    rgb[3 * i + 2] = blue[bin] as number;
  }
  const picture = sharp(rgb, { raw: { width, height, channels: 3 }, limitInputPixels: false });
  const turned = { 1: 0, 3: 180, 6: 270, 8: 90 }[orientation];
  const stored = orientation === 1 ? picture : picture.rotate(turned).withMetadata({ orientation });
  return stored.jpeg({ quality: jpegQuality }).toBuffer();
}

/** A gaussian blur, along rows and then along columns. */
function blur(from: Float32Array, width: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const steps = (apart: number) => weights.map((weight, i) => ({ by: (i - reach) * apart, weight: weight / total }));
  return addShifted(addShifted(from, steps(1), reach, 0, width), steps(width), 0, reach * width, width);
}

/** The camera moves while it looks: evenly along a direction. */
function smear(from: Float32Array, width: number, lengthPx: number, deg: number): Float32Array {
  const count = Math.max(2, Math.ceil(2 * lengthPx) + 1);
  const [dx, dy] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  const steps = Array.from({ length: count }, (_, i) => {
    const t = (i / (count - 1) - 0.5) * lengthPx;
    const [u, v] = [t * dx, t * dy];
    const [x, y] = [Math.floor(u), Math.floor(v)];
    const [a, b] = [u - x, v - y];
    const at = (p: number, q: number, weight: number) => ({ by: (y + q) * width + x + p, weight: weight / count });
    return [at(0, 0, (1 - a) * (1 - b)), at(1, 0, a * (1 - b)), at(0, 1, (1 - a) * b), at(1, 1, a * b)];
  }).flat();
  const merged = new Map<number, number>();
  for (const { by, weight } of steps) merged.set(by, (merged.get(by) ?? 0) + weight);
  const list = [...merged].flatMap(([by, weight]) => (weight > 1e-6 ? [{ by, weight }] : []));
  const reach = Math.ceil(lengthPx / 2) + 1;
  return addShifted(from, list, reach, reach * width, width);
}

/** A picture laid over itself, shifted and weighed; what lies too near its edges to be shifted stays as it was. */
function addShifted(
  from: Float32Array,
  steps: readonly { readonly by: number; readonly weight: number }[],
  marginX: number,
  marginAll: number,
  width: number,
): Float32Array {
  const to = Float32Array.from(from);
  const rows = Math.floor(from.length / width);
  const [first, last] = [Math.ceil(marginAll / width), rows - Math.ceil(marginAll / width)];
  for (let y = first; y < last; y++) {
    const [start, end] = [y * width + marginX, (y + 1) * width - marginX];
    to.fill(0, start, end);
    for (const { by, weight } of steps)
      for (let i = start; i < end; i++) to[i] = (to[i] as number) + weight * (from[i + by] as number);
  }
  return to;
}
