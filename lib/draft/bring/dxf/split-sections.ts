import { StopReading } from "../stop-reading";
import type { DxfGroups } from "./dxf-groups";

/** A run of groups: from `start` up to, but without, `end`. */
export type GroupRange = { readonly start: number; readonly end: number };

const SAVE_AGAIN = "the file was cut, perhaps on the way here: save the drawing as DXF once more and bring that file";

/** The sections of a DXF file by name, without their first and last group. Stops at one that has no end. */
export function splitSections({ codes, values, at }: DxfGroups): ReadonlyMap<string, GroupRange> {
  const sections = new Map<string, GroupRange>();
  let i = 0;
  while (i < codes.length) {
    if (codes[i] !== 0 || values[i] !== "SECTION") {
      i += 1;
      continue;
    }
    const name = codes[i + 1] === 2 ? (values[i + 1] as string) : "";
    const start = i + 2;
    let end = start;
    while (end < codes.length && !(codes[end] === 0 && values[end] === "ENDSEC")) {
      if (codes[end] === 0 && (values[end] === "SECTION" || values[end] === "EOF")) break;
      end += 1;
    }
    if (codes[end] !== 0 || values[end] !== "ENDSEC")
      throw new StopReading(
        at(Math.min(end, codes.length - 1)),
        `the section ${name || "begun last"} does not end`,
        SAVE_AGAIN,
      );
    sections.set(name, { start, end });
    i = end + 1;
  }
  if (sections.size === 0)
    throw new StopReading(
      "the whole file",
      "there is no section in it, so it is no DXF file",
      "save the drawing as DXF and bring that file",
    );
  if (!sections.has("ENTITIES"))
    throw new StopReading("the whole file", "it has no section ENTITIES, where the lines stand", SAVE_AGAIN);
  return sections;
}

/** The records of a section: each from a group with code 0 to the next. */
export function* recordsOf({ codes }: DxfGroups, { start, end }: GroupRange): Generator<GroupRange> {
  let from = start;
  while (from < end && codes[from] !== 0) from += 1;
  while (from < end) {
    let to = from + 1;
    while (to < end && codes[to] !== 0) to += 1;
    yield { start: from, end: to };
    from = to;
  }
}

/** The first value with a code in a record, or undefined. */
export function valueIn({ codes, values }: DxfGroups, { start, end }: GroupRange, code: number): string | undefined {
  for (let i = start; i < end; i += 1) if (codes[i] === code) return values[i];
  return undefined;
}
