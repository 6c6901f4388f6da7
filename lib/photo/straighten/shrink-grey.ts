import type { GreyPixels } from "../pixels";

/** A picture a whole number of times smaller, each pixel the mean of those it stands for; a rest at the right and below falls away. */
export function shrinkGrey({ width, height, grey }: GreyPixels, times: number): GreyPixels {
  if (times === 1) return { width, height, grey };
  const [w, h] = [Math.floor(width / times), Math.floor(height / times)];
  const small = new Uint8Array(w * h);
  const sums = new Uint32Array(w);
  const count = times * times;
  for (let j = 0; j < h; j++) {
    sums.fill(0);
    for (let dj = 0; dj < times; dj++) {
      let at = (j * times + dj) * width;
      for (let i = 0; i < w; i++) {
        let sum = 0;
        for (let di = 0; di < times; di++) sum += grey[at++] as number;
        sums[i] = (sums[i] as number) + sum;
      }
    }
    for (let i = 0; i < w; i++) small[j * w + i] = ((sums[i] as number) + (count >> 1)) / count;
  }
  return { width: w, height: h, grey: small };
}
