import type { GreyPixels } from "../pixels";

/** A picture with its edges made steeper: each pixel farther, so many times, from the mean of those within a reach each way. */
export function sharpenGrey(picture: GreyPixels, reach: number, times: number): GreyPixels {
  const { width, height, grey } = picture;
  const mean = blurDown(blurAcross(picture, reach), width, height, reach);
  // Clamped to 0 and 255, and rounded, by the array itself.
  const sharp = new Uint8ClampedArray(width * height);
  for (let i = 0; i < sharp.length; i++)
    sharp[i] = (grey[i] as number) + times * ((grey[i] as number) - (mean[i] as number));
  return { width, height, grey: new Uint8Array(sharp.buffer) };
}

function blurAcross({ width, height, grey }: GreyPixels, reach: number): Float32Array {
  const blurred = new Float32Array(width * height);
  for (let j = 0; j < height; j++) {
    const row = j * width;
    let [sum, count] = [0, 0];
    for (let i = -reach; i < width; i++) {
      if (i + reach < width) [sum, count] = [sum + (grey[row + i + reach] as number), count + 1];
      if (i - reach > 0) [sum, count] = [sum - (grey[row + i - reach - 1] as number), count - 1];
      if (i >= 0) blurred[row + i] = sum / count;
    }
  }
  return blurred;
}

function blurDown(values: Float32Array, width: number, height: number, reach: number): Float32Array {
  const blurred = new Float32Array(width * height);
  for (let i = 0; i < width; i++) {
    let [sum, count] = [0, 0];
    for (let j = -reach; j < height; j++) {
      if (j + reach < height) [sum, count] = [sum + (values[(j + reach) * width + i] as number), count + 1];
      if (j - reach > 0) [sum, count] = [sum - (values[(j - reach - 1) * width + i] as number), count - 1];
      if (j >= 0) blurred[j * width + i] = sum / count;
    }
  }
  return blurred;
}
