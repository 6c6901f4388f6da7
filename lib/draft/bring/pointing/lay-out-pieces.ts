import Flatbush from "flatbush";
import type { BroughtLayer, BroughtPoint } from "../brought";

/** A piece's first or last point is an end or a corner, and no point of a bend. */
export const FIRST_IS_END = 1;
export const LAST_IS_END = 2;
/** A piece of a bend, whose middle means nothing. */
export const BENT = 4;

/**
 * The straight pieces of all lines of a drawing as rows of numbers, which a worker can hand over: `ends` has x, y, x, y of each,
 * `layers` the number of its layer, `flags` what its ends are; `boxes` finds the ones near a place. The drawing's own unit.
 */
export type CatchingPieces = {
  readonly ends: Float64Array;
  readonly layers: Uint32Array;
  readonly flags: Uint8Array;
  readonly boxes: ArrayBuffer | null;
};

export function layOutPieces(layers: readonly Pick<BroughtLayer, "lines">[]): CatchingPieces {
  const count = layers.reduce((sum, { lines }) => sum + lines.reduce((some, { points }) => some + steps(points), 0), 0);
  const ends = new Float64Array(4 * count);
  const layerOf = new Uint32Array(count);
  const flags = new Uint8Array(count);
  if (count === 0) return { ends, layers: layerOf, flags, boxes: null };
  const boxes = new Flatbush(count);
  let next = 0;
  for (const [layer, { lines }] of layers.entries())
    for (const { points, curved } of lines)
      for (let i = 0; i < steps(points); i++) {
        const [[ax, ay], [bx, by]] = [points[i] as BroughtPoint, points[i + 1] as BroughtPoint];
        ends.set([ax, ay, bx, by], 4 * next);
        layerOf[next] = layer;
        const [first, last] = [!curved || i === 0, !curved || i === steps(points) - 1];
        flags[next] = (first ? FIRST_IS_END : 0) | (last ? LAST_IS_END : 0) | (curved ? BENT : 0);
        boxes.add(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by));
        next += 1;
      }
  boxes.finish();
  return { ends, layers: layerOf, flags, boxes: boxes.data as ArrayBuffer };
}

function steps(points: readonly BroughtPoint[]): number {
  return Math.max(points.length - 1, 0);
}
