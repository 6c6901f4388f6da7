import type { Fan, Glimpse } from "./fan";
import type { Barrier } from "./plan-barriers";
import { bothOn, crossingOf, type Eye, SAME_CROSSING_M } from "./sight-line";

/** Sight lines that nothing stops; `told` where what they see is told of otherwise. */
export type FreeStretch = Pick<Fan, "crossings" | "far"> & { readonly told: boolean };

/**
 * What is seen behind the set past the ends of its walls: sight lines that nothing stops beside others that a wall stops, from as
 * far upstage as that wall's end. Where no wall ends beside them, as on a stage with cloths alone, they see the stage itself.
 */
export function besideWalls(
  eye: Eye,
  free: readonly FreeStretch[],
  barriers: readonly Barrier[],
): readonly { readonly what: Glimpse; readonly fan: Fan }[] {
  const runs: FreeStretch[][] = [];
  for (const stretch of free) {
    const last = runs.at(-1)?.at(-1);
    if (last && stretch.crossings[0] <= last.crossings[1] + SAME_CROSSING_M) runs.at(-1)?.push(stretch);
    else runs.push([stretch]);
  }
  return runs.flatMap((run) => {
    const limits = [run[0]?.crossings[0], run.at(-1)?.crossings[1]];
    const ends = barriers
      .filter(({ kind }) => kind === "face")
      .flatMap(({ thing, from, to }) => [from, to].map((end) => ({ thing, end, crossing: crossingOf(eye, end) })))
      .filter(({ crossing }) => limits.some((limit) => Math.abs(crossing - (limit ?? 0)) <= SAME_CROSSING_M))
      .sort((one, other) => one.end[1] - other.end[1]);
    const nearest = ends[0];
    if (!nearest) return [];
    const [x, y] = nearest.end;
    const what: Glimpse = { kind: "beside", thing: nearest.thing };
    return run
      .filter(({ told, far }) => !told && Math.min(far[0][1], far[1][1]) > y)
      .map(({ crossings, far }) => {
        const near = bothOn(eye, ...crossings, [
          [x - 1, y],
          [x + 1, y],
        ]);
        return { what, fan: { crossings, near, far } };
      });
  });
}
