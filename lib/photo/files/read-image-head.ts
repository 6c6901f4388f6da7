import { DAMAGED, type FileTrouble, type HeadReading, tooFewPixels, tooManyBytes, tooManyPixels } from "./file-trouble";
import { readHeicHead } from "./read-heic-head";
import { readJpegHead } from "./read-jpeg-head";
import { readPngHead } from "./read-png-head";
import { readWebpHead } from "./read-webp-head";
import { type ImageFormat, sniffImage } from "./sniff-image";

/** What a picture's file says of itself before anything of it is unpacked: its size as stored, before it is turned upright. */
export type ImageHead =
  | { readonly kind: "image"; readonly format: ImageFormat; readonly width: number; readonly height: number }
  | (FileTrouble & { readonly kind: "refused" });

/** Pixels read at most: 60 million in grey and colour take 300 MB while they are unpacked. */
export const MOST_PIXELS = 60_000_000;
/** A JPEG of so many pixels seldom has 30 MB, a PNG of a scan may have twice that. */
export const MOST_BYTES = 80_000_000;
/** A sheet shown smaller than this has markers of less than 20 pixels. */
const LEAST_SIDE = 300;

const READERS: Readonly<Record<ImageFormat, (bytes: Uint8Array) => HeadReading>> = {
  jpeg: readJpegHead,
  png: readPngHead,
  webp: readWebpHead,
  heic: readHeicHead,
};

/**
 * The kind and size of a picture by its file's bytes, all of them, or why it is not to be unpacked: another kind of file, one
 * that ends early, too many pixels or too few, moving pictures, a printer's colours. Unpacks nothing, so that its memory is
 * the file's own.
 */
export function readImageHead(bytes: Uint8Array): ImageHead {
  if (bytes.length > MOST_BYTES) return { kind: "refused", ...tooManyBytes(MOST_BYTES) };
  const sniffed = sniffImage(bytes);
  if (sniffed.kind === "refused") return sniffed;
  const read = READERS[sniffed.format](bytes);
  if ("why" in read) return { kind: "refused", ...read };
  const { width, height } = read;
  if (!(width > 0 && height > 0)) return { kind: "refused", ...DAMAGED };
  if (width * height > MOST_PIXELS) return { kind: "refused", ...tooManyPixels(width, height, MOST_PIXELS) };
  if (Math.min(width, height) < LEAST_SIDE) return { kind: "refused", ...tooFewPixels(width, height) };
  return { kind: "image", format: sniffed.format, width, height };
}
