import { SAME_POINT_M } from "../../geometry/segments-cross";
import type { Wall } from "../../plan/plan";
import { placeOnWall, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import { directionOf } from "../direction-of";
import type { Draft } from "../draft";
import { type Changed, type EditOf, notThere, refuse, withPlan } from "./changed";
import { cornerNames, numberedNames, refuseName, takenNames } from "./names";
import { renameElement, renameOpening } from "./rename";

/** Puts a corner elsewhere; the ends of its walls go along. */
export function moveCorner(draft: Draft, { id, to }: EditOf<"move-corner">): Changed {
  const { plan } = draft.exercise;
  const at = plan.corners.get(id);
  if (!at) return notThere("corner", id);
  if (at[0] === to[0] && at[1] === to[1]) return { ok: true, draft, made: [] };
  return withPlan(draft, { ...plan, corners: new Map(plan.corners).set(id, to) });
}

/** Gives a corner another name, in its place; its walls and its points follow. */
export function renameCorner(draft: Draft, { id, to }: EditOf<"rename-corner">): Changed {
  const { plan } = draft.exercise;
  if (!plan.corners.has(id)) return notThere("corner", id);
  if (id === to) return { ok: true, draft, made: [] };
  const say = refuseName(to, takenNames(plan));
  if (say) return refuse(say);
  const name = (corner: string) => (corner === id ? to : corner);
  const corners = [...plan.corners].map(([corner, at]) => [name(corner), at] as const);
  const walls = plan.walls.map((wall) =>
    wall.from === id || wall.to === id ? { ...wall, from: name(wall.from), to: name(wall.to) } : wall,
  );
  return withPlan(draft, { ...plan, corners: inOrderOfFile(corners), walls }, [], renameElement(id, to));
}

/** Corners in the order in which they will come back from a file: JSON puts names that are whole numbers first. */
function inOrderOfFile(corners: readonly (readonly [string, PlanPoint])[]): ReadonlyMap<string, PlanPoint> {
  return new Map(Object.entries(Object.fromEntries(corners)));
}

/** Moves the far corner of a wall so that the wall is so long, along its own direction or at an angle. */
export function setWallLength(draft: Draft, { id, length, angle }: EditOf<"set-wall-length">): Changed {
  const { plan } = draft.exercise;
  const wall = plan.walls.find((other) => other.id === id);
  if (!wall) return notThere("wall", id);
  if (!(length > SAME_POINT_M)) return refuse("A wall needs a length above 0.");
  const from = plan.corners.get(wall.from);
  if (!from || !plan.corners.has(wall.to)) return refuse(`Wall "${id}" has no two corners to stand between.`);
  const along = angle === undefined ? wallLine(plan, wall)?.along : directionOf(angle);
  if (!along || wall.from === wall.to) return refuse(`Wall "${id}" has no direction yet. Give an angle as well.`);
  const to: PlanPoint = [from[0] + along[0] * length, from[1] + along[1] * length];
  return withPlan(draft, { ...plan, corners: new Map(plan.corners).set(wall.to, to) });
}

/** Makes two walls of one, with a new corner between them; openings beyond it go with the second. */
export function splitWall(draft: Draft, { id, at }: EditOf<"split-wall">): Changed {
  const { plan } = draft.exercise;
  const wall = plan.walls.find((other) => other.id === id);
  if (!wall) return notThere("wall", id);
  const line = wallLine(plan, wall);
  if (!line) return refuse(`Wall "${id}" has no length to split.`);
  if (!(at > SAME_POINT_M && at < line.length - SAME_POINT_M)) return refuse("Split a wall between its ends.");
  const cut = wall.openings.find((o) => o.at < at - SAME_POINT_M && o.at + o.width > at + SAME_POINT_M);
  if (cut) return refuse(`"${cut.id}" stands there. Slide it aside, or split the wall elsewhere.`);
  const taken = takenNames(plan);
  const corner = cornerNames(taken).next().value;
  const second = numberedNames("W", taken).next().value;
  const beyond = (opening: Wall["openings"][number]) => opening.at + opening.width / 2 > at;
  const halves: readonly Wall[] = [
    { ...wall, to: corner, openings: wall.openings.filter((opening) => !beyond(opening)) },
    {
      ...wall,
      id: second,
      from: corner,
      openings: wall.openings.filter(beyond).map((opening) => ({ ...opening, at: Math.max(0, opening.at - at) })),
    },
  ];
  const movings = wall.openings
    .filter(beyond)
    .map((o) => renameOpening({ wall: id, id: o.id }, { wall: second, id: o.id }));
  const corners = new Map([...plan.corners, [corner, placeOnWall(line, at)]]);
  return withPlan(
    draft,
    { ...plan, corners, walls: plan.walls.flatMap((other) => (other === wall ? halves : [other])) },
    [
      { kind: "corner", id: corner },
      { kind: "wall", id: second },
    ],
    (point) => movings.reduce((name, moving) => moving(name), topOfSecondHalf(point, wall, second)),
  );
}

/** The far corner's top by the wall's name is a top of the second half now. */
function topOfSecondHalf(point: string, wall: Wall, second: string): string {
  return point === `${wall.to}.top.${wall.id}` ? `${wall.to}.top.${second}` : point;
}
