import { DAMAGED, type HeadReading, MOVING } from "./file-trouble";
import { latin } from "./sniff-image";

const SIGNATURE = 8;
/** A chunk's length, its name and its sum stand round its data. */
const [NAME, DATA, AROUND] = [4, 8, 12];

/** A PNG's size from its header chunk; its chunks are walked to the last, which has to be there (PNG, third edition, 5.3 and 11.2). */
export function readPngHead(bytes: Uint8Array): HeadReading {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let size: { readonly width: number; readonly height: number } | null = null;
  for (let at = SIGNATURE; at + AROUND <= bytes.length; ) {
    const name = latin(bytes.subarray(at + NAME, at + DATA));
    const length = view.getUint32(at);
    const next = at + AROUND + length;
    if (next > bytes.length) return DAMAGED;
    if (name === "IHDR" && length === 13)
      size = { width: view.getUint32(at + DATA), height: view.getUint32(at + DATA + 4) };
    if (name === "acTL") return MOVING;
    if (name === "IEND") return size ?? DAMAGED;
    at = next;
  }
  return DAMAGED;
}
