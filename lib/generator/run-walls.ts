import { project } from "../perspective/project";
import { BLANK_PLAN } from "../plan/blank-plan";
import type { Plan, Wall } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import type { Frame } from "./choose-frame";
import type { Dice } from "./dice";
import { drawRun, type RunStyle } from "./run-shapes";

/** A wall shorter than this is no wall, feet. */
const SHORTEST_FT = 2;
/** Between neighbouring corners the eye sees at least this much of the wall, feet in the picture. */
const SEEN_FT = 0.75;
/** Walls keep this far below the top of the opening, feet. */
const UNDER_HEADER_FT = 2;
/** Returns run this far past the edge of the opening, feet. */
const RETURN_FT = 4;
const LETTERS = "ABCDEFGHJKLMN";
/** The offstage ends of the returns: no letter of the run. */
const RETURN_ENDS = ["R", "Z"] as const;

const WALL_HEIGHTS_FT = [10, 12, 14] as const;

export type Run = { readonly plan: Plan; readonly corners: readonly string[] };

/**
 * A run of walls from stage right round to stage left, every one of them seen from its onstage side; null where the draw
 * gives none. `corners` are those of the run itself, without the ends of its returns.
 */
export function runWalls(dice: Dice, frame: Frame, style: RunStyle, thicknessFt = 0): Run | null {
  const { ruler, stage } = frame;
  const spots = drawRun(dice, ruler.feet(stage.opening.width) / 2, style).map(
    ([x, y]): PlanPoint => [ruler.place(x), ruler.place(y)],
  );
  if (!isSeen(spots, frame) || !isLong(spots, frame)) return null;
  const high = ruler.feet(stage.opening.height) - UNDER_HEADER_FT;
  const height = ruler.size(dice.pick(WALL_HEIGHTS_FT.filter((feet) => feet <= high)));
  const letters = spots.map((_, i) => LETTERS[i] as string);
  const named = spots.map((at, i): [string, PlanPoint] => [letters[i] as string, at]);
  const corners = style.returns ? withReturns(named, frame) : named;
  const walls = corners.slice(1).map(
    ([to], i): Wall => ({
      id: `W${i + 1}`,
      from: corners[i]?.[0] ?? "",
      to,
      height,
      thickness: ruler.size(thicknessFt),
      base: 0,
      onstage: "right",
      openings: [],
    }),
  );
  return { plan: { ...BLANK_PLAN, corners: new Map(corners), walls }, corners: letters };
}

/** Each corner stands to the viewer's right of the one before: then every wall faces the eye and none hides another. */
function isSeen(spots: readonly PlanPoint[], { viewer, stage, ruler }: Frame): boolean {
  const across = spots.map(([x, y]) => {
    const seen = project(viewer, [x, y, floorHeight(stage, y)]);
    return seen.seen ? seen.at[0] : Number.NaN;
  });
  return across.every((X, i) => i === 0 || X - (across[i - 1] ?? X) >= SEEN_FT * ruler.foot);
}

function isLong(spots: readonly PlanPoint[], { ruler }: Frame): boolean {
  return spots.every(([x, y], i) => {
    const [u, v] = spots[i - 1] ?? [Number.POSITIVE_INFINITY, 0];
    return Math.max(Math.abs(x - u), Math.abs(y - v)) >= SHORTEST_FT * ruler.foot;
  });
}

/** Walls parallel to the plaster line from the run's ends out of sight, where those ends stand near it. */
function withReturns(named: readonly [string, PlanPoint][], { ruler, stage }: Frame): readonly [string, PlanPoint][] {
  const out = stage.opening.width / 2 + ruler.place(RETURN_FT);
  const [first, last] = [named[0]?.[1] ?? [0, 0], named.at(-1)?.[1] ?? [0, 0]];
  return [[RETURN_ENDS[0], [-out, first[1]]], ...named, [RETURN_ENDS[1], [out, last[1]]]];
}
