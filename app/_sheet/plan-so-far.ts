import { letterName } from "@/lib/drawing/clear-lettering";
import type { DisplayItem, DisplayList } from "@/lib/drawing/display-list";
import { OWN_LINES } from "@/lib/drawing/draw-edges";
import type { NamedPoint } from "@/lib/plan/named-point";
import type { Plan } from "@/lib/plan/plan";
import { shortName } from "@/lib/plan/say-point";
import { crosses, edgesIn, type Room } from "./drawings";
import type { DrawnPoints } from "./drawn-points";
import { drawRuledPlan } from "./ruled-plan";

/** Points of the plan nearer than this are one place, metres: half an inch. */
const ONE_PLACE_M = 0.0127;
/**
 * The plan as far as it has been read back: the stage with its rule, then what is given, then what the student has set
 * down. An element of the set is drawn whole once all that is asked of it is on the sheet; until then only the lines between
 * its points are, as in a picture. Nothing of it depends on a place that is still asked.
 */
export function drawPlanSoFar(room: Room, drawn: DrawnPoints): DisplayList {
  const { exercise, edges } = room;
  const whole = wholeElements(room, drawn);
  const trueCorner = (name: string) =>
    exercise.task.goOnFrom === "true" || !exercise.task.marks.some((mark) => mark.startsWith(`${name}.`));
  const ends = exercise.plan.walls.flatMap(({ id, from, to }) => (whole.has(id) ? [from, to] : []));
  const isDrawn = ({ id }: { readonly id: string }) => whole.has(id);
  const { plan } = exercise;
  const soFar: Plan = {
    corners: new Map(
      [...plan.corners].filter(
        ([name]) =>
          ends.includes(name) || (trueCorner(name) && (drawn.has(`${name}.foot`) || drawn.has(`${name}.top`))),
      ),
    ),
    walls: plan.walls.filter(isDrawn),
    platforms: plan.platforms.filter(isDrawn),
    stairs: plan.stairs.filter(isDrawn),
    furniture: plan.furniture.filter(isDrawn),
    columns: plan.columns.filter(isDrawn),
    masking: plan.masking.filter(isDrawn),
  };
  const lines = edgesIn({ ...room, edges: edges.filter(({ element }) => !whole.has(element)) }, drawn, OWN_LINES);
  const loose = new Map(
    [...drawn].filter(([name]) => {
      const point = room.points.get(name);
      return point && !soFar.corners.has(point.element) && !whole.has(point.element);
    }),
  );
  const items: DisplayItem[] = [...drawRuledPlan(exercise, soFar), ...lines, ...crosses(room, loose)];
  return [...items, ...nameCorners(room, loose, items)];
}

/** The names of the corners among some points, where they stand. */
export function nameCorners({ points, exercise }: Room, places: DrawnPoints, over: DisplayList): DisplayItem[] {
  const drawn = { items: over, scaleRatio: exercise.scaleRatio };
  return [...places].flatMap(([name, at]): DisplayItem[] => {
    const point = points.get(name);
    if (point?.group !== "corner" || point.role !== "foot") return [];
    return [letterName(`name.${name}`, at, [at[0] < 0 ? -1 : 1, 1], shortName(point), drawn)];
  });
}

/**
 * The elements that hang between points on the sheet (a wall between both its corners) and lie nowhere on a place that is
 * still asked, by any of their points.
 */
function wholeElements({ exercise, points }: Room, drawn: DrawnPoints): ReadonlySet<string> {
  const { plan, task } = exercise;
  const own = task.goOnFrom === "own";
  const still = task.marks.filter((name) => own || !drawn.has(name)).flatMap((name) => points.get(name) ?? []);
  const pointsOf = (part: string) => [...points.values()].filter(({ name }) => name.startsWith(`${part}.`));
  const isOnSheet = (part: string) => pointsOf(part).some(({ name }) => drawn.has(name));
  const isOpen = (part: string) => pointsOf(part).some((point) => still.some((asked) => samePlace(point, asked)));
  const whole = (id: string, hangsOn: readonly string[]) =>
    hangsOn.every(isOnSheet) && ![id, ...hangsOn].some(isOpen) ? [id] : [];
  return new Set([
    ...plan.walls.flatMap(({ id, from, to }) => whole(id, [from, to])),
    ...[plan.platforms, plan.stairs, plan.furniture, plan.columns, plan.masking]
      .flat()
      .flatMap(({ id }) => whole(id, [id])),
  ]);
}

function samePlace(a: NamedPoint, b: NamedPoint): boolean {
  return Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) < ONE_PLACE_M;
}
