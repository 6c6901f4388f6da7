import { BLANK_PLAN } from "../plan/blank-plan";
import type { FurnitureKind } from "../plan/plan";
import { addFurniture, boxNames } from "./add-furniture";
import { wallStyle } from "./generate-walls";
import type { Draw, Idea } from "./idea";
import { inWords, listed } from "./in-words";
import { runWalls } from "./run-walls";

const KINDS: readonly FurnitureKind[] = ["table", "sofa", "desk", "chest", "box", "counter", "bed", "piano"];
/** How many pieces, how far they are turned, degrees, and from which level on there are walls to stand against. */
const COUNTS = [1, 2, 2, 3, 4] as const;
const TURNS_DEG = [0, 0, 30, 40, 40] as const;
const WALLS_FROM = 3;
/** Furniture is played on: it stands in the downstage half, feet at most. */
const DEEPEST_FT = [9, 11, 12, 14, 16] as const;

/** Furniture as boxes: the feet one sees, then the tops. */
export function thinkOutFurniture(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const count = COUNTS[level - 1] ?? 1;
  const walled = level >= WALLS_FROM;
  const run = walled ? runWalls(dice, frame, { ...wallStyle(level - 1, deepest), returns: false }) : null;
  if (walled && !run) return null;
  const plan = addFurniture(dice, frame, run?.plan ?? BLANK_PLAN, {
    kinds: KINDS,
    count,
    deepest: Math.min(DEEPEST_FT[level - 1] ?? 9, deepest),
    turnDeg: TURNS_DEG[level - 1] ?? 0,
    atWalls: walled,
  });
  if (plan.furniture.length < count) return null;
  const near = [...plan.furniture].sort((a, b) => a.at[1] - b.at[1]);
  const first = near[0]?.id ?? "";
  const given = [
    ...(level === 1 ? [`${first}.1.foot`] : []),
    ...(run?.corners ?? []).flatMap((corner) => [`${corner}.foot`, `${corner}.top`]),
  ];
  const each = Math.ceil(most / count);
  return {
    plan,
    kind: "plan-to-picture",
    given,
    wanted: near.map(({ id }, i) => ({ names: boxNames(id), most: Math.min(each, Math.max(most - i * each, 0)) })),
    skills: ["furniture", "depth-by-eye", "height"],
    place: walled ? "room" : "floor",
    brief: () =>
      `${listed(near.map(({ kind }) => `the ${kind}`)).replace(/^t/, "T")}, ${count > 1 ? "each as" : "seen as"} the box it would be packed in. Place the feet that the eye sees, then the corners of the top${level === 1 ? "; one foot is drawn already" : ""}${walled ? `. The ${inWords((run?.corners.length ?? 1) - 1, "wall")} are drawn` : ""}.`,
  };
}
