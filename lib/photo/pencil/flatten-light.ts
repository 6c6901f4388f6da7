import type { StraightPage } from "../straight-page";

/** Side of the squares that the paper's own light is measured in, millimetres: wider than any stroke, finer than any shadow's slope. */
const TILE_MM = 3;
/** The paper of a square is as light as this share of its pixels is dark: strokes never cover more than a third of one. */
const PAPER_SHARE = 0.7;
const LEVELS = 256;

/** How much darker than the paper round it each pixel is, 0 (paper) to 1 (black), whatever light falls where. */
export function flattenLight({ width, height, grey, pixelsPerMm }: StraightPage): Float32Array {
  const tile = Math.max(4, Math.round(TILE_MM * pixelsPerMm));
  const across = Math.max(1, Math.ceil(width / tile));
  const down = Math.max(1, Math.ceil(height / tile));
  const paper = new Float32Array(across * down);
  const counts = new Int32Array(LEVELS);
  for (let v = 0; v < down; v++)
    for (let u = 0; u < across; u++) {
      counts.fill(0);
      let pixels = 0;
      for (let y = v * tile; y < Math.min(height, (v + 1) * tile); y += 2)
        for (let x = u * tile; x < Math.min(width, (u + 1) * tile); x += 2) {
          const level = grey[y * width + x] as number;
          counts[level] = (counts[level] as number) + 1;
          pixels++;
        }
      paper[v * across + u] = levelAt(counts, pixels * PAPER_SHARE);
    }
  const even = lightestNear(paper, across, down);
  const dark = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = Math.max(0, Math.min(down - 1, (y + 0.5) / tile - 0.5));
    const [v, dv] = [
      Math.min(Math.floor(row), Math.max(0, down - 2)),
      row - Math.min(Math.floor(row), Math.max(0, down - 2)),
    ];
    const below = Math.min(v + 1, down - 1);
    for (let x = 0; x < width; x++) {
      const column = Math.max(0, Math.min(across - 1, (x + 0.5) / tile - 0.5));
      const u = Math.min(Math.floor(column), Math.max(0, across - 2));
      const du = column - u;
      const right = Math.min(u + 1, across - 1);
      const high = (even[v * across + u] as number) * (1 - du) + (even[v * across + right] as number) * du;
      const low = (even[below * across + u] as number) * (1 - du) + (even[below * across + right] as number) * du;
      const white = Math.max(1, high * (1 - dv) + low * dv);
      dark[y * width + x] = Math.max(-1, 1 - (grey[y * width + x] as number) / white);
    }
  }
  return dark;
}

function levelAt(counts: Int32Array, below: number): number {
  let seen = 0;
  for (let level = 0; level < LEVELS; level++) {
    seen += counts[level] as number;
    if (seen >= below) return level;
  }
  return LEVELS - 1;
}

/** A square full of print takes its light from the middle one of those round it. */
function lightestNear(paper: Float32Array, across: number, down: number): Float32Array {
  const even = new Float32Array(paper.length);
  for (let v = 0; v < down; v++)
    for (let u = 0; u < across; u++) {
      const near: number[] = [];
      for (let y = Math.max(0, v - 1); y <= Math.min(down - 1, v + 1); y++)
        for (let x = Math.max(0, u - 1); x <= Math.min(across - 1, u + 1); x++)
          near.push(paper[y * across + x] as number);
      near.sort((a, b) => a - b);
      even[v * across + u] = near[Math.floor(near.length / 2)] as number;
    }
  return even;
}
