import { DAMAGED, type HeadReading, MOVING } from "./file-trouble";
import { latin } from "./sniff-image";

/** The file's own head, then each chunk's name and length. */
const [FIRST, DATA] = [12, 8];
const ANIMATED = 0x02;

/** A WebP's size from the first of its chunks (RFC 9649, 2.4 to 2.7). */
export function readWebpHead(bytes: Uint8Array): HeadReading {
  if (bytes.length < FIRST + DATA + 10) return DAMAGED;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (latin(bytes.subarray(0, 4)) !== "RIFF" || view.getUint32(4, true) + 8 > bytes.length) return DAMAGED;
  const at = FIRST + DATA;
  const three = (place: number) => view.getUint16(place, true) + (view.getUint8(place + 2) << 16);
  switch (latin(bytes.subarray(FIRST, FIRST + 4))) {
    case "VP8X":
      if (view.getUint8(at) & ANIMATED) return MOVING;
      return { width: three(at + 4) + 1, height: three(at + 7) + 1 };
    case "VP8 ":
      return { width: view.getUint16(at + 6, true) & 0x3fff, height: view.getUint16(at + 8, true) & 0x3fff };
    case "VP8L": {
      const bits = view.getUint32(at + 1, true);
      return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
    }
    default:
      return DAMAGED;
  }
}
