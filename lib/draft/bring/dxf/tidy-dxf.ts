import { MOST_ELEMENTS } from "../brought";
import type { PassedOver } from "../count-not-understood";
import { StopReading } from "../stop-reading";
import { plainName } from "./decode-letters";
import type { DxfGroups } from "./dxf-groups";
import { dxfElementWords, LINE_ELEMENTS } from "./dxf-words";
import { type GroupRange, recordsOf, splitSections, valueIn } from "./split-sections";

/** A DXF file with nothing in it but lines and blocks, in good order, for the parser. Names are numbers into the lists here. */
export type TidyDxf = {
  readonly text: string;
  /** `layers[n]` is what the layer `Ln` is called. */
  readonly layers: readonly string[];
  readonly hidden: ReadonlySet<string>;
};

/** Groups that tell where a line runs. All others are left out: a parser may stumble over them, and none moves a line. */
const KEPT_CODES: ReadonlySet<number> = new Set([
  2, 10, 11, 20, 21, 40, 41, 42, 44, 45, 50, 51, 70, 71, 72, 73, 74, 210, 220, 230,
]);

/** Flags of a polyline that is a surface, and of a vertex that the line does not run through. */
const SURFACE_FLAGS = 16 | 64;
const FRAME_VERTEX_FLAG = 16;
const OUTSIDE_DRAWING_FLAGS = 4 | 8;

