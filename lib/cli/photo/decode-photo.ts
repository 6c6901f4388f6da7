import sharp from "sharp";
import { DAMAGED, type FileTrouble } from "../../photo/files/file-trouble";
import { MOST_PIXELS, readImageHead } from "../../photo/files/read-image-head";
import type { GreyPixels } from "../../photo/pixels";
import { decodeHeic } from "./decode-heic";

export type DecodedPhoto =
  | { readonly kind: "decoded"; readonly grey: GreyPixels }
  | (FileTrouble & { readonly kind: "refused" });

/**
 * A photograph's file as grey pixels, turned upright as its camera says. Its head is read first, so that nothing too large is
 * ever unpacked. What the camera wrote of place and time stays behind in the file.
 */
export async function decodePhoto(bytes: Uint8Array): Promise<DecodedPhoto> {
  const head = readImageHead(bytes);
  if (head.kind === "refused") return head;
  if (head.format === "heic") {
    const grey = await decodeHeic(bytes);
    return grey ? { kind: "decoded", grey } : { kind: "refused", ...DAMAGED };
  }
  try {
    const { data, info } = await sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: "error" })
      .autoOrient()
      .flatten({ background: "#ffffff" })
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    if (info.channels !== 1) throw new Error(`Grey pixels have one channel, not ${info.channels}.`);
    return { kind: "decoded", grey: { width: info.width, height: info.height, grey: new Uint8Array(data) } };
  } catch {
    return { kind: "refused", ...DAMAGED };
  }
}
