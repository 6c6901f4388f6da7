import type { Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import type { Plan, Wall } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import type { Measures } from "./measures";

/** A corner of a run: one that is there, by name, or a new one by its place. */
export type RunCorner = PlanPoint | string;

/** What the pencil is doing on the plan. */
export type Hand =
  | { readonly kind: "choose" }
  | { readonly kind: "walls"; readonly corners: readonly RunCorner[] }
  | { readonly kind: "platform"; readonly corners: readonly PlanPoint[] }
  | { readonly kind: "line"; readonly draws: LineKind; readonly from: PlanPoint | null }
  | { readonly kind: "put"; readonly puts: PutKind }
  | { readonly kind: "opening" };

export const LINE_KINDS = ["stair", "leg", "border", "backing"] as const;
export type LineKind = (typeof LINE_KINDS)[number];
export const PUT_KINDS = ["point", "furniture", "column"] as const;
export type PutKind = (typeof PUT_KINDS)[number];

export const CHOOSING: Hand = { kind: "choose" };

/** What is under way, so that something would be lost by leaving it. */
export function isUnderWay(hand: Hand): boolean {
  if (hand.kind === "walls" || hand.kind === "platform") return hand.corners.length > 0;
  return hand.kind === "line" && hand.from !== null;
}

/** What comes of a place set down: the hand after it, or an edit that makes the thing. */
export type SetDown = { readonly hand: Hand; readonly edit: Edit | null };

/** A corner of the plan that stands just there. */
function cornerAt(plan: Pick<Plan, "corners">, [x, y]: PlanPoint): string | null {
  for (const [name, [u, v]] of plan.corners) if (Math.hypot(u - x, v - y) < SAME_PLACE_M) return name;
  return null;
}

/** Places nearer to each other than this are one, metres: a tenth of a millimetre. */
const SAME_PLACE_M = 1e-4;

/** Sets a place down. A run that comes back to its own beginning is closed and ended; so is a platform. */
export function setDown(hand: Hand, at: PlanPoint, plan: Plan, measures: Measures): SetDown {
  switch (hand.kind) {
    case "walls": {
      const corner = cornerAt(plan, at) ?? at;
      const first = hand.corners[0];
      if (hand.corners.length > 2 && first !== undefined && same(placeOf(plan, first), at))
        return { hand: { kind: "walls", corners: [] }, edit: editOfRun(hand.corners, true, measures) };
      const last = hand.corners.at(-1);
      if (last !== undefined && same(placeOf(plan, last), at)) return { hand, edit: null };
      return { hand: { ...hand, corners: [...hand.corners, corner] }, edit: null };
    }
    case "platform": {
      const [first] = hand.corners;
      if (hand.corners.length > 2 && first && same(first, at))
        return { hand: { kind: "platform", corners: [] }, edit: editOfOutline(hand.corners, measures) };
      if (hand.corners.some((corner) => same(corner, at))) return { hand, edit: null };
      return { hand: { ...hand, corners: [...hand.corners, at] }, edit: null };
    }
    case "line":
      if (hand.from === null) return { hand: { ...hand, from: at }, edit: null };
      if (same(hand.from, at)) return { hand, edit: null };
      return { hand: { ...hand, from: null }, edit: editOfLine(hand.draws, hand.from, at, measures) };
    case "put":
      return { hand, edit: editOfPut(hand.puts, at, measures) };
    default:
      return { hand, edit: null };
  }
}

/** What the plan would gain if the pencil were set down, and what is under way ended, at a place; null where that is nothing yet. */
export function editInHand(hand: Hand, at: PlanPoint | null, plan: Plan, measures: Measures): Edit | null {
  switch (hand.kind) {
    case "walls": {
      const [first, last] = [hand.corners[0], hand.corners.at(-1)];
      const closes = at !== null && hand.corners.length > 2 && first !== undefined && same(placeOf(plan, first), at);
      const goesOn = at !== null && !closes && !(last !== undefined && same(placeOf(plan, last), at));
      const corners = goesOn ? [...hand.corners, cornerAt(plan, at) ?? at] : hand.corners;
      return corners.length > 1 ? editOfRun(corners, closes, measures) : null;
    }
    case "platform": {
      const goesOn = at !== null && !hand.corners.some((corner) => same(corner, at));
      const corners = goesOn ? [...hand.corners, at] : hand.corners;
      return corners.length > 2 ? editOfOutline(corners, measures) : null;
    }
    case "line":
      return hand.from && at && !same(hand.from, at) ? editOfLine(hand.draws, hand.from, at, measures) : null;
    case "put":
      return at && editOfPut(hand.puts, at, measures);
    default:
      return null;
  }
}

/** Takes back what was set down last; with nothing under way the pencil is put down. */
export function backOut(hand: Hand): Hand {
  if (hand.kind === "walls" && hand.corners.length > 0) return { ...hand, corners: hand.corners.slice(0, -1) };
  if (hand.kind === "platform" && hand.corners.length > 0) return { ...hand, corners: hand.corners.slice(0, -1) };
  if (hand.kind === "line" && hand.from !== null) return { ...hand, from: null };
  return CHOOSING;
}

/** Ends what is under way as it stands: the run of walls, the platform. */
export function endHand(hand: Hand, measures: Measures): SetDown {
  if (hand.kind === "walls" && hand.corners.length > 1)
    return { hand: { kind: "walls", corners: [] }, edit: editOfRun(hand.corners, false, measures) };
  if (hand.kind === "platform" && hand.corners.length > 2)
    return { hand: { kind: "platform", corners: [] }, edit: editOfOutline(hand.corners, measures) };
  return { hand: CHOOSING, edit: null };
}

/** Where a corner of a run stands. */
export function placeOf(plan: Pick<Plan, "corners">, corner: RunCorner): PlanPoint | null {
  return typeof corner === "string" ? (plan.corners.get(corner) ?? null) : corner;
}

/** The place that the next corner is measured from; null before the first. */
export function lastPlace(hand: Hand, plan: Pick<Plan, "corners">): PlanPoint | null {
  if (hand.kind === "walls") {
    const last = hand.corners.at(-1);
    return last === undefined ? null : placeOf(plan, last);
  }
  if (hand.kind === "platform") return hand.corners.at(-1) ?? null;
  return hand.kind === "line" ? hand.from : null;
}

/** An opening as it is now to be put into a wall, its nearer jamb so far from the wall's first corner. */
export function editOfOpening(wall: Wall, at: number, { opening }: Measures): Edit {
  const { kind, width, sill, head, depth } = opening;
  return {
    edit: "add-opening",
    wall: wall.id,
    opening: {
      kind,
      at,
      width,
      sill,
      head,
      depth: kind === "niche" ? depth : null,
      leaves: 1,
      hinge: null,
      swing: "offstage",
    },
  };
}

function editOfRun(corners: readonly RunCorner[], closed: boolean, { wall }: Measures): Edit {
  return { edit: "add-walls", corners, closed, height: wall.height, thickness: wall.thickness };
}

function editOfOutline(outline: readonly PlanPoint[], { platform }: Measures): Edit {
  return { edit: "add-platform", platform: { outline, height: platform.height, base: 0 } };
}

function editOfLine(draws: LineKind, from: PlanPoint, to: PlanPoint, measures: Measures): Edit {
  const line = [from, to] as const;
  if (draws === "stair") return { edit: "add-stair", stair: { nosing: line, ...measures.stair, base: 0 } };
  if (draws === "border") {
    const { trim, drop } = measures.border;
    return { edit: "add-masking", masking: { kind: draws, line, trim, height: drop } };
  }
  return { edit: "add-masking", masking: { kind: draws, line, trim: null, height: measures[draws].height } };
}

function editOfPut(puts: PutKind, at: PlanPoint, { furniture, column }: Measures): Edit {
  if (puts === "point") return { edit: "add-point", at };
  if (puts === "column") return { edit: "add-column", column: { at, ...column, base: 0 } };
  return { edit: "add-furniture", furniture: { at, turn: 0, ...furniture, base: 0 } };
}

function same(a: PlanPoint | null, b: PlanPoint): boolean {
  return a !== null && Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_PLACE_M;
}

/** One thing and another are the same. */
export function isSameThing(a: Thing, b: Thing): boolean {
  return keyOfThing(a) === keyOfThing(b);
}

/** A word of its own for a thing. */
export function keyOfThing(thing: Thing): string {
  return thing.kind === "opening" ? `opening ${thing.wall} ${thing.id}` : `${thing.kind} ${thing.id}`;
}
