import { type Affine, applyAffine, chainAffine } from "../affine";
import { type BringReading, type BroughtUnit, MOST_BYTES } from "../brought";
import { countNotUnderstood } from "../count-not-understood";
import { gatherLines } from "../gather-lines";
import { likelyUnits } from "../likely-units";
import { readingOf, StopReading } from "../stop-reading";
import { SHAPES, shapeLines } from "./shape-lines";
import { boxOf, paperOf } from "./svg-boxes";
import { userUnits } from "./svg-lengths";
import { svgTransform } from "./svg-transform";
import { type SvgElement, svgTree } from "./svg-tree";

/** Lines of no group. */
const NO_LAYER = "outside any group";
const GROUPS: ReadonlySet<string> = new Set(["g", "a", "svg", "switch"]);
/** Drawn only where something else calls for it, or no drawing at all. */
const NOT_DRAWN: ReadonlySet<string> = new Set(
  "defs symbol clipPath mask marker pattern linearGradient radialGradient filter style script title desc metadata namedview".split(
    " ",
  ),
);
const WORDS: Readonly<Record<string, string>> = {
  text: "pieces of lettering",
  image: "pictures",
  foreignObject: "pieces of another format",
};
/** Copies of copies go no deeper. */
const DEEPEST_USE = 24;

type Layer = { readonly name: string };
type Sized = SvgElement["attributes"];

/**
 * The lines of an SVG file by layer: shapes and paths in groups, with their transforms and copies. A layer is the nearest group
 * with a label, else the outermost with an id. y is turned to run up the sheet. Where width or height tell the size of the paper, places are
 * metres of paper; else they are user units.
 */
export function readSvg(bytes: Uint8Array): BringReading {
  return readingOf(() => {
    if (bytes.length > MOST_BYTES)
      throw new StopReading(
        "the whole file",
        `it has ${(bytes.length / 1024 / 1024).toFixed(0)} megabytes, and at most 20 are read`,
        "save the plan alone, without pictures, and bring that",
      );
    const root = svgTree(new TextDecoder("utf-8").decode(bytes));
    const passedOver = countNotUnderstood();
    const gathering = gatherLines();
    const hidden = new Set<string>();
    const named = namedElements(root);
    const { scale, name } = paperOf(root);
    // Up the sheet, and in metres of paper where they are told.
    const sheet: Affine = [scale, 0, 0, -scale, 0, 0];
    for (const child of root.children) draw(child, chainAffine(sheet, boxOf(root)), null, []);

    const layers = gathering.layers((layer) => hidden.has(layer));
    const unit: BroughtUnit = name ? { kind: "paper", name } : { kind: "unknown", likely: likelyUnits(layers, null) };
    return { ok: true, brought: { file: "SVG", unit, layers, notUnderstood: passedOver.list() } };

    function draw(element: SvgElement, to: Affine, within: Layer | null, uses: readonly string[], size?: Sized): void {
      const called = element.name === "symbol" && size !== undefined;
      if (NOT_DRAWN.has(element.name) && !called) return;
      const isGroup = GROUPS.has(element.name) || called;
      const layer = isGroup && !called ? layerOf(element, within) : within;
      const layerName = layer?.name ?? NO_LAYER;
      const where = `line ${element.line}, ${layer ? `layer ${layerName}` : layerName}`;
      const own = svgTransform(element.attributes.get("transform"));
      const off = isHidden(element);
      // A layer that is switched off may be the one that is wanted; what is hidden inside a layer is not.
      if (off && layer !== within) hidden.add(layerName);
      if (!own) passedOver.add("elements moved in a way that is not understood", where);
      else if (off && layer === within) passedOver.add("elements made invisible", where);
      else if (element.name === "use") drawCopy(element, chainAffine(to, own), layer, uses, where);
      else if (isGroup) {
        const map = chainAffine(chainAffine(to, own), boxOf(element, size));
        for (const child of element.children) draw(child, map, layer, uses);
      } else drawShape(element, chainAffine(to, own), layerName, where);
    }

    function drawShape(element: SvgElement, to: Affine, layer: string, where: string): void {
      const lines = SHAPES.has(element.name) ? shapeLines(element) : [];
      if (!SHAPES.has(element.name))
        passedOver.add(
          WORDS[element.name] ?? `elements called "${element.name.slice(0, 30)}"`,
          where,
          placeOf(element, to),
        );
      else if (!lines) passedOver.add("shapes whose numbers cannot be read", where);
      for (const { points, curved } of lines ?? [])
        gathering.add(
          layer,
          points.map((point) => applyAffine(to, point)),
          curved,
        );
    }

    function drawCopy(use: SvgElement, to: Affine, layer: Layer | null, uses: readonly string[], where: string): void {
      const { attributes } = use;
      const id = attributes.get("href")?.replace(/^#/, "") ?? "";
      const original = named.get(id);
      gathering.addCopy();
      if (!original) passedOver.add("copies of something that the file does not hold", where);
      else if (uses.includes(id) || uses.length >= DEEPEST_USE) passedOver.add("copies that contain themselves", where);
      else {
        const moved: Affine = [1, 0, 0, 1, userUnits(attributes.get("x")), userUnits(attributes.get("y"))];
        draw(original, chainAffine(to, moved), layer, [...uses, id], attributes);
      }
    }
  });
}

/** The layer that a group's lines are on: a label is a layer's own name, an id only when no group round it has either. */
function layerOf({ attributes }: SvgElement, within: Layer | null): Layer | null {
  const label = attributes.get("label");
  if (label) return { name: label };
  const id = attributes.get("id");
  return within ?? (id ? { name: id } : null);
}

/** Where lettering or a picture begins, by its own numbers; what has none begins where its group does. */
function placeOf({ attributes }: SvgElement, to: Affine): readonly [number, number] {
  return applyAffine(to, [userUnits(attributes.get("x")), userUnits(attributes.get("y"))]);
}

function isHidden({ attributes }: SvgElement): boolean {
  const style = attributes.get("style") ?? "";
  return (
    attributes.get("display") === "none" ||
    attributes.get("visibility") === "hidden" ||
    /(^|;)\s*(display\s*:\s*none|visibility\s*:\s*hidden)/.test(style)
  );
}

function namedElements(root: SvgElement): ReadonlyMap<string, SvgElement> {
  const named = new Map<string, SvgElement>();
  const waiting = [root];
  for (let element = waiting.pop(); element; element = waiting.pop()) {
    const id = element.attributes.get("id");
    if (id !== undefined && !named.has(id)) named.set(id, element);
    // Not spread: a call takes some ten thousand arguments, and a drawing may have more lines in one group.
    for (const child of element.children) waiting.push(child);
  }
  return named;
}
