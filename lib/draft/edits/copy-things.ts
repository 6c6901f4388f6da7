import type { Plan, Wall } from "../../plan/plan";
import { type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Draft, Thing } from "../draft";
import { type Changed, type EditOf, refuse, withPlan } from "./changed";
import { copyOpenings, type OpeningCopies } from "./copy-openings";
import { cornerAt, pairOf } from "./corner-at";
import { cornerNames, kindNames, numberedNames, takenNames } from "./names";
import {
  mirrorAcross,
  mirrorWall,
  type Placing,
  placeColumn,
  placeFurniture,
  placeMasking,
  placePlatform,
  placeStair,
  shiftBy,
} from "./placing";
import { cornersOf, type Selection, select } from "./selection";

/** Copies of things, moved on: walls with corners of their own and all their openings. */
export function copyThings(draft: Draft, { things, by }: EditOf<"copy">): Changed {
  return copyPlaced(draft, things, shiftBy(by));
}

/** Mirrored copies of things across the line x = `x`. What stands on the line is shared; what is its own mirror image is not copied. */
export function copyMirrored(draft: Draft, { things, x }: EditOf<"mirror">): Changed {
  return copyPlaced(draft, things, mirrorAcross(x));
}

function copyPlaced(draft: Draft, things: readonly Thing[], placing: Placing): Changed {
  const { plan } = draft.exercise;
  const selecting = select(plan, things);
  if (!selecting.ok) return selecting;
  if (things.length === 0) return { ok: true, draft, made: [] };
  const { selection } = selecting;
  const corners = copyCorners(plan, selection, placing);
  const walls = copyWalls(plan, selection, placing, corners.images);
  const openings = copyOpenings({ ...plan, walls: plan.walls }, selection, placing);
  if (!openings.ok) return openings;
  const others = copyOthers(plan, selection, placing);
  const made = [...corners.made, ...walls.map(asWall), ...openings.made, ...others.made];
  if (made.length === 0) return refuse("What the copy would make is there already.");
  return withPlan(draft, joinCopies(plan, corners, walls, openings, others.added), made);
}

function joinCopies(
  plan: Plan,
  corners: CornerCopies,
  walls: readonly Wall[],
  openings: OpeningCopies,
  added: OtherCopies["added"],
): Plan {
  return {
    corners: new Map([...plan.corners, ...corners.added]),
    walls: [...openings.walls, ...walls],
    platforms: [...plan.platforms, ...added.platforms],
    stairs: [...plan.stairs, ...added.stairs],
    furniture: [...plan.furniture, ...added.furniture],
    columns: [...plan.columns, ...added.columns],
    masking: [...plan.masking, ...added.masking],
  };
}

function asWall({ id }: Wall): Thing {
  return { kind: "wall", id };
}

type CornerCopies = {
  /** The corner that stands where each corner of the selection goes, by the name of the one copied. */
  readonly images: ReadonlyMap<string, string>;
  readonly added: readonly (readonly [string, PlanPoint])[];
  readonly made: readonly Thing[];
};

/** New corners where the copies go, named on in the order of the run; a corner that stands there already is taken. */
function copyCorners(plan: Plan, selection: Selection, { place, mirrors }: Placing): CornerCopies {
  const images = new Map<string, string>();
  const added: [string, PlanPoint][] = [];
  const names = cornerNames(takenNames(plan));
  const originals = [...cornersOf(plan, selection)];
  for (const name of mirrors ? originals.toReversed() : originals) {
    const to = place(plan.corners.get(name) as PlanPoint);
    const there = cornerAt(plan.corners, to) ?? cornerAt(added, to);
    const image = there ?? names.next().value;
    if (there === null) added.push([image, to]);
    images.set(name, image);
  }
  return { images, added, made: added.map(([id]) => ({ kind: "corner", id })) };
}

/** Copies of the walls chosen, but for those that stand there already. Mirrored ones run from the far end back, so that a run stays one. */
function copyWalls(
  plan: Plan,
  selection: Selection,
  placing: Placing,
  images: CornerCopies["images"],
): readonly Wall[] {
  const names = numberedNames("W", new Set([...takenNames(plan), ...images.values()]));
  const pairs = new Set(plan.walls.map((wall) => pairOf(wall.from, wall.to)));
  const copies: Wall[] = [];
  const chosen = plan.walls.filter(({ id }) => selection.walls.has(id));
  for (const wall of placing.mirrors ? chosen.toReversed() : chosen) {
    const [from, to] = [images.get(wall.from), images.get(wall.to)];
    const line = wallLine(plan, wall);
    if (from === undefined || to === undefined || !line) continue;
    const pair = pairOf(from, to);
    if (pairs.has(pair)) continue;
    pairs.add(pair);
    const shaped = placing.mirrors ? mirrorWall(wall, line as WallLine, placing.place) : wall;
    const ends = placing.mirrors ? { from: to, to: from } : { from, to };
    copies.push({ ...shaped, ...ends, id: names.next().value });
  }
  return copies;
}

type OtherCopies = {
  readonly added: Pick<Plan, "platforms" | "stairs" | "furniture" | "columns" | "masking">;
  readonly made: readonly Thing[];
};

function copyOthers(plan: Plan, selection: Selection, placing: Placing): OtherCopies {
  const taken = takenNames(plan);
  const numbered = (letter: string) => {
    const names = numberedNames(letter, taken);
    return () => names.next().value;
  };
  const [platform, stair, column] = [numbered("P"), numbered("S"), numbered("K")];
  const byKind = (kind: string) => {
    const id = kindNames(kind, taken).next().value;
    taken.add(id);
    return id;
  };
  const chosen = <Item extends { readonly id: string }>(items: readonly Item[], ids: ReadonlySet<string>) =>
    items.filter(({ id }) => ids.has(id));
  const added = {
    platforms: chosen(plan.platforms, selection.platforms).map((p) => ({
      ...placePlatform(p, placing),
      id: platform(),
    })),
    stairs: chosen(plan.stairs, selection.stairs).map((s) => ({ ...placeStair(s, placing), id: stair() })),
    furniture: chosen(plan.furniture, selection.furniture).map((f) => ({
      ...placeFurniture(f, placing),
      id: byKind(f.kind),
    })),
    columns: chosen(plan.columns, selection.columns).map((k) => ({ ...placeColumn(k, placing), id: column() })),
    masking: chosen(plan.masking, selection.masking).map((m) => ({ ...placeMasking(m, placing), id: byKind(m.kind) })),
  };
  return {
    added,
    made: [
      ...added.platforms.map(({ id }): Thing => ({ kind: "platform", id })),
      ...added.stairs.map(({ id }): Thing => ({ kind: "stair", id })),
      ...added.furniture.map(({ id }): Thing => ({ kind: "furniture", id })),
      ...added.columns.map(({ id }): Thing => ({ kind: "column", id })),
      ...added.masking.map(({ id }): Thing => ({ kind: "masking", id })),
    ],
  };
}
