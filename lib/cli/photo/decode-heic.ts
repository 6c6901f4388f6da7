import type { GreyPixels } from "../../photo/pixels";

/** What each colour gives to grey, of 256 (ITU-R BT.601: 0.299, 0.587 and 0.114). */
const [RED, GREEN, BLUE] = [77, 150, 29];

/** A HEIC as grey pixels, upright: its decoder turns it as the file says. Null for one that it cannot read. */
export async function decodeHeic(bytes: Uint8Array): Promise<GreyPixels | null> {
  try {
    // Loaded only for a HEIC: the decoder is large.
    const { default: decode } = await import("heic-decode");
    const { width, height, data } = await decode({ buffer: bytes });
    const grey = new Uint8Array(width * height);
    for (let i = 0; i < grey.length; i++) {
      const [r, g, b] = [data[4 * i] as number, data[4 * i + 1] as number, data[4 * i + 2] as number];
      grey[i] = (RED * r + GREEN * g + BLUE * b) >> 8;
    }
    return { width, height, grey };
  } catch {
    return null;
  }
}
