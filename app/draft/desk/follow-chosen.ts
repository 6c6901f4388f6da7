import type { Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import type { Plan } from "@/lib/plan/plan";
import { isSameThing } from "../hand/hand";
import { stillThere } from "./still-there";

/** What is still chosen of some things after an edit: by their new names, and without those that are gone. */
export function followChosen(chosen: readonly Thing[], change: Edit, after: Plan): readonly Thing[] {
  return chosen.map((thing) => renamed(thing, change)).filter((thing) => stillThere(thing, after));
}

/** What is chosen goes by its new name after an edit that gives it one. */
function renamed(thing: Thing, change: Edit): Thing {
  if (change.edit === "rename-corner")
    return thing.kind === "corner" && thing.id === change.id ? { ...thing, id: change.to } : thing;
  if (!("change" in change) || change.change.id === undefined) return thing;
  const { id } = change.change;
  if (change.edit === "change-wall" && thing.kind === "opening" && thing.wall === change.id)
    return { ...thing, wall: id };
  const changed: Thing =
    change.edit === "change-opening"
      ? { kind: "opening", wall: change.wall, id: change.id }
      : { kind: KIND_OF_CHANGE[change.edit], id: change.id };
  return isSameThing(thing, changed) ? { ...thing, id } : thing;
}

const KIND_OF_CHANGE = {
  "change-wall": "wall",
  "change-platform": "platform",
  "change-stair": "stair",
  "change-furniture": "furniture",
  "change-column": "column",
  "change-masking": "masking",
} as const;

/** Chosen or not, one more or one less. */
export function withThing(chosen: readonly Thing[], thing: Thing): readonly Thing[] {
  const without = chosen.filter((each) => !isSameThing(each, thing));
  return without.length < chosen.length ? without : [...chosen, thing];
}
