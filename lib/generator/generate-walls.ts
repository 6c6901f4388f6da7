import { capital } from "../plan/first-letter";
import type { Draw, Idea } from "./idea";
import { inWords } from "./in-words";
import type { RunStyle } from "./run-shapes";
import { runWalls } from "./run-walls";

type Style = Omit<RunStyle, "deep"> & {
  readonly deep: readonly [number, number];
  readonly given: readonly ("first" | "last" | "top")[];
};

/** From square walls that are half given to raking walls of many corners, deeper at each level. */
const STYLES: readonly Style[] = [
  { shapes: ["corner"], deep: [7, 11], splay: [0, 0], skew: 0, returns: false, given: ["first", "top"] },
  { shapes: ["box", "corner"], deep: [9, 13], splay: [0, 2], skew: 0, returns: false, given: ["first"] },
  { shapes: ["box", "cut-corner"], deep: [10, 15], splay: [2.5, 6], skew: 0, returns: true, given: [] },
  { shapes: ["cut-corner", "apex", "jog"], deep: [12, 17], splay: [3, 6], skew: 2.5, returns: true, given: [] },
  { shapes: ["cut-corner-and-jog", "bay"], deep: [13, 20], splay: [3, 6], skew: 3.5, returns: true, given: [] },
];

/** The walls of a room at each level, for the other units as well; a room with work of its own in it is kept simpler. */
export function wallStyle(level: number, deepest: number): RunStyle {
  const style = STYLES[level - 1] as Style;
  const far = Math.min(style.deep[1], deepest);
  return { ...style, deep: [Math.min(style.deep[0], far), far] };
}

/** A run of walls: the feet of its corners, then its tops. */
export function thinkOutWalls(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const run = runWalls(dice, frame, wallStyle(level, deepest));
  if (!run) return null;
  const first = run.corners[0] ?? "";
  const given = (STYLES[level - 1]?.given ?? []).map((what) => (what === "top" ? `${first}.top` : `${first}.foot`));
  const feet = run.corners.map((corner) => `${corner}.foot`);
  const tops = run.corners.map((corner) => `${corner}.top`);
  const walls = run.corners.length - 1;
  const byCorner = feet.flatMap((foot, i) => [foot, tops[i] ?? foot]);
  const all = feet.length + tops.length - given.length <= most;
  return {
    plan: run.plan,
    kind: "plan-to-picture",
    given,
    wanted: [{ names: all && level > 1 && dice.chance(40) ? byCorner : [...feet, ...tops], most }],
    skills: ["depth-by-eye", level === 1 ? "ray-to-cvp" : "raking-wall", "height"],
    place: "room",
    brief: () =>
      `${capital(inWords(walls, "wall"))} from stage right round to stage left${given.length > 0 ? `, begun at ${first}` : ""}. Place the foot of each corner first; the tops stand straight over them.`,
  };
}
