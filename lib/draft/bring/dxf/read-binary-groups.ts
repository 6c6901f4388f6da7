import { StopReading } from "../stop-reading";
import { BINARY_MARK, type DxfGroups } from "./dxf-groups";

type Kind = "text" | "double" | "int16" | "int32" | "int64" | "byte" | "chunk";

/** What follows each range of codes, from the published list of group code value types (from memory). */
const KINDS: readonly (readonly [first: number, last: number, kind: Kind])[] = [
  [0, 9, "text"],
  [10, 59, "double"],
  [60, 79, "int16"],
  [90, 99, "int32"],
  [100, 109, "text"],
  [110, 149, "double"],
  [160, 169, "int64"],
  [170, 179, "int16"],
  [210, 239, "double"],
  [270, 289, "int16"],
  [290, 299, "byte"],
  [300, 309, "text"],
  [310, 319, "chunk"],
  [320, 369, "text"],
  [370, 389, "int16"],
  [390, 399, "text"],
  [400, 409, "int16"],
  [410, 419, "text"],
  [420, 429, "int32"],
  [430, 439, "text"],
  [440, 459, "int32"],
  [460, 469, "double"],
  [470, 481, "text"],
  [999, 1003, "text"],
  [1004, 1004, "chunk"],
  [1005, 1009, "text"],
  [1010, 1059, "double"],
  [1060, 1070, "int16"],
  [1071, 1071, "int32"],
];

/** The groups of a DXF file in bytes, to the same text values as one in letters. `decode` reads its letters. */
export function readBinaryGroups(bytes: Uint8Array, decode: (letters: Uint8Array) => string): DxfGroups {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let place = BINARY_MARK.length;
  // Older files write a code in one byte, newer ones in two: the first code is 0, and "S" of SECTION follows it.
  const wide = bytes[place + 1] === 0;
  const [codes, values, places]: [number[], string[], number[]] = [[], [], []];
  try {
    while (place < bytes.length) {
      places.push(place);
      const code = readCode();
      codes.push(code);
      values.push(readValue(kindOf(code)));
      if (code === 0 && values.at(-1) === "EOF") break;
    }
  } catch (reason) {
    if (!(reason instanceof RangeError)) throw reason;
    throw cut(places.at(-1) ?? place, "the file ends in the middle of a value");
  }
  return { codes, values, at: (index) => `byte ${places[index] ?? bytes.length}` };

  function readCode(): number {
    if (wide) return view.getInt16(advance(2), true);
    const code = view.getUint8(advance(1));
    return code === 255 ? view.getInt16(advance(2), true) : code;
  }

  function readValue(kind: Kind): string {
    switch (kind) {
      case "text":
        return readText();
      case "double":
        return String(view.getFloat64(advance(8), true));
      case "int16":
        return String(view.getInt16(advance(2), true));
      case "int32":
        return String(view.getInt32(advance(4), true));
      case "int64":
        return String(view.getBigInt64(advance(8), true));
      case "byte":
        return String(view.getUint8(advance(1)));
      case "chunk":
        advance(view.getUint8(advance(1)));
        return "";
    }
  }

  function readText(): string {
    const end = bytes.indexOf(0, place);
    if (end < 0) throw new RangeError();
    const letters = bytes.subarray(place, end);
    place = end + 1;
    return decode(letters).trim();
  }

  function kindOf(code: number): Kind {
    const range = KINDS.find(([first, last]) => code >= first && code <= last);
    if (!range) throw cut(places.at(-1) ?? place, `a group has the number ${code}, which means nothing`);
    return range[2];
  }

  function advance(by: number): number {
    const from = place;
    place += by;
    return from;
  }
}

function cut(byte: number, what: string): StopReading {
  return new StopReading(
    `byte ${byte}`,
    what,
    "the file was damaged, perhaps on the way here: save the drawing as DXF in letters (ASCII) and bring that file",
  );
}
