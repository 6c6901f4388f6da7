import { type BroughtLayer, type BroughtLine, type BroughtPoint, MOST_POINTS } from "./brought";
import { StopReading } from "./stop-reading";

/** A copy of a block weighs as much as so many points. */
const COPY_COST = 10;

/** Gathers lines by layer while a file is read; made anew for each file. */
export type Gathering = {
  readonly add: (layer: string, points: readonly BroughtPoint[], curved: boolean) => void;
  /** Counts a copy of a block: copies without a line in them take their time as well. */
  readonly addCopy: () => void;
  readonly layers: (isHidden: (layer: string) => boolean) => readonly BroughtLayer[];
};

export function gatherLines(): Gathering {
  const lines = new Map<string, BroughtLine[]>();
  let count = 0;
  return {
    add: (layer, points, curved) => {
      bound(points.length);
      const list = lines.get(layer) ?? [];
      if (list.length === 0) lines.set(layer, list);
      list.push({ points, curved });
    },
    addCopy: () => bound(COPY_COST),
    layers: (isHidden) => [...lines].map(([name, list]) => ({ name, hidden: isHidden(name), lines: list })),
  };

  function bound(more: number): void {
    count += more;
    if (count > MOST_POINTS)
      throw new StopReading(
        "the whole file",
        "with all copies of its blocks laid out, the drawing has more than two million points",
        "save the plan alone, without furniture, hatching and details, and bring that",
      );
  }
}
