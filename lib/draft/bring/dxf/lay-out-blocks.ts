import type { DxfBlock, DxfEntity } from "dxf";
import { type Affine, AS_IT_IS, applyAffine, chainAffine } from "../affine";
import type { PassedOver } from "../count-not-understood";
import type { Gathering } from "../gather-lines";
import { elementLines } from "./element-lines";

type Insert = Extract<DxfEntity, { type: "INSERT" }>;

/** Blocks within blocks go no deeper; a file of any sense has three or four. */
const DEEPEST = 24;
/** Rows times columns of one block; more is a slip of the pen. */
const MOST_COPIES = 10_000;
const NOT_HELD = "blocks that the file does not hold";
/** An axis this far from straight up or down is a tilted plane. */
const TILT = 1e-6;
/** Layer 0 inside a block stands for the layer that the block is put on (published DXF reference, from memory). */
const LAYER_ZERO = "0";

export type LayOut = {
  readonly blocks: ReadonlyMap<string, DxfBlock>;
  readonly layerName: (numbered: string | undefined) => string;
  readonly gathering: Gathering;
  readonly passedOver: PassedOver;
};

/** Gathers the lines of all elements, with every block laid out wherever it is put. */
export function layOutBlocks(
  elements: readonly DxfEntity[],
  { blocks, layerName, gathering, passedOver }: LayOut,
): void {
  layOut(elements, AS_IT_IS, null, []);

  function layOut(list: readonly DxfEntity[], to: Affine, putOn: string | null, within: readonly string[]): void {
    for (const element of list) {
      const own = layerName(element.layer);
      const layer = own === LAYER_ZERO && putOn !== null ? putOn : own;
      const side = sideOf(element);
      if (side === "tilted") passedOver.add("elements drawn in a tilted plane", `layer ${layer}`);
      else if (element.type === "INSERT") layOutInsert(element, side === "back", to, layer, within);
      else {
        const flipped = side === "back";
        const lines = elementLines(element, flipped);
        const onSheet = flipped && usesOwnAxes(element) ? chainAffine(to, MIRRORED) : to;
        if (typeof lines === "string") passedOver.add(lines, `layer ${layer}`);
        else
          for (const { points, curved } of lines)
            gathering.add(
              layer,
              points.map((p) => applyAffine(onSheet, p)),
              curved,
            );
      }
    }
  }

  function layOutInsert(insert: Insert, flipped: boolean, to: Affine, layer: string, within: readonly string[]): void {
    const name = insert.block ?? "";
    const block = blocks.get(name);
    const why = whyNot(insert, block, within);
    if (why || !block) {
      const { x = Number.NaN, y = Number.NaN } = insert;
      passedOver.add(why ?? NOT_HELD, `layer ${layer}`, applyAffine(to, [x, y]));
      return;
    }
    const { columnCount = 1, rowCount = 1, columnSpacing = 0, rowSpacing = 0 } = insert;
    const outer = flipped ? chainAffine(to, MIRRORED) : to;
    for (let row = 0; row < Math.max(1, rowCount); row += 1)
      for (let column = 0; column < Math.max(1, columnCount); column += 1) {
        gathering.addCopy();
        const map = insertMap(insert, block, column * columnSpacing, row * rowSpacing);
        layOut(block.entities ?? [], chainAffine(outer, map), layer, [...within, name]);
      }
  }
}

/** Why a block cannot be laid out, or null when it can. */
function whyNot(insert: Insert, block: DxfBlock | undefined, within: readonly string[]): string | null {
  if (!block) return NOT_HELD;
  if (block.xref !== undefined) return "drawings kept in other files";
  if (within.includes(block.name ?? "") || within.length >= DEEPEST) return "blocks that contain themselves";
  const { columnCount = 1, rowCount = 1, columnSpacing = 0, rowSpacing = 0 } = insert;
  if (!(Math.max(1, columnCount) * Math.max(1, rowCount) <= MOST_COPIES))
    return "blocks repeated more often than can be drawn";
  const finite = insertMap(insert, block, columnSpacing, rowSpacing).every(Number.isFinite);
  return finite ? null : "elements with a number missing";
}

/** An element on the back of the sheet has its own x axis to the left. */
const MIRRORED: Affine = [-1, 0, 0, 1, 0, 0];

/** Lines, ellipses and curves tell their places on the sheet itself; the others in axes of their own. */
function usesOwnAxes({ type }: DxfEntity): boolean {
  return type === "LWPOLYLINE" || type === "POLYLINE" || type === "ARC" || type === "CIRCLE";
}

function sideOf({ type, extrusionX = 0, extrusionY = 0, extrusionZ = 1 }: DxfEntity): "front" | "back" | "tilted" {
  if (type === "LINE" || type === "SPLINE") return "front";
  const size = Math.hypot(extrusionX, extrusionY, extrusionZ);
  if (!(size > 0)) return "front";
  if (Math.hypot(extrusionX, extrusionY) > TILT * size) return "tilted";
  return extrusionZ < 0 ? "back" : "front";
}

/** From a block's own coordinates to where one copy of it stands: scaled about its base point, turned, moved. */
function insertMap(insert: Insert, block: DxfBlock, across: number, up: number): Affine {
  const { x = Number.NaN, y = Number.NaN, scaleX = 1, scaleY = 1, rotation = 0 } = insert;
  const angle = (rotation * Math.PI) / 180;
  const [c, s] = quarterTurn(rotation) ?? [Math.cos(angle), Math.sin(angle)];
  const turned: Affine = [c, s, -s, c, x, y];
  const placed: Affine = [scaleX, 0, 0, scaleY, across - scaleX * (block.x ?? 0), up - scaleY * (block.y ?? 0)];
  return chainAffine(turned, placed);
}

/** Cosine and sine of a whole number of quarter turns, free of rounding. */
function quarterTurn(degrees: number): readonly [cosine: number, sine: number] | null {
  const turns = (((degrees / 90) % 4) + 4) % 4;
  return (
    (
      [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ] as const
    )[turns] ?? null
  );
}
