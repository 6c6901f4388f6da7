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
  // Along a row of a cell each of the four samples runs evenly: where it starts, and its step a pixel.
  const starts = new Float64Array(16);
  for (let y = 0; y < height; y++) {
    const j = Math.floor(y / CELL_PX);
    for (let i = 0; i < columns - 1; i++) {
      const k = j * columns + i;
      SAMPLES.forEach(([right, down], n) => {
        const b = (y + down) / CELL_PX - j;
        const a = right / CELL_PX;
        rowStart(starts, 4 * n, xs, k, columns, a, b);
        rowStart(starts, 4 * n + 2, ys, k, columns, a, b);
      });
      const b = (y + 0.5) / CELL_PX - j;
      const l0 = (ls[k] as number) * (1 - b) + (ls[k + columns] as number) * b;
      const l1 = (ls[k + 1] as number) * (1 - b) + (ls[k + columns + 1] as number) * b;
      const end = Math.min(CELL_PX, width - i * CELL_PX);
      for (let x = 0; x < end; x++) {
        let sum = 0;
        for (let n = 0; n < 16; n += 4) {
          const u = (starts[n] as number) + x * (starts[n + 1] as number);
          const v = (starts[n + 2] as number) + x * (starts[n + 3] as number);
          sum += thumb !== null && onThumb(thumb, u / page.perMm, v / page.perMm) ? THUMB_LIGHT : sentBack(page, u, v);
        }
        const a = (x + 0.5) / CELL_PX;
        sensor[y * width + i * CELL_PX + x] = (sum / 4) * (l0 * (1 - a) + l1 * a);
      }
    }
  }
  return sensor;
}

/** Where a sample of a row starts in a cell, and its step a pixel, from what lies at the cell's corners. */
function rowStart(
  to: Float64Array,
  at: number,
  corners: Float64Array,
  k: number,
  columns: number,
  a: number,
  b: number,
): void {
  const left = (corners[k] as number) * (1 - b) + (corners[k + columns] as number) * b;
  const right = (corners[k + 1] as number) * (1 - b) + (corners[k + columns + 1] as number) * b;
  to[at] = left + (right - left) * a;
  to[at + 1] = (right - left) / CELL_PX;
}

/** What the page sends back at a place in its raster's pixels, evenly between their middles; beside it, the table's grain. */
function sentBack({ width, height, light, perMm }: PageRaster, u: number, v: number): number {
  if (u < 0 || v < 0 || u >= width || v >= height) return tableAt(u / perMm, v / perMm);
  const x = Math.min(width - 1.001, Math.max(0, u - 0.5));
  const y = Math.min(height - 1.001, Math.max(0, v - 0.5));
  const i = x | 0;
  const j = y | 0;
  const a = x - i;
  const b = y - j;
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
