import type { Exercise } from "../../exercise/exercise";
import type { NamedPoint, NamedPoints } from "../../plan/named-point";
import type { Plan } from "../../plan/plan";
import type { Thing } from "../draft";
import type { NotePlace } from "./note";

const KIND_OF_LIST = {
  walls: "wall",
  platforms: "platform",
  stairs: "stair",
  furniture: "furniture",
  columns: "column",
  masking: "masking",
} as const;

/** What a pointer into an exercise's file points at; the stage where it is no thing of the plan. */
export function placeOfPointer(
  pointer: string,
  { plan, task }: Pick<Exercise, "plan" | "task">,
  points: NamedPoints,
): { readonly where: NotePlace; readonly things: readonly Thing[] } {
  const [, part, list, item, , inner] = pointer.split("/");
  if (part === "viewer") return { where: "viewer", things: [] };
  if (part === "task") {
    const names = list === "given" ? task.given : task.marks;
    const point = item === undefined ? undefined : points.get(names[Number(item)] ?? "");
    return { where: "task", things: point ? [thingOfPoint(point)] : [] };
  }
  const thing = part === "plan" ? thingOfPointer(pointer, plan, list, item, inner) : null;
  return thing ? { where: thing, things: [thing] } : { where: "stage", things: [] };
}

function thingOfPointer(pointer: string, plan: Plan, list?: string, item?: string, inner?: string): Thing | null {
  if (list === "corners") {
    const id = pointer.slice("/plan/corners/".length);
    return plan.corners.has(id) ? { kind: "corner", id } : null;
  }
  if (list === undefined || !(list in KIND_OF_LIST)) return null;
  const key = list as keyof typeof KIND_OF_LIST;
  const owner = plan[key][Number(item)];
  if (!owner) return null;
  const opening =
    key === "walls" && inner !== undefined ? plan.walls[Number(item)]?.openings[Number(inner)] : undefined;
  return opening ? { kind: "opening", wall: owner.id, id: opening.id } : { kind: KIND_OF_LIST[key], id: owner.id };
}

/** The thing that a named point belongs to. */
export function thingOfPoint({ name, group, element }: Pick<NamedPoint, "name" | "group" | "element">): Thing {
  if (group !== "opening") return { kind: group, id: element };
  const id = name.slice(element.length + 1).replace(/\.(?:start|end)\.(?:sill|head)$/, "");
  return { kind: "opening", wall: element, id };
}

/** A word of its own for a thing. */
export function thingKey(thing: Thing): string {
  return thing.kind === "opening" ? `opening ${thing.wall} ${thing.id}` : `${thing.kind} ${thing.id}`;
}

/** The same things, each once, in the order first met. */
export function eachOnce(things: readonly Thing[]): readonly Thing[] {
  return [...new Map(things.map((thing) => [thingKey(thing), thing])).values()];
}
