import type { Board, Sheet } from "./board";
import type { Locus } from "./locus";
import { isBetter, type Quality, type RankedQuality, type Steps, startSteps } from "./steps";

/** Two lines that cross at the point wanted, and what to call the way of finding it. */
export type Pair = { readonly loci: readonly [Locus, Locus]; readonly method: string };

/** Draws both lines and their crossing; its number, or null where they do not cross. `where` ends "Lines 2 and 4 cross ...". */
export function drawPair(steps: Steps, [one, other]: readonly [Locus, Locus], where: string): number | null {
  const first = one.draw(steps);
  const second = first === null ? null : other.draw(steps);
  return first === null || second === null || first === second ? null : steps.meet(first, second, where);
}

type Sketched = { readonly locus: Locus; readonly quality: Quality };

/** Each locus drawn by itself; what it needs alone is the least it needs in a pair. */
function sketch(board: Sheet, loci: readonly Locus[]): readonly Sketched[] {
  return loci.flatMap((locus) => {
    const steps = startSteps(board);
    return locus.draw(steps) === null ? [] : [{ locus, quality: steps.quality() }];
  });
}

/** Of all pairs of lines through a point the one that draws best; null when no two of them cross. */
export function choosePair(board: Sheet, loci: readonly Locus[]): Pair | null {
  let best: (Pair & { readonly quality: RankedQuality }) | null = null;
  const sketched = sketch(board, loci);
  for (const [i, one] of sketched.entries())
    for (const other of sketched.slice(i + 1)) {
      const chosen = {
        rank: one.locus.rank + other.locus.rank,
        favoured: favours(board, one.locus, other.locus),
      };
      if (best && !isBetter({ ...leastOf(one.quality, other.quality), ...chosen }, best.quality)) continue;
      const steps = startSteps(board);
      if (drawPair(steps, [one.locus, other.locus], "") === null) continue;
      const quality = { ...steps.quality(), ...chosen };
      if (!best || isBetter(quality, best.quality))
        best = { loci: [one.locus, other.locus], method: methodOf(one.locus, other.locus), quality };
    }
  return best;
}

/** The least a pair can need: steps may be shared, so the longer of the two and the crossing. */
function leastOf(a: Quality, b: Quality): Quality {
  return {
    offPaper: Math.max(a.offPaper, b.offPaper),
    poor: Math.max(a.poor, b.poor),
    steps: Math.max(a.steps, b.steps) + 1,
  };
}

function favours({ favour }: Board, one: Locus, other: Locus): boolean {
  return favour !== undefined && methodOf(one, other).split(", ").includes(favour);
}

/** A pair's methods, each once. The ray to the CVP is part of nearly every construction; the other line is what names the method. */
function methodOf(one: Locus, other: Locus): string {
  if (one.method === "floor diagonal" && other.method === "floor diagonal") return "crossing diagonals";
  const methods = [...new Set([one, other].flatMap(({ method }) => method.split(", ")))];
  const telling = methods.filter((method) => method !== "ray to the CVP" && method !== "upright over its foot");
  return (telling.length > 0 ? telling : methods).join(", ");
}
