import { readSheetCode, type SheetCodeReading } from "../../sheet/sheet-code";
import type { GreyPixels, PhotoPoint } from "../pixels";

/** What reads the codes in a picture: `readBarcodes` of the package that its loader passes in. */
export type ReadBarcodes = (
  image: ImageData,
  options: { readonly formats: ["QRCode"] },
) => Promise<readonly { readonly text: string; readonly position: CodeCorners }[]>;

type CodeCorners = {
  readonly topLeft: { readonly x: number; readonly y: number };
  readonly bottomRight: { readonly x: number; readonly y: number };
};

export type CodeReading =
  | (Extract<SheetCodeReading, { readonly kind: "read" }> & { /** Its middle. */ readonly at: PhotoPoint })
  | Exclude<SheetCodeReading, { readonly kind: "read" }>
  | { readonly kind: "none" }
  /** Codes of ours that say different things: several sheets are in view. */
  | { readonly kind: "several" };

/** The one code of ours in a picture, whatever other codes are round it; else what was found instead. */
export async function readCode(readBarcodes: ReadBarcodes, grey: GreyPixels): Promise<CodeReading> {
  const found = await readBarcodes(asImage(grey), { formats: ["QRCode"] });
  const readings = found.map(({ text, position: { topLeft, bottomRight } }) => {
    const at: PhotoPoint = [(topLeft.x + bottomRight.x) / 2, (topLeft.y + bottomRight.y) / 2];
    return { text, at, reading: readSheetCode(text) };
  });
  const ours = readings.filter(({ reading }) => reading.kind !== "not ours");
  const [first] = ours;
  if (!first) return { kind: readings.length > 0 ? "not ours" : "none" };
  if (ours.some(({ text }) => text !== first.text)) return { kind: "several" };
  return first.reading.kind === "read" ? { ...first.reading, at: first.at } : first.reading;
}

/** Grey pixels as a page's picture holds them; its own type is a browser's, the reader asks for no more than these. */
function asImage({ width, height, grey }: GreyPixels): ImageData {
  const data = new Uint8ClampedArray(width * height * 4);
  const words = new Uint32Array(data.buffer);
  for (let i = 0; i < words.length; i++) words[i] = ((grey[i] as number) * 0x010101 + 0xff000000) >>> 0;
  return { data, width, height, colorSpace: "srgb" } as ImageData;
}
