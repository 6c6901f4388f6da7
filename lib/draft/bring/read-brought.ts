import type { BringReading } from "./brought";
import { readDxf } from "./dxf/read-dxf";
import { readSvg } from "./svg/read-svg";

/** How much of a file's head tells what it is. */
const HEAD_BYTES = 1024;

/** A file that someone brings, told by what is in it and not by its name: SVG where an XML tag comes first, else DXF. */
export function readBrought(bytes: Uint8Array): BringReading {
  const head = new TextDecoder("windows-1252").decode(bytes.subarray(0, HEAD_BYTES));
  if (head.startsWith("%PDF") || /^(\x89PNG|\xff\xd8\xff|GIF8|RIFF)/.test(head))
    return {
      ok: false,
      problem: {
        where: "the first line",
        message: "this is a picture or a printed page, and has no lines that can be taken over",
        hint: "lay it under the plan and trace it, or save the drawing as DXF or SVG and bring that file",
      },
    };
  return /^(?:\xef\xbb\xbf)?\s*</.test(head) ? readSvg(bytes) : readDxf(bytes);
}
