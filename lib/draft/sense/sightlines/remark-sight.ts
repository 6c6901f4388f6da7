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
  return [
    remarkHidden(exercise, sight),
    ...remarkOffstage(exercise, sight),
    ...remarkBacks(exercise, sight),
    ...remarkGaps(exercise, sight),
  ];
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
  return offstage.flatMap(({ what, fans, outlines }): readonly Remark[] => {
    if (what.kind === "back") return [];
    if (what.kind === "past") {
      const reach = Math.max(...outlines.flat().map(([x]) => Math.abs(x))) - stage.opening.width / 2;
      const wings = {
        say: `They see ${print(reach)} into the wings, stage ${what.side}.`,
        remedy: "Bring the masking there farther on stage, or add a leg.",
        things: [],
      };
      return [wings];
    }
    const name = sayThing(plan, what.thing);
    if (what.kind === "beside") {
      const say = `Past the end of ${name} they see behind the set.`;
      return [{ say, remedy: "Carry that wall farther, or stand masking behind it.", things: [what.thing] }];
    }
    const say = `Through ${name} they see offstage: nothing backs it.`;
    const backing = what.thing.kind === "opening" ? backOpening(plan, stage, what.thing, eye, fans) : null;
    const remedy = backing
      ? `A backing ${print(backing.width)} wide, ${print(backing.behind)} behind it, closes it from this seat.`
      : "Put a backing behind it.";
    return [{ say, remedy, things: [what.thing], ...(backing ? { edit: backing.edit } : {}) }];
  });
}

/** The walls whose backs are seen, together. */
function remarkBacks({ plan }: Exercise, { offstage }: Pick<Sight, "offstage">): readonly Remark[] {
  const things = offstage.flatMap(({ what }) => (what.kind === "back" ? [what.thing] : []));
  if (things.length === 0) return [];
  const [back, it, wall] = things.length > 1 ? ["backs", "them", "walls"] : ["back", "it", "wall"];
  const say = `They see the ${back} of ${listNames(things.map((thing) => sayThing(plan, thing)))}.`;
  return [{ say, remedy: `Mask ${it}, or turn the ${wall}.`, things }];
}

/** What is seen over the set: one sentence for the header, and one for each border it is seen under. */
function remarkGaps({ plan, units }: Exercise, { gaps }: Pick<Sight, "gaps">): readonly Remark[] {
  const unders = new Map(gaps.map(({ under }) => [JSON.stringify(under), under]));
  return [...unders].map(([key, under]): Remark => {
    const here = gaps.filter((gap) => JSON.stringify(gap.under) === key);
    const overs = here.map(({ over }) => over);
    const most = Math.max(...here.map(({ amount }) => amount));
    const low = listNames(overs.map((over) => sayThing(plan, over)));
    const high = under ? sayThing(plan, under) : "the header";
    const taller = overs.length > 1 ? "what is under it" : low;
    return {
      say: `Over ${low} and under ${high} they see up to ${printLength(most, units, "near")} of what is above the set.`,
      remedy: under
        ? `Hang ${high} lower, or make ${taller} taller.`
        : `Hang a border there, or make ${taller} taller.`,
      things: under ? [...overs, under] : overs,
    };
  });
}
