import type { PlanPoint } from "../../../stage/frame";
import { findNiches } from "./find-niches";
import type { FoundOpening, WallBand } from "./found-opening";
import type { OpeningShape } from "./opening-shapes";
import { areParallel, placeAlong } from "./wall-piece";

/** A leaf hangs so near the wall's body, and a sill or header is drawn so near it, metres. */
const LEAF_BAND_M = 0.08;
const LINE_BAND_M = 0.16;
/** How nearly a leaf fills its opening, and ends drawn for one place agree, metres or shares. */
const LEAF_SHARE = 0.1;
const SAME_END_M = 0.1;
/** Openings are so wide, metres. */
const NARROWEST_M = 0.25;
const WIDEST_M = 6;
/** A window is drawn by its sill's two edges and the glass between them; fewer lines are a header. */
const WINDOW_LINES = 3;

type Leaf = {
  readonly pivot: number;
  readonly shut: number;
  readonly left: boolean;
  readonly shape: number;
};

/** The openings that shapes draw on a wall, in order along it; of two that overlap the first. */
export function findOpenings(wall: WallBand, shapes: readonly OpeningShape[]): readonly FoundOpening[] {
  const niches = findNiches(wall, shapes);
  const doors = hangDoors(shapes.flatMap((shape, i) => leafOn(wall, shape, i)));
  const lines = shapes.flatMap((shape, i) => lineOn(wall, shape, i));
  const openings = [...doors, ...niches];
  const found: FoundOpening[] = openings.map((door) => ({
    ...door,
    shapes: [...door.shapes, ...lines.filter((line) => overlap(line, door) > 0).map(({ shape }) => shape)],
  }));
  const free = lines.filter((line) => !openings.some((door) => overlap(line, door) > 0));
  for (const group of groupLines(free)) {
    const [start, end] = [Math.min(...group.map((line) => line.start)), Math.max(...group.map((line) => line.end))];
    const kind = group.length >= WINDOW_LINES ? "window" : "passage";
    found.push({
      start,
      end,
      kind,
      depth: null,
      leaves: 1,
      hinge: null,
      left: false,
      shapes: group.map(({ shape }) => shape),
    });
  }
  const sorted = found.toSorted((a, b) => a.start - b.start);
  return sorted.filter((opening, i) => !sorted.slice(0, i).some((before) => before.end > opening.start + SAME_END_M));
}

/** A leaf on this wall: hinges and shut edge both on the wall, the open edge clear of it. */
function leafOn(wall: WallBand, shape: OpeningShape, index: number): readonly Leaf[] {
  if (shape.kind !== "bend") return [];
  const [pivot, v] = placeAlong(wall, shape.centre);
  if (!inBand(wall, v, LEAF_BAND_M) || pivot < -SAME_END_M || pivot > wall.length + SAME_END_M) return [];
  return [shape.ends, [shape.ends[1], shape.ends[0]] as const].flatMap(([shutAt, openAt]): Leaf[] => {
    const [shut, shutAside] = placeAlong(wall, shutAt as PlanPoint);
    const [, aside] = placeAlong(wall, openAt as PlanPoint);
    const fills = Math.abs(Math.abs(shut - pivot) - shape.radius) <= LEAF_SHARE * shape.radius;
    const onWall = inBand(wall, shutAside, LEAF_BAND_M) && shut > -SAME_END_M && shut < wall.length + SAME_END_M;
    const opens = Math.abs(aside - v) > shape.radius / 3;
    return fills && onWall && opens ? [{ pivot, shut, left: aside > v, shape: index }] : [];
  });
}

/** Leaves as doors: two that shut against each other are a pair. */
function hangDoors(leaves: readonly Leaf[]): readonly FoundOpening[] {
  const used = new Set<number>();
  return leaves.flatMap((leaf, i): FoundOpening[] => {
    if (used.has(leaf.shape)) return [];
    used.add(leaf.shape);
    const width = Math.abs(leaf.shut - leaf.pivot);
    const other = leaves
      .slice(i + 1)
      .find(
        (each) =>
          !used.has(each.shape) &&
          Math.abs(each.shut - leaf.shut) < SAME_END_M &&
          Math.abs(Math.abs(each.shut - each.pivot) - width) < LEAF_SHARE * width &&
          each.pivot > leaf.shut !== leaf.pivot > leaf.shut &&
          each.left === leaf.left,
      );
    if (other) used.add(other.shape);
    const [start, end] = [leaf.pivot, other ? other.pivot : leaf.shut].toSorted((a, b) => a - b) as [number, number];
    const hinge = other ? null : leaf.pivot < leaf.shut ? "start" : "end";
    const shapes = other ? [leaf.shape, other.shape] : [leaf.shape];
    return [{ start, end, kind: "door", depth: null, leaves: other ? 2 : 1, hinge, left: leaf.left, shapes }];
  });
}

type LineOn = { readonly start: number; readonly end: number; readonly shape: number };

/** A straight line that runs along the wall's body. */
function lineOn(wall: WallBand, shape: OpeningShape, index: number): readonly LineOn[] {
  if (shape.kind !== "line") return [];
  const [[ua, va], [ub, vb]] = [placeAlong(wall, shape.ends[0]), placeAlong(wall, shape.ends[1])];
  const [start, end] = [Math.min(ua, ub), Math.max(ua, ub)];
  const width = end - start;
  if (!(width >= NARROWEST_M && width <= WIDEST_M)) return [];
  const along = [(ub - ua) / Math.hypot(ub - ua, vb - va), (vb - va) / Math.hypot(ub - ua, vb - va)] as const;
  const beside = inBand(wall, va, LINE_BAND_M) && inBand(wall, vb, LINE_BAND_M) && areParallel(along, [1, 0]);
  return beside && start > -SAME_END_M && end < wall.length + SAME_END_M ? [{ start, end, shape: index }] : [];
}

/** Lines that run from one place to another together. */
function groupLines(lines: readonly LineOn[]): readonly (readonly LineOn[])[] {
  const groups: LineOn[][] = [];
  for (const line of lines) {
    const group = groups.find(
      ([first]) =>
        first && Math.abs(first.start - line.start) < SAME_END_M && Math.abs(first.end - line.end) < SAME_END_M,
    );
    if (group) group.push(line);
    else groups.push([line]);
  }
  return groups;
}

function inBand({ toLeft, toRight }: WallBand, v: number, slack: number): boolean {
  return v <= toLeft + slack && v >= -toRight - slack;
}

function overlap(one: { start: number; end: number }, other: { start: number; end: number }): number {
  return Math.min(one.end, other.end) - Math.max(one.start, other.start);
}
