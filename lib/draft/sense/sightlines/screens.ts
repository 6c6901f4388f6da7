import type { Exercise } from "../../../exercise/exercise";
import type { Interval } from "../../../geometry/intervals";
import { openingJambs, wallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import { floorHeight } from "../../../stage/stage";
import type { Thing } from "../../draft";
import { clothHeights, standingBodies } from "../bodies";

/** Something upright that hides what is behind it: its line in the plan, its heights, and the holes in it, along it and up. */
export type Screen = {
  readonly thing: Thing;
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  readonly low: number;
  readonly high: number;
  readonly holes: readonly { readonly along: Interval; readonly up: Interval }[];
  /** Sides of one body are one: what lies between the heights of its near and its far side is hidden as well. */
  readonly body: number | null;
  /** Of a wall, the unit direction behind it. */
  readonly offstage: PlanPoint | null;
  readonly kind: "wall" | "cloth" | "border" | "body";
};

/** All that hides something on a stage: walls, masking, and the sides of what stands there. Heights in metres as the stage's. */
export function listScreens({ plan, stage }: Pick<Exercise, "plan" | "stage">): readonly Screen[] {
  const walls = plan.walls.flatMap((wall): readonly Screen[] => {
    const line = wallLine(plan, wall);
    if (!line) return [];
    const holes = wall.openings
      .filter(({ kind }) => kind !== "niche")
      .map((opening) => {
        const ground = floorHeight(stage, openingJambs(line, opening).middle[1]) + wall.base;
        // A sill of nothing follows the floor, wherever that is.
        const sill = opening.sill === 0 ? Number.NEGATIVE_INFINITY : ground + opening.sill;
        return {
          along: [opening.at, opening.at + opening.width] as const,
          up: [sill, ground + opening.head] as const,
        };
      });
    return [
      {
        thing: { kind: "wall", id: wall.id },
        from: line.from,
        to: line.to,
        low: wall.base > 0 ? wall.base : Number.NEGATIVE_INFINITY,
        high: wall.base + wall.height,
        holes,
        body: null,
        offstage: line.offstage,
        kind: "wall",
      },
    ];
  });
  const cloths = plan.masking.map((cloth): Screen => {
    const { low, high } = clothHeights(cloth);
    const [from, to] = cloth.line;
    const border = cloth.kind === "border";
    return {
      thing: { kind: "masking", id: cloth.id },
      from,
      to,
      low: border ? low : Number.NEGATIVE_INFINITY,
      high,
      holes: [],
      body: null,
      offstage: null,
      kind: border ? "border" : "cloth",
    };
  });
  const bodies = standingBodies(plan, stage)
    .filter(({ outline }) => outline.length > 2)
    .flatMap(({ thing, outline, low, high }, body) =>
      outline.map((from, i): Screen => {
        const to = outline[(i + 1) % outline.length] as PlanPoint;
        return { thing, from, to, low, high, holes: [], body, offstage: null, kind: "body" };
      }),
    );
  return [...walls, ...cloths, ...bodies];
}
