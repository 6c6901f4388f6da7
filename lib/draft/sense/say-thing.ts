import type { Plan } from "../../plan/plan";
import type { Thing } from "../draft";

/** What a thing is called in the middle of a sentence: "wall W1", "the door in W4", "table desk". */
export function sayThing(plan: Plan, thing: Thing): string {
  switch (thing.kind) {
    case "opening": {
      const wall = plan.walls.find(({ id }) => id === thing.wall);
      const kind = wall?.openings.find(({ id }) => id === thing.id)?.kind;
      return `the ${kind === undefined || kind === thing.id ? thing.id : `${kind} ${thing.id}`} in ${thing.wall}`;
    }
    case "furniture":
    case "masking": {
      const all: readonly { readonly id: string; readonly kind: string }[] = plan[thing.kind];
      const kind = all.find(({ id }) => id === thing.id)?.kind;
      return kind === undefined || kind === thing.id ? `the ${thing.id}` : `${kind} ${thing.id}`;
    }
    case "corner":
    case "wall":
    case "platform":
    case "stair":
    case "column":
      return `${thing.kind} ${thing.id}`;
  }
}
