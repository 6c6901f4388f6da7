import type { Plan } from "../../plan/plan";
import type { Draft, Thing } from "../draft";
import { type Changed, type EditOf, notThere, refuse, withPlan } from "./changed";
import { cornerAt } from "./corner-at";
import { cornerNames, kindNames, numberedNames, takenNames } from "./names";

/** A plain point on the floor: a corner no wall uses yet. */
export function addPoint(draft: Draft, { at }: EditOf<"add-point">): Changed {
  const { plan } = draft.exercise;
  const there = cornerAt(plan.corners, at);
  if (there !== null) return refuse(`Corner ${there} stands there already.`);
  const id = cornerNames(takenNames(plan)).next().value;
  return withPlan(draft, { ...plan, corners: new Map([...plan.corners, [id, at]]) }, [{ kind: "corner", id }]);
}

/** An opening in a wall, named by its kind: door, door2. */
export function addOpening(draft: Draft, { wall: wallId, opening }: EditOf<"add-opening">): Changed {
  const { plan } = draft.exercise;
  const wall = plan.walls.find(({ id }) => id === wallId);
  if (!wall) return notThere("wall", wallId);
  const id = kindNames(opening.kind, new Set(wall.openings.map((other) => other.id))).next().value;
  const widened = { ...wall, openings: [...wall.openings, { ...opening, id }] };
  const walls = plan.walls.map((other) => (other === wall ? widened : other));
  return withPlan(draft, { ...plan, walls }, [{ kind: "opening", wall: wallId, id }]);
}

type AddThing = EditOf<"add-platform" | "add-stair" | "add-furniture" | "add-column" | "add-masking">;

/** A platform P1, stair S1, column K1; furniture and masking are named by their kind. */
export function addThing(draft: Draft, edit: AddThing): Changed {
  const { plan } = draft.exercise;
  const taken = takenNames(plan);
  const numbered = (letter: string) => numberedNames(letter, taken).next().value;
  const add = (kind: Thing["kind"] & Exclude<Thing["kind"], "opening">, id: string, added: Partial<Plan>) =>
    withPlan(draft, { ...plan, ...added }, [{ kind, id }]);
  switch (edit.edit) {
    case "add-platform": {
      const id = numbered("P");
      return add("platform", id, { platforms: [...plan.platforms, { ...edit.platform, id }] });
    }
    case "add-stair": {
      const id = numbered("S");
      return add("stair", id, { stairs: [...plan.stairs, { ...edit.stair, id }] });
    }
    case "add-column": {
      const id = numbered("K");
      return add("column", id, { columns: [...plan.columns, { ...edit.column, id }] });
    }
    case "add-furniture": {
      const id = kindNames(edit.furniture.kind, taken).next().value;
      return add("furniture", id, { furniture: [...plan.furniture, { ...edit.furniture, id }] });
    }
    case "add-masking": {
      const id = kindNames(edit.masking.kind, taken).next().value;
      return add("masking", id, { masking: [...plan.masking, { ...edit.masking, id }] });
    }
  }
}
