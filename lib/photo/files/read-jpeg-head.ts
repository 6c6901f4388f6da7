import { DAMAGED, type HeadReading, PRINTING_COLOURS } from "./file-trouble";

/** Markers without a length: TEM, the restarts, SOI, EOI. */
const isBare = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd9);
/** Start of frame: C0 to CF but for the tables C4, C8 and CC. */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
const START_OF_SCAN = 0xda;
const END = 0xd9;

/** A JPEG's frame, by the markers of ITU-T T.81, annex B; what a camera keeps beside the picture is passed over by its length. */
export function readJpegHead(bytes: Uint8Array): HeadReading {
  const two = (at: number) => (bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0);
  let size: { readonly width: number; readonly height: number } | null = null;
  for (let at = 2; at + 4 <= bytes.length; ) {
    if (bytes[at] !== 0xff) return DAMAGED;
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) at += 1;
    else if (isBare(marker)) at += 2;
    else if (marker === START_OF_SCAN) return size && hasEnd(bytes, at) ? size : DAMAGED;
    else {
      if (isFrame(marker)) {
        if (bytes[at + 9] === 4) return PRINTING_COLOURS;
        size = { height: two(at + 5), width: two(at + 7) };
      }
      at += 2 + two(at + 2);
    }
  }
  return DAMAGED;
}

/** Whether the picture's end is there; within its data an FF is always followed by a 0 or a restart. */
function hasEnd(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1))
    if (bytes[at + 1] === END) return true;
  return false;
}
