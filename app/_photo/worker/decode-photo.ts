import { tooManyBytes } from "@/lib/photo/files/file-trouble";
import { MOST_BYTES, readImageHead } from "@/lib/photo/files/read-image-head";
import type { GreyPixels } from "@/lib/photo/pixels";
import { type HeicPicture, loadHeicDecoder } from "./load-tools";
import type { Refused, Shown } from "./messages";

/** A photograph in grey, and as it is shown. */
export type Decoded = { readonly kind: "decoded"; readonly grey: GreyPixels; readonly shown: Shown };

/** A larger photograph is shrunk to this many pixels while it is decoded: enough for a pencil's line on any paper. */
const MOST_PIXELS = 16e6;
/** The longer side of the photograph as it is shown where nothing else is asked for, pixels. */
const SHOWN_PX = 1600;
const JPEG_QUALITY = 0.85;
/** Luma from red, green and blue, ITU-R BT.601, in 256ths. */
const [RED, GREEN, BLUE] = [77, 150, 29];

const UNREADABLE: Refused = {
  kind: "refused",
  say: "This file cannot be opened as a photograph: it may have arrived incomplete.",
  remedy: "Choose it again, or take the photograph anew.",
};

/**
 * Decodes a photograph as it is looked at: turned upright, and shrunk while decoding if it is very large. Its size is known
 * and bounded before that. What the camera wrote beside the picture (where, when, with what) is never read.
 */
export async function decodePhoto(file: Blob, longerPx = SHOWN_PX): Promise<Decoded | Refused> {
  if (file.size > MOST_BYTES) return { kind: "refused", ...tooManyBytes(MOST_BYTES) };
  const head = readImageHead(new Uint8Array(await file.arrayBuffer()));
  if (head.kind === "refused") return { kind: "refused", say: head.say, remedy: head.remedy };
  const { width, height } = head;
  if (head.format === "heic") return decodeHeic(file, longerPx);
  const share = Math.min(1, Math.sqrt(MOST_PIXELS / (width * height)));
  const options: ImageBitmapOptions = { imageOrientation: "from-image" };
  // Of one side alone: the head counts them as stored, and a photograph on its side is turned before it is shrunk.
  if (share < 1) Object.assign(options, { resizeHeight: Math.round(height * share), resizeQuality: "high" });
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, options);
  } catch {
    return UNREADABLE;
  }
  try {
    return await fromSource(bitmap, bitmap.width, bitmap.height, longerPx);
  } finally {
    bitmap.close();
  }
}

async function decodeHeic(file: Blob, longerPx: number): Promise<Decoded | Refused> {
  const { HeifDecoder } = await loadHeicDecoder();
  const decoder = new HeifDecoder();
  let pictures: readonly HeicPicture[] = [];
  try {
    pictures = decoder.decode(await file.arrayBuffer());
    const [first] = pictures;
    if (!first) return UNREADABLE;
    const [width, height] = [first.get_width(), first.get_height()];
    const pixels = await new Promise<Uint8ClampedArray | null>((resolve) => {
      first.display({ data: new Uint8ClampedArray(width * height * 4), width, height }, (filled) =>
        resolve(filled?.data ?? null),
      );
    });
    if (!pixels) return UNREADABLE;
    const bitmap = await createImageBitmap(new ImageData(pixels as Uint8ClampedArray<ArrayBuffer>, width, height));
    try {
      return await fromSource(bitmap, width, height, longerPx);
    } finally {
      bitmap.close();
    }
  } catch {
    return UNREADABLE;
  } finally {
    for (const picture of pictures) picture.free();
    decoder.decoder.delete();
  }
}

async function fromSource(
  source: CanvasImageSource,
  width: number,
  height: number,
  longerPx: number,
): Promise<Decoded> {
  const share = Math.min(1, Math.sqrt(MOST_PIXELS / (width * height)));
  const [w, h] = [Math.round(width * share), Math.round(height * share)];
  const grey = greyOf(source, w, h);
  const small = Math.min(1, longerPx / Math.max(w, h));
  const [shownWidth, shownHeight] = [Math.round(w * small), Math.round(h * small)];
  const canvas = new OffscreenCanvas(shownWidth, shownHeight);
  contextOf(canvas).drawImage(source, 0, 0, shownWidth, shownHeight);
  const picture = await canvas.convertToBlob({ type: "image/jpeg", quality: JPEG_QUALITY });
  return {
    kind: "decoded",
    grey,
    shown: { picture, width: shownWidth, height: shownHeight, scale: w / shownWidth },
  };
}

/** A picture as grey pixels of a size; where it is transparent, as on white paper. */
export function greyOf(source: CanvasImageSource, width: number, height: number): GreyPixels {
  const context = contextOf(new OffscreenCanvas(width, height));
  context.fillStyle = "#fff";
  context.fillRect(0, 0, width, height);
  context.drawImage(source, 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  const grey = new Uint8Array(width * height);
  for (let i = 0, at = 0; i < grey.length; i++, at += 4)
    grey[i] = ((data[at] as number) * RED + (data[at + 1] as number) * GREEN + (data[at + 2] as number) * BLUE) >> 8;
  return { width, height, grey };
}

/** Grey pixels as a picture file, small enough to be kept in the browser. */
export async function pictureOf({ width, height, grey }: GreyPixels): Promise<Blob> {
  const canvas = new OffscreenCanvas(width, height);
  const image = new ImageData(width, height);
  const words = new Uint32Array(image.data.buffer);
  for (let i = 0; i < words.length; i++) words[i] = ((grey[i] as number) * 0x010101 + 0xff000000) >>> 0;
  contextOf(canvas).putImageData(image, 0, 0);
  return canvas.convertToBlob({ type: "image/jpeg", quality: JPEG_QUALITY });
}

export function contextOf(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("This browser gives a worker no canvas to draw on.");
  return context;
}
