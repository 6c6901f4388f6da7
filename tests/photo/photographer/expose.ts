import { type Camera, meetSheet } from "./camera";
import type { LightField } from "./light-field";
import type { PageRaster } from "./page-raster";
import { onThumb, THUMB_LIGHT, type Thumb } from "./thumb";

/** Rays are traced to the curled paper every so many pixels and go evenly between: over that little the paper is flat. */
const CELL_PX = 8;
/** Four samples a pixel, none in a row or column with another. */
const SAMPLES = [
  [0.125, 0.375],
  [0.375, 0.875],
  [0.625, 0.125],
  [0.875, 0.625],
] as const;
/** A wooden table under the sheet. */
const TABLE = 0.2;

/** Light on each pixel of the sensor, row by row, 0 to 1 for what paper would send back all of. */
export function expose(camera: Camera, page: PageRaster, lit: LightField, thumb: Thumb | null): Float32Array {
  const { width, height } = camera;
  const [columns, rows] = [Math.ceil(width / CELL_PX) + 1, Math.ceil(height / CELL_PX) + 1];
  const [xs, ys, ls] = [0, 1, 2].map(() => new Float64Array(columns * rows)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let j = 0, k = 0; j < rows; j++)
    for (let i = 0; i < columns; i++, k++) {
      const at = [i * CELL_PX, j * CELL_PX] as const;
      const place = meetSheet(camera, at);
      xs[k] = place[0] * page.perMm;
      ys[k] = place[1] * page.perMm;
      ls[k] = lit(at);
    }
  const sensor = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const j = Math.floor(y / CELL_PX);
    for (let i = 0; i < columns - 1; i++) {
      const k = j * columns + i;
      const corner = (list: Float64Array, at: number) => list[at] ?? 0;
      const [x0, x1, x2, x3] = [corner(xs, k), corner(xs, k + 1), corner(xs, k + columns), corner(xs, k + columns + 1)];
      const [y0, y1, y2, y3] = [corner(ys, k), corner(ys, k + 1), corner(ys, k + columns), corner(ys, k + columns + 1)];
      const [l0, l1, l2, l3] = [corner(ls, k), corner(ls, k + 1), corner(ls, k + columns), corner(ls, k + columns + 1)];
      const end = Math.min(width, (i + 1) * CELL_PX);
      for (let x = i * CELL_PX; x < end; x++) {
        let sum = 0;
        for (let n = 0; n < 4; n++) {
          const sample = SAMPLES[n] as readonly [number, number];
          const [a, b] = [(x + sample[0]) / CELL_PX - i, (y + sample[1]) / CELL_PX - j];
          const u = (x0 * (1 - a) + x1 * a) * (1 - b) + (x2 * (1 - a) + x3 * a) * b;
          const v = (y0 * (1 - a) + y1 * a) * (1 - b) + (y2 * (1 - a) + y3 * a) * b;
          sum += thumb && onThumb(thumb, u / page.perMm, v / page.perMm) ? THUMB_LIGHT : sentBack(page, u, v);
        }
        const [a, b] = [(x + 0.5) / CELL_PX - i, (y + 0.5) / CELL_PX - j];
        sensor[y * width + x] = (sum / 4) * ((l0 * (1 - a) + l1 * a) * (1 - b) + (l2 * (1 - a) + l3 * a) * b);
      }
    }
  }
  return sensor;
}

/** What the page sends back at a place in its raster's pixels, evenly between their middles; beside it, the table's grain. */
function sentBack({ width, height, light, perMm }: PageRaster, u: number, v: number): number {
  if (u < 0 || v < 0 || u >= width || v >= height) return tableAt(u / perMm, v / perMm);
  const [x, y] = [Math.min(width - 1.001, Math.max(0, u - 0.5)), Math.min(height - 1.001, Math.max(0, v - 0.5))];
  const [i, j] = [x | 0, y | 0];
  const [a, b] = [x - i, y - j];
  const k = j * width + i;
  const top = (light[k] as number) * (1 - a) + (light[k + 1] as number) * a;
  const low = (light[k + width] as number) * (1 - a) + (light[k + width + 1] as number) * a;
  return (top * (1 - b) + low * b) / 65535;
}

/** Squares of the table's grain, millimetres, and how many a side before it comes again. */
const GRAIN_MM = 0.5;
const GRAINS = 512;
const GRAIN = Float32Array.from({ length: GRAINS * GRAINS }, (_, i) => {
  const [x, y] = [GRAIN_MM * (i % GRAINS), GRAIN_MM * Math.floor(i / GRAINS)];
  const ring = Math.sin(y * 0.9 + 3 * Math.sin(x * 0.011) + 0.6 * Math.sin(x * 0.07 + y * 0.02));
  const pore = Math.sin(y * 4.3 + Math.sin(x * 0.4) * 1.7);
  return TABLE * (1 + 0.22 * ring + 0.08 * pore);
});

function tableAt(xMm: number, yMm: number): number {
  const [i, j] = [Math.floor(xMm / GRAIN_MM) & (GRAINS - 1), Math.floor(yMm / GRAIN_MM) & (GRAINS - 1)];
  return GRAIN[j * GRAINS + i] as number;
}
