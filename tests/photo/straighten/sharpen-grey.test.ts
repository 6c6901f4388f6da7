import { describe, expect, it } from "vitest";
import { sharpenGrey } from "@/lib/photo/straighten/sharpen-grey";

describe("a picture made sharper", () => {
  it("is the picture less its mean round each pixel, once more", () => {
    const [width, height] = [9, 7];
    const grey = Uint8Array.from({ length: width * height }, (_, n) => 60 + ((n * 37) % 101));
    const sharp = sharpenGrey({ width, height, grey }, 2, 1).grey;
    for (let j = 0; j < height; j++)
      for (let i = 0; i < width; i++) {
        const round = [-2, -1, 0, 1, 2].flatMap((dj) =>
          [-2, -1, 0, 1, 2].flatMap((di) => {
            const [x, y] = [i + di, j + dj];
            return x >= 0 && y >= 0 && x < width && y < height ? [[x, y] as const] : [];
          }),
        );
        // The mean is taken across, then down, which at the picture's edge is the mean of what lies within it all the same.
        const mean = round.reduce((sum, [x, y]) => sum + (grey[y * width + x] ?? 0), 0) / round.length;
        const here = grey[j * width + i] ?? 0;
        expect(Math.abs((sharp[j * width + i] ?? 0) - (2 * here - mean))).toBeLessThanOrEqual(0.51);
      }
  });

  it("leaves an even grey alone, and keeps to black and white", () => {
    const even = { width: 5, height: 4, grey: new Uint8Array(20).fill(90) };
    expect(sharpenGrey(even, 3, 2).grey).toEqual(even.grey);
    const edge = { width: 6, height: 1, grey: Uint8Array.from([0, 0, 0, 255, 255, 255]) };
    expect([...sharpenGrey(edge, 1, 5).grey]).toEqual([0, 0, 0, 255, 255, 255]);
  });
});
