import { StopReading } from "../stop-reading";
import type { DxfGroups } from "./dxf-groups";

const CODE = /^\s*-?\d{1,4}\s*$/;

/** The groups of a DXF file in letters: a line with the code, a line with the value. Stops at the first line out of order. */
export function readTextGroups(text: string): DxfGroups {
  const lines = text.split(/\r\n|\n|\r/);
  let last = lines.length;
  while (last > 0 && lines[last - 1]?.trim() === "") last -= 1;
  let first = 0;
  while (first < last && lines[first]?.trim() === "") first += 1;
  const codes: number[] = [];
  const values: string[] = [];
  for (let i = first; i < last; i += 2) {
    const code = lines[i] as string;
    if (!CODE.test(code)) throw outOfOrder(i, code, first);
    codes.push(Number(code));
    // An empty value at the very end was taken for a blank line.
    values.push((lines[i + 1] ?? "").trim());
    if (codes.at(-1) === 0 && values.at(-1) === "EOF") break;
  }
  return { codes, values, at: (index) => `line ${first + 2 * index + 1}` };
}

function outOfOrder(index: number, line: string, first: number): StopReading {
  const shown = line.length > 30 ? `${line.slice(0, 30)}…` : line;
  if (index === first)
    return new StopReading(
      `line ${index + 1}`,
      `this is no DXF file: it begins with "${shown}", where the number 0 is due`,
      "save the drawing as DXF in the program that made it, and bring that file",
    );
  return new StopReading(
    `line ${index + 1}`,
    `a group's number is due here, and this is "${shown}"`,
    "a line was lost or added, perhaps on the way here: save the drawing as DXF once more and bring that file",
  );
}
