import { capital } from "../plan/first-letter";
import { footNames, spikeFloor } from "./floor-points";
import type { Draw, Idea } from "./idea";
import { inWords } from "./in-words";

/** Given points at the early levels: something to measure from. */
const GIVEN = [2, 1, 1, 0, 0] as const;

/** Spike marks on a bare floor, to be placed by offset and depth. */
export function thinkOutFloor(draw: Draw): Idea | null {
  const { dice, level, most } = draw;
  const shown = GIVEN[level - 1] ?? 0;
  const plan = spikeFloor(draw, most + shown);
  const names = dice.shuffle(footNames(plan));
  const given = [...names.slice(0, shown)].sort();
  return {
    plan,
    kind: "plan-to-picture",
    given,
    wanted: [{ names: footNames(plan), most }],
    skills: ["depth-by-eye", "ray-to-cvp"],
    place: "floor",
    brief: (marks) =>
      `${capital(inWords(marks.length, "spike mark"))} on ${draw.frame.stage.rake > 0 ? "a raked" : "a bare"} stage${shown > 0 ? `, and ${inWords(shown, "more", "more")} drawn already` : ""}. Read each one's offset and depth in the plan, then put it where it belongs in the picture.`,
  };
}
