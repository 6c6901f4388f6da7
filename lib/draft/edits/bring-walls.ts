import type { Draft, Thing } from "../draft";
import type { BroughtRun } from "../edit";
import { addOpening } from "./add-things";
import { addWalls } from "./add-walls";
import { changeWall } from "./change-things";
import { type Changed, type EditOf, refuse } from "./changed";

/** A draft with the walls of a drawing added, what was made, and what the plan would not have, in its own sentences. */
export type BroughtWalls = {
  readonly draft: Draft;
  readonly made: readonly Thing[];
  readonly refused: readonly string[];
};

/** The walls and openings found of a drawing, as one change; refused only when nothing of it can be added. */
export function bringWalls(draft: Draft, edit: EditOf<"bring-walls">): Changed {
  const { made, refused, ...brought } = addBroughtWalls(draft, edit);
  return made.length > 0
    ? { ok: true, draft: brought.draft, made }
    : refuse(refused[0] ?? "There is no wall in what was brought.");
}

/** Adds what it can. A run that cannot be added whole is added wall by wall. The marks have not followed yet. */
export function addBroughtWalls(start: Draft, { runs, height }: EditOf<"bring-walls">): BroughtWalls {
  let draft = start;
  const made: Thing[] = [];
  const refused: string[] = [];
  for (const { corners, closed, walls } of runs) {
    const whole = build({ corners, closed, walls }, []);
    for (const [i, wall] of walls.entries()) {
      const ends = [corners[i], corners[(i + 1) % corners.length]].flatMap((end) => (end ? [end] : []));
      const id = whole ? whole[i] : build({ corners: ends, closed: false, walls: [wall] }, refused)?.[0];
      if (id !== undefined) furnish(id, wall);
    }
  }
  return { draft, made, refused };

  function take(changed: Changed, objections: string[]): readonly Thing[] | null {
    if (changed.ok) draft = changed.draft;
    else objections.push(changed.say);
    return changed.ok ? changed.made : null;
  }

  /** The ids of the new walls, or null when the run cannot be added. */
  function build({ corners, closed, walls }: BroughtRun, objections: string[]): string[] | null {
    const thickness = walls[0]?.thickness ?? 0;
    const things = take(addWalls(draft, { edit: "add-walls", corners, closed, height, thickness }), objections);
    made.push(...(things ?? []));
    return things ? things.flatMap((thing) => (thing.kind === "wall" ? [thing.id] : [])) : null;
  }

  function furnish(id: string, { thickness, onstage, openings }: BroughtRun["walls"][number]): void {
    const added = draft.exercise.plan.walls.find((wall) => wall.id === id);
    if (added && (added.thickness !== thickness || added.onstage !== onstage))
      take(changeWall(draft, { edit: "change-wall", id, change: { thickness, onstage } }), refused);
    for (const opening of openings)
      made.push(...(take(addOpening(draft, { edit: "add-opening", wall: id, opening }), refused) ?? []));
  }
}
