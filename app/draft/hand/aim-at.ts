import type { Draft } from "@/lib/draft/draft";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { catchable } from "@/lib/draft/snapping/catchable";
import { placeOpening } from "@/lib/draft/snapping/place-opening";
import { sayCaught } from "@/lib/draft/snapping/say-caught";
import { snapPoint } from "@/lib/draft/snapping/snap-point";
import { type ThingIndex, thingsAt } from "@/lib/draft/snapping/thing-at";
import { wallClearances } from "@/lib/draft/snapping/wall-clearances";
import { printLength } from "@/lib/measure/print-length";
import { capital } from "@/lib/plan/first-letter";
import type { Plan } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import type { Aim, Desk } from "../desk/desk";
import { sayAngle } from "../plan/live-lines";
import { sayPlace } from "../things/thing-words";
import { editInHand, type Hand, lastPlace, placeOf } from "./hand";
import type { Measures } from "./measures";

/** Nobody points at a wall from farther than so many times the reach of a pointer. */
const WALL_REACHES = 8;

type Aiming = Pick<Desk, "history" | "hand" | "measures" | "grid" | "aim">;

/** What lies under the pencil: the plan's things to be found by place, and the plan with what is under way. */
export type Under = { readonly index: ThingIndex; readonly sofar: Plan };

/** Where the pencil goes that was pointed at a place, or moved there by keys (`tolerance` 0). One rule for pointer, touch and keys. */
export function aimAt(desk: Aiming, at: PlanPoint, tolerance: number, { index, sofar }: Under): Aim | null {
  const { history, hand, grid } = desk;
  const { plan } = history.draft.exercise;
  if (hand.kind === "opening") return aimOnWall(plan, at, tolerance, index, desk);
  const first = "corners" in hand && hand.corners.length > 2 ? hand.corners[0] : undefined;
  const start = first === undefined ? null : placeOf(plan, first);
  if (start && Math.hypot(start[0] - at[0], start[1] - at[1]) <= tolerance)
    return { kind: "place", at: start, to: [], guides: [] };
  const from = lastPlace(hand, plan);
  const snapped = snapPoint(at, {
    plan: catchable(sofar, at, tolerance, from),
    grid,
    tolerance,
    from,
    without: new Set(),
  });
  return { kind: "place", ...snapped };
}

/** The plan with what is under way, so that the run's own walls catch as well. */
export function withRun(draft: Draft, hand: Hand, measures: Measures): Plan {
  const change = hand.kind === "walls" ? editInHand(hand, null, draft.exercise.plan, measures) : null;
  const edited = change && applyEdit(draft, change);
  return edited?.ok ? edited.draft.exercise.plan : draft.exercise.plan;
}

function aimOnWall(plan: Plan, at: PlanPoint, tolerance: number, index: ThingIndex, desk: Aiming): Aim | null {
  const near = thingsAt(index, at, tolerance * WALL_REACHES)
    .filter((thing) => thing.kind === "wall")
    .map(({ id }) => id);
  for (const wall of near) {
    const place = placeOpening(plan, wall, desk.measures.opening.width, at, { grid: desk.grid, tolerance });
    if (place) return { kind: "on-wall", wall, at: place.at };
  }
  return desk.aim?.kind === "on-wall" ? desk.aim : null;
}

/** Where the pencil is held, in words, with what caught it and how far it is from the last corner. */
export function sayAim(aim: Aim | null, { history, hand, measures }: Omit<Aiming, "aim" | "grid">): string {
  if (!aim) return "";
  const { plan, units } = history.draft.exercise;
  const print = (metres: number) => printLength(metres, units);
  if (aim.kind === "on-wall") {
    const clear = wallClearances(plan, aim.wall, { at: aim.at, width: measures.opening.width }, null);
    if (!clear) return "";
    const { start, end } = clear;
    return `In ${aim.wall}: ${print(start.length)} from ${start.next.id}, ${print(end.length)} from ${end.next.id}.`;
  }
  const caught = sayCaught(aim.to);
  const from = lastPlace(hand, plan);
  const run = from && [aim.at[0] - from[0], aim.at[1] - from[1]];
  const length = run ? Math.hypot(run[0] ?? 0, run[1] ?? 0) : 0;
  const long = run && length > 0 ? `${print(length)} long at ${sayAngle(Math.atan2(run[1] ?? 0, run[0] ?? 0))}. ` : "";
  const place = sayPlace(aim.at, units);
  return `${long}${capital(place)}${caught && caught !== "on the grid" ? `; ${caught}` : ""}.`;
}
