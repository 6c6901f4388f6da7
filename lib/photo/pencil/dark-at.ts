/** The darkness of a page's part with its print masked, pixel by pixel. */
export type DarkRaster = {
  readonly dark: Float32Array;
  readonly mask: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
};

/** Darkness between pixels (bilinear), 0 outside; [0.5, 0.5] is the middle of the first pixel. */
export function darkAt(
  { dark, width, height }: Pick<DarkRaster, "dark" | "width" | "height">,
  x: number,
  y: number,
): number {
  const [px, py] = [x - 0.5, y - 0.5];
  const [i, k] = [Math.floor(px), Math.floor(py)];
  if (!(i >= 0 && k >= 0 && i < width - 1 && k < height - 1)) return 0;
  const [fx, fy] = [px - i, py - k];
  const at = k * width + i;
  const high = (dark[at] as number) * (1 - fx) + (dark[at + 1] as number) * fx;
  const low = (dark[at + width] as number) * (1 - fx) + (dark[at + width + 1] as number) * fx;
  return high * (1 - fy) + low * fy;
}

/** The middle one of some numbers, 0 of none. Sorts them. */
export function middleOf(values: number[]): number {
  values.sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)] ?? 0;
}
