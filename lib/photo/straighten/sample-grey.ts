import type { GreyPixels } from "../pixels";

/** The grey at a place between pixels, weighed from the four round it; past the picture's edge, that of its nearest pixel. */
export function sampleGrey({ width, height, grey }: GreyPixels, right: number, down: number): number {
  const x = Math.min(Math.max(right - 0.5, 0), width - 1);
  const y = Math.min(Math.max(down - 0.5, 0), height - 1);
  const i = Math.min(Math.floor(x), Math.max(width - 2, 0));
  const j = Math.min(Math.floor(y), Math.max(height - 2, 0));
  const [fx, fy] = [x - i, y - j];
  const at = j * width + i;
  const next = width > 1 ? 1 : 0;
  const below = height > 1 ? width : 0;
  const upper = (grey[at] as number) * (1 - fx) + (grey[at + next] as number) * fx;
  const lower = (grey[at + below] as number) * (1 - fx) + (grey[at + below + next] as number) * fx;
  return upper * (1 - fy) + lower * fy;
}
