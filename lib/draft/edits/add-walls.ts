import type { Plan, Wall } from "../../plan/plan";
import type { PlanPoint } from "../../stage/frame";
import type { Draft, Thing } from "../draft";
import { type Changed, type EditOf, notThere, refuse, withPlan } from "./changed";
import { cornerAt, pairOf } from "./corner-at";
import { cornerNames, numberedNames, takenNames } from "./names";

/**
 * A run of walls through corners that are there, by name, or new ones, by place. A place where a corner stands already means
 * that corner, so a run may come back to where it began. Onstage is to the right of the run.
 */
export function addWalls(draft: Draft, { corners, closed, height, thickness }: EditOf<"add-walls">): Changed {
  const { plan } = draft.exercise;
  const missing = corners.find((corner) => typeof corner === "string" && !plan.corners.has(corner));
  if (typeof missing === "string") return notThere("corner", missing);
  if (!(height > 0)) return refuse("A wall needs a height above 0.");
  if (!(thickness >= 0)) return refuse("A wall's thickness is 0 or more.");
  const run = nameRun(plan, corners);
  const names = closed && run.names.at(-1) !== run.names[0] ? [...run.names, ...run.names.slice(0, 1)] : run.names;
  if (names.length < 2) return refuse("A wall needs two corners.");
  const wallNames = numberedNames("W", new Set([...takenNames(plan), ...names]));
  const walls: Wall[] = [];
  const pairs = new Set(plan.walls.map(({ from, to }) => pairOf(from, to)));
  for (const [i, to] of names.slice(1).entries()) {
    const from = names[i] as string;
    const pair = pairOf(from, to);
    if (from === to) return refuse(`Two corners of the run, at ${from}, are one place.`);
    if (pairs.has(pair)) return refuse(`There is a wall between ${from} and ${to} already.`);
    pairs.add(pair);
    walls.push({ id: wallNames.next().value, from, to, height, thickness, base: 0, onstage: "right", openings: [] });
  }
  const made: Thing[] = [
    ...run.added.map(([id]): Thing => ({ kind: "corner", id })),
    ...walls.map(({ id }): Thing => ({ kind: "wall", id })),
  ];
  return withPlan(
    draft,
    { ...plan, corners: new Map([...plan.corners, ...run.added]), walls: [...plan.walls, ...walls] },
    made,
  );
}

type Run = { readonly names: readonly string[]; readonly added: readonly (readonly [string, PlanPoint])[] };

/** The names of a run's corners, and those of them that are new. */
function nameRun(plan: Plan, corners: readonly (PlanPoint | string)[]): Run {
  const added: [string, PlanPoint][] = [];
  const fresh = cornerNames(takenNames(plan));
  const names = corners.map((corner) => {
    if (typeof corner === "string") return corner;
    const there = cornerAt(plan.corners, corner) ?? cornerAt(added, corner);
    if (there !== null) return there;
    const name = fresh.next().value;
    added.push([name, corner]);
    return name;
  });
  return { names, added };
}