/** Leaves of a file what is lines; counts the rest. Names of layers and blocks become numbers, so that none is taken for a word of DXF. */
export function tidyDxf(groups: DxfGroups, passedOver: PassedOver): TidyDxf {
  const sections = splitSections(groups);
  const out: string[] = [];
  const layers = namer("L");
  const blocks = namer("B");
  let count = 0;

  const header = sections.get("HEADER");
  section("HEADER", () => header && tidyHeader(header));
  const blocksAt = sections.get("BLOCKS");
  section("BLOCKS", () => blocksAt && tidyBlocks(blocksAt));
  section("ENTITIES", () => tidyElements([...recordsOf(groups, sections.get("ENTITIES") as GroupRange)], true));
  put(0, "EOF");
  return { text: out.join("\n"), layers: layers.names(), hidden: hiddenLayers(groups, sections.get("TABLES")) };

  function put(code: number, value: string): void {
    out.push(String(code), value);
  }

  function section(name: string, fill: () => void): void {
    put(0, "SECTION");
    put(2, name);
    fill();
    put(0, "ENDSEC");
  }

  function tidyHeader({ start, end }: GroupRange): void {
    for (let i = start; i + 1 < end; i += 1) {
      const name = groups.values[i] as string;
      if (groups.codes[i] !== 9 || !(name === "$INSUNITS" || name === "$MEASUREMENT")) continue;
      put(9, name);
      put(70, groups.values[i + 1] as string);
    }
  }

  function tidyBlocks(range: GroupRange): void {
    let inside: GroupRange[] | null = null;
    for (const record of recordsOf(groups, range)) {
      const type = groups.values[record.start];
      if (type === "BLOCK") {
        inside = [];
        put(0, "BLOCK");
        const outside = (flagsOf(record) & OUTSIDE_DRAWING_FLAGS) !== 0;
        put(2, blocks.number(valueIn(groups, record, 2) ?? ""));
        put(10, valueIn(groups, record, 10) ?? "0");
        put(20, valueIn(groups, record, 20) ?? "0");
        if (outside) put(1, "another file");
      } else if (type === "ENDBLK" && inside) {
        tidyElements(inside, false);
        put(0, "ENDBLK");
        inside = null;
      } else inside?.push(record);
    }
    if (inside)
      throw new StopReading(
        groups.at(range.end),
        "a block does not end",
        "save the drawing as DXF once more and bring that file",
      );
  }

  /** Elements on the sheet lie where they say; those of a block lie wherever it is put. */
  function tidyElements(records: readonly GroupRange[], onSheet: boolean): void {
    let runsOn = false;
    for (const record of records) {
      const type = groups.values[record.start] as string;
      if (type === "SEQEND") {
        if (runsOn) put(0, "SEQEND");
        runsOn = false;
      } else if (type === "VERTEX") {
        if (runsOn && (flagsOf(record) & FRAME_VERTEX_FLAG) === 0) putRecord(type, record);
      } else {
        if (runsOn) put(0, "SEQEND");
        runsOn = keep(type, record, onSheet) && type === "POLYLINE";
      }
    }
    if (runsOn) put(0, "SEQEND");
  }

  /** Writes an element down, or counts why not; true when it was written. */
  function keep(type: string, record: GroupRange, onSheet: boolean): boolean {
    count += 1;
    if (count > MOST_ELEMENTS)
      throw new StopReading(
        groups.at(record.start),
        "the drawing has more than 200,000 elements",
        "save the plan alone, without furniture, hatching and details, and bring that",
      );
    const why = whyNot(type, record);
    if (why)
      passedOver.add(
        why,
        `${groups.at(record.start)}, layer ${layerOf(record)}`,
        onSheet ? placeOf(record) : undefined,
      );
    else putRecord(type, record);
    return why === null;
  }

  function whyNot(type: string, record: GroupRange): string | null {
    if (!LINE_ELEMENTS.has(type)) return dxfElementWords(type);
    if (valueIn(groups, record, 60) === "1") return "elements made invisible";
    if (valueIn(groups, record, 67) === "1") return "elements on a paper layout";
    if (type === "POLYLINE" && (flagsOf(record) & SURFACE_FLAGS) !== 0) return dxfElementWords("MESH");
    return null;
  }

  function putRecord(type: string, record: GroupRange): void {
    put(0, type);
    put(8, layers.number(layerOf(record)));
    for (let i = record.start + 1; i < record.end; i += 1) {
      const code = groups.codes[i] as number;
      if (!KEPT_CODES.has(code)) continue;
      put(code, code === 2 ? blocks.number(groups.values[i] as string) : (groups.values[i] as string));
    }
  }

  /** An element's first place but the origin, which is written where there is none to tell: a hatch begins with one. */
  function placeOf({ start, end }: GroupRange): readonly [number, number] | undefined {
    for (let i = start + 1; i + 1 < end; i += 1) {
      const [code = 0, next] = [groups.codes[i], groups.codes[i + 1]];
      const at = [Number(groups.values[i]), Number(groups.values[i + 1])] as const;
      if ((code === 10 || code === 11) && next === code + 10 && (at[0] !== 0 || at[1] !== 0)) return at;
    }
    return undefined;
  }

  function flagsOf(record: GroupRange): number {
    return Number(valueIn(groups, record, 70) ?? 0);
  }

  function layerOf(record: GroupRange): string {
    return plainName(valueIn(groups, record, 8) ?? "0");
  }
}

/** Gives each name a number after a letter, the same every time. */
function namer(letter: string) {
  const numbers = new Map<string, number>();
  return {
    number: (name: string): string => {
      const known = numbers.get(name) ?? numbers.size;
      numbers.set(name, known);
      return `${letter}${known}`;
    },
    names: () => [...numbers.keys()],
  };
}

/** Layers that are frozen (a flag) or off (a colour below zero) in the table of layers. */
function hiddenLayers(groups: DxfGroups, tables: GroupRange | undefined): ReadonlySet<string> {
  if (!tables) return new Set();
  const hidden = [...recordsOf(groups, tables)].filter(
    (record) =>
      groups.values[record.start] === "LAYER" &&
      ((Number(valueIn(groups, record, 70) ?? 0) & 1) !== 0 || Number(valueIn(groups, record, 62) ?? 7) < 0),
  );
  return new Set(hidden.map((record) => plainName(valueIn(groups, record, 2) ?? "")));
}
