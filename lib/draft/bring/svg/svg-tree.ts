import { SaxesParser } from "saxes";
import { MOST_ELEMENTS } from "../brought";
import { StopReading } from "../stop-reading";

/** An element of an SVG file. Names have lost their prefix: `xlink:href` is `href`. */
export type SvgElement = {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly SvgElement[];
  /** The line of the file it begins on, from 1. */
  readonly line: number;
};

type Growing = { name: string; attributes: Map<string, string>; children: Growing[]; line: number };

/** Elements inside one another go no deeper; a drawing has ten or twenty levels. */
const DEEPEST = 500;

/** A name that a file gives to a text of its own, as some give to the addresses of namespaces; texts within texts are left out. */
const PLAIN_ENTITY = /<!ENTITY\s+([\w.-]+)\s+"([^"<&%]*)"\s*>/g;

/** The elements of an SVG file. Stops at the first place that is not XML. */
export function svgTree(text: string): SvgElement {
  const parser = new SaxesParser();
  const open: Growing[] = [];
  let root: Growing | null = null;
  let count = 0;
  parser.on("error", (error) => {
    throw new StopReading(
      `line ${parser.line}`,
      `the file is broken there: ${plainly(error.message)}`,
      "save the drawing as SVG once more, and bring that file",
    );
  });
  parser.on("doctype", (declared) => {
    for (const [, name, value] of declared.matchAll(PLAIN_ENTITY)) parser.ENTITIES[name as string] = value as string;
  });
  parser.on("opentag", ({ name, attributes }) => {
    count += 1;
    if (count > MOST_ELEMENTS || open.length >= DEEPEST)
      throw new StopReading(
        `line ${parser.line}`,
        open.length >= DEEPEST
          ? "its groups lie too deep in one another"
          : "the drawing has more than 200,000 elements",
        "save the plan alone, and bring that",
      );
    const element: Growing = {
      name: local(name),
      attributes: new Map(Object.entries(attributes).map(([key, value]) => [local(key), String(value)])),
      children: [],
      line: parser.line,
    };
    open.at(-1)?.children.push(element);
    root ??= element;
    open.push(element);
  });
  parser.on("closetag", () => {
    open.pop();
  });
  parser.write(text).close();
  const found = root as Growing | null;
  if (found?.name !== "svg")
    throw new StopReading(
      "the first element",
      found ? `this is no SVG file: it begins with <${found.name}>` : "there is nothing in the file",
      "save the drawing as SVG and bring that file",
    );
  return found;
}

function local(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

/** The parser's own words without the place before them. */
function plainly(message: string): string {
  return message.replace(/^\d+:\d+:\s*/, "").replace(/\.$/, "");
}
