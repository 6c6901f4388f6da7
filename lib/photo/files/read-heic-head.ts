import { DAMAGED, type HeadReading } from "./file-trouble";
import { latin } from "./sniff-image";

type Box = { readonly name: string; readonly from: number; readonly to: number };

/** Boxes on the way to the sizes; `meta` begins with four bytes more than the others. */
const WAY: readonly { readonly name: string; readonly skip: number }[] = [
  { name: "meta", skip: 4 },
  { name: "iprp", skip: 0 },
  { name: "ipco", skip: 0 },
];

/**
 * A HEIC's size: the largest of the sizes that it lists, since it lists its tiles' and its small copy's too (ISO/IEC 23008-12,
 * 6.5.3, in the boxes of ISO/IEC 14496-12; from memory). A box that goes past the file's end says that a part is missing.
 */
export function readHeicHead(bytes: Uint8Array): HeadReading {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let boxes = listBoxes(bytes, view, 0, bytes.length);
  for (const { name, skip } of WAY) {
    const box = boxes?.find((each) => each.name === name);
    if (!box) return DAMAGED;
    boxes = listBoxes(bytes, view, box.from + skip, box.to);
  }
  const sizes = (boxes ?? [])
    .filter(({ name, from, to }) => name === "ispe" && to - from >= 12)
    .map(({ from }) => ({ width: view.getUint32(from + 4), height: view.getUint32(from + 8) }));
  return sizes.reduce<HeadReading>(
    (largest, each) => ("why" in largest || each.width * each.height > largest.width * largest.height ? each : largest),
    DAMAGED,
  );
}

/** The boxes between two places; null where one of them makes no sense. */
function listBoxes(bytes: Uint8Array, view: DataView, from: number, end: number): readonly Box[] | null {
  const boxes: Box[] = [];
  for (let at = from; at + 8 <= end; ) {
    const short = view.getUint32(at);
    const long = short === 1 && at + 16 <= end;
    const size = short === 0 ? end - at : long ? Number(view.getBigUint64(at + 8)) : short;
    const head = long ? 16 : 8;
    if (size < head || at + size > end) return null;
    boxes.push({ name: latin(bytes.subarray(at + 4, at + 8)), from: at + head, to: at + size });
    at += size;
  }
  return boxes;
}
