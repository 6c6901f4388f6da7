import { BLANK_PLAN } from "../plan/blank-plan";
import type { Plan } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import type { Draw } from "./idea";

const LETTERS = "ABCDEFGHJKLMN";
/** Spike marks stand at least so far apart, and so far in from the sides, feet. */
const APART_FT = 4;
const FROM_SIDE_FT = 2;
/** The nearest to the plaster line when nothing else is said, feet. */
const NEAREST_FT = 2;
const TRIES = 60;

type Spot = readonly [x: number, y: number];

/** Spike marks on a bare floor, so many upstage of the plaster line and so many before it; A is the farthest downstage. */
export function spikeFloor({ dice, frame, deepest }: Draw, upstage: number, before = 0, nearest = NEAREST_FT): Plan {
  const { ruler, stage } = frame;
  const half = Math.floor(ruler.feet(stage.opening.width) / 2) - FROM_SIDE_FT;
  const apron = Math.floor(ruler.feet(stage.apron));
  const spots: Spot[] = [];
  const spread = (count: number, depth: () => number, inset: number) => {
    const wanted = spots.length + count;
    for (let i = 0; i < TRIES && spots.length < wanted; i += 1) {
      const spot: Spot = [dice.half(-half + inset, half - inset), depth()];
      if (spots.every(([x, y]) => Math.max(Math.abs(x - spot[0]), Math.abs(y - spot[1])) >= APART_FT)) spots.push(spot);
    }
  };
  spread(before, () => -dice.half(1.5, apron - 0.5), 3);
  spread(upstage, () => dice.half(nearest, deepest), 0);
  const corners = [...spots]
    .sort((a, b) => a[1] - b[1])
    .map(([x, y], i): [string, PlanPoint] => [LETTERS[i] as string, [ruler.place(x), ruler.place(y)]]);
  return { ...BLANK_PLAN, corners: new Map(corners) };
}

/** Names of the feet of a plan's corners, in the plan's order. */
export function footNames({ corners }: Pick<Plan, "corners">): readonly string[] {
  return [...corners.keys()].map((corner) => `${corner}.foot`);
}
