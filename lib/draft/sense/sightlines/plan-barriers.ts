import { without } from "../../../geometry/intervals";
import type { Plan } from "../../../plan/plan";
import { placeOnWall, wallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import type { Thing } from "../../draft";

/**
 * What a sight line meets in the plan. A `face` is a piece of wall, a `reveal` its thickness beside an opening, a `cloth` a leg or
 * backing; a `way` is an opening, which it passes. `offstage` of a wall is the unit direction behind it.
 */
export type Barrier = {
  readonly kind: "face" | "reveal" | "cloth" | "way";
  readonly thing: Thing;
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  readonly offstage: PlanPoint | null;
};

/** Openings closer than this to one another leave no wall between them, metres. */
const SLIVER_M = 1e-6;

/** Walls with their openings, and what stands as masking. Doors stand open; borders hang over the plan. */
export function planBarriers(plan: Plan): readonly Barrier[] {
  return [...plan.walls.flatMap((wall) => wallBarriers(plan, wall)), ...plan.masking.flatMap(clothBarriers)];
}

function wallBarriers(plan: Plan, wall: Plan["walls"][number]): readonly Barrier[] {
  const line = wallLine(plan, wall);
  if (!line) return [];
  const { offstage, length } = line;
  const place = (u: number, v = 0): PlanPoint => {
    const [x, y] = placeOnWall(line, u);
    return [x + offstage[0] * v, y + offstage[1] * v];
  };
  const open = wall.openings
    .filter(({ kind }) => kind !== "niche")
    .map((opening) => ({ opening, start: Math.max(0, opening.at), end: Math.min(length, opening.at + opening.width) }))
    .filter(({ start, end }) => end - start > SLIVER_M);
  const self: Thing = { kind: "wall", id: wall.id };
  const solid = without(
    [0, length],
    open.map(({ start, end }) => [start, end] as const),
  );
  return [
    ...solid
      .filter(([start, end]) => end - start > SLIVER_M)
      .map(([start, end]): Barrier => ({ kind: "face", thing: self, from: place(start), to: place(end), offstage })),
    ...open.flatMap(({ opening, start, end }): readonly Barrier[] => [
      {
        kind: "way",
        thing: { kind: "opening", wall: wall.id, id: opening.id },
        from: place(start),
        to: place(end),
        offstage,
      },
      ...(wall.thickness > 0
        ? [start, end].map(
            (u): Barrier => ({
              kind: "reveal",
              thing: self,
              from: place(u),
              to: place(u, wall.thickness),
              offstage: null,
            }),
          )
        : []),
    ]),
  ];
}

function clothBarriers({ id, kind, line }: Plan["masking"][number]): readonly Barrier[] {
  if (kind === "border") return [];
  return [{ kind: "cloth", thing: { kind: "masking", id }, from: line[0], to: line[1], offstage: null }];
}
