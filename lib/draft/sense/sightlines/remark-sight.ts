import type { Exercise } from "../../../exercise/exercise";
import { printLength } from "../../../measure/print-length";
import type { Thing } from "../../draft";
import { listNames } from "../note";
import { sayThing } from "../say-thing";
import { backOpening } from "./back-opening";
import type { Remark, Sight } from "./sight";

/** Less than this of a wall hidden is not worth a word: a twentieth. */
const WORTH_SAYING = 0.05;
/** All but this little of a wall hidden is all of it. */
const ALL = 0.995;

/** What a seat does not see of the set, and what it sees offstage, in sentences. */
export function remarkSight(
  exercise: Exercise,
  sight: Pick<Sight, "seat" | "offstage" | "walls" | "gaps">,
): readonly Remark[] {
  return [remarkHidden(exercise, sight), ...remarkOffstage(exercise, sight), ...remarkGaps(exercise, sight)];
}

function remarkHidden({ plan }: Exercise, { walls }: Pick<Sight, "walls">): Remark {
  const hidden = walls.filter((wall) => wall.hidden >= WORTH_SAYING).sort((a, b) => b.hidden - a.hidden);
  const things = hidden.map(({ id }): Thing => ({ kind: "wall", id }));
  if (walls.length === 0) return { say: "There is no wall to see yet.", remedy: null, things };
  if (hidden.length === 0) return { say: "Nearly all of every wall is in view.", remedy: null, things };
  const shares = hidden.map(({ id, hidden: share }) => {
    const name = sayThing(plan, { kind: "wall", id });
    return share >= ALL ? `all of ${name}` : `${Math.round(share * 100)} % of ${name}`;
  });
  const remedy = "Open the walls toward the house, or play nothing there that everyone must see.";
  return { say: `Not in view: ${listNames(shares)}.`, remedy, things };
}

function remarkOffstage(exercise: Exercise, { seat, offstage }: Pick<Sight, "seat" | "offstage">): readonly Remark[] {
  const { plan, stage, units } = exercise;
  const print = (metres: number) => printLength(metres, units, "near");
  const eye = { x: seat.at[0], distance: -seat.at[1] };
  return offstage.map(({ what, fans, outlines }): Remark => {
    if (what.kind === "past") {
      const reach = Math.max(...outlines.flat().map(([x]) => Math.abs(x))) - stage.opening.width / 2;
      return {
        say: `They see ${print(reach)} into the wings, stage ${what.side}.`,
        remedy: "Bring the masking there farther on stage, or add a leg.",
        things: [],
      };
    }
    const name = sayThing(plan, what.thing);
    if (what.kind === "back")
      return { say: `They see the back of ${name}.`, remedy: "Mask it, or turn the wall.", things: [what.thing] };
    const say = `Through ${name} they see offstage: nothing backs it.`;
    const backing = what.thing.kind === "opening" ? backOpening(plan, stage, what.thing, eye, fans) : null;
    const remedy = backing
      ? `A backing ${print(backing.width)} wide, ${print(backing.behind)} behind it, closes it from this seat.`
      : "Put a backing behind it.";
    return { say, remedy, things: [what.thing], ...(backing ? { edit: backing.edit } : {}) };
  });
}

function remarkGaps({ plan, units }: Exercise, { gaps }: Pick<Sight, "gaps">): readonly Remark[] {
  return gaps.map(({ over, under, amount }): Remark => {
    const [low, high] = [sayThing(plan, over), under ? sayThing(plan, under) : "the header"];
    return {
      say: `Over ${low} and under ${high} they see up to ${printLength(amount, units, "near")} of what is above the set.`,
      remedy: under ? `Hang ${high} lower, or make ${low} taller.` : `Hang a border before it, or make ${low} taller.`,
      things: under ? [over, under] : [over],
    };
  });
}
