import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { type Handle, type HandleName, nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { reshape } from "@/lib/draft/reshape/reshape";
import { sayCaught } from "@/lib/draft/snapping/say-caught";
import { wallClearances } from "@/lib/draft/snapping/wall-clearances";
import { printLength } from "@/lib/measure/print-length";
import { capital } from "@/lib/plan/first-letter";
import type { Plan } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import type { Desk } from "../desk/desk";
import { sayAngle } from "../plan/live-lines";
import { sayPlace } from "../things/thing-words";

/** What a pulled handle amounts to: the edit, what the handle goes by afterwards, and where it leads in words. */
export type Pulled = { readonly edit: Edit; readonly handle: HandleName; readonly said: string };

/** The one thing whose handles are out; null while the pencil is in hand, or none or several are chosen. */
export function grippedThing({ hand, chosen }: Pick<Desk, "hand" | "chosen">): Thing | null {
  const [only] = chosen;
  return hand.kind === "choose" && only && chosen.length === 1 ? only : null;
}

/** Whether what is chosen gives way on the plan: to the points of the exercise, or to what a seat sees. */
export function isQuiet({ drawer, sight }: Pick<Desk, "drawer" | "sight">): boolean {
  return drawer === "exercise" || (drawer === "notes" && sight !== null);
}

/** The handle of a thing by name; null where it has none such. */
export function handleNamed(plan: Plan, thing: Thing, name: HandleName | null): Handle | null {
  return handlesOf(plan, thing).find((handle) => nameOfHandle(handle) === name) ?? null;
}

/** The handle that a pointer takes hold of, or null: the nearest within reach, and never so far that the thing itself could not be taken. */
export function handleAt(plan: Plan, thing: Thing, at: PlanPoint, reach: number): Handle | null {
  const handles = handlesOf(plan, thing);
  const away = (a: PlanPoint, b: PlanPoint) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  let best: { readonly handle: Handle; readonly off: number } | null = null;
  for (const handle of handles) {
    const off = away(handle.at, at);
    const room = Math.min(...handles.filter((other) => other !== handle).map((other) => away(other.at, handle.at)));
    if (off <= Math.min(reach, Math.max(room * OF_THE_ROOM, reach * LEAST_REACH)) && (!best || off < best.off))
      best = { handle, off };
  }
  return best?.handle ?? null;
}

/** Of the way to the next handle, and of a pointer's reach, what a handle takes at most, and at least. */
const OF_THE_ROOM = 0.4;
const LEAST_REACH = 0.5;

/** The edit that brings a handle to a place, and where that is in words; null where it cannot go there. */
export function pullHandle(
  { exercise: { plan, units } }: Draft,
  thing: Thing,
  handle: Handle,
  to: PlanPoint,
  by: { readonly grid: number; readonly tolerance: number },
): Pulled | null {
  const reshaped = reshape(plan, thing, handle, to, { ...by, units });
  if (!reshaped) return null;
  const { edit, caught } = reshaped;
  const held = sayCaught(caught.filter((each) => each.by !== "grid"));
  const said = `${capital(sayEdit(edit, handle, plan, units))}${held ? `; ${held}` : ""}.`;
  return { edit, handle: reshaped.handle, said };
}

function sayEdit(edit: Edit, { kind, number }: Handle, plan: Plan, units: "ft-in" | "m"): string {
  const print = (metres: number) => printLength(metres, units);
  const long = ([a, b]: readonly [PlanPoint, PlanPoint]) => print(Math.hypot(b[0] - a[0], b[1] - a[1]));
  switch (edit.edit) {
    case "add-platform-corner":
      return `a new corner ${number + 1}: ${sayPlace(edit.at, units)}`;
    case "change-platform": {
      const at = edit.change.outline?.[number - 1];
      return at ? `corner ${number}: ${sayPlace(at, units)}` : "";
    }
    case "change-stair": {
      const { nosing, tread } = edit.change;
      return `${nosing ? `${long(nosing)} wide` : ""}${tread === undefined ? "" : `, treads of ${print(tread)}`}`;
    }
    case "change-masking":
      return edit.change.line ? `${long(edit.change.line)} long` : "";
    case "change-furniture": {
      const { turn, width, depth } = edit.change;
      return kind === "turn" ? `turned ${sayAngle(turn ?? 0)}` : `${print(width ?? 0)} by ${print(depth ?? 0)}`;
    }
    case "change-column":
      return `${print(edit.change.diameter ?? 0)} thick`;
    case "change-opening": {
      const { at = 0, width = 0 } = edit.change;
      const clear = wallClearances(plan, edit.wall, { at, width }, edit.id);
      const ends = clear && [clear.start, clear.end].map(({ length, next }) => `${print(length)} from ${next.id}`);
      return `${print(width)} wide${ends ? `, ${ends.join(", ")}` : ""}`;
    }
    default:
      return "";
  }
}

/** What a handle is, for readers of the screen. */
export function sayHandle({ kind, number }: Pick<Handle, "kind" | "number">, thing: Thing, of: number): string {
  switch (kind) {
    case "corner":
      return `corner ${number}`;
    case "edge":
      return `the edge from corner ${number} to corner ${(number % of) + 1}`;
    case "end":
      return thing.kind === "stair" ? `end ${number} of the lowest nosing` : `end ${number}`;
    case "top":
      return `end ${number} of the highest nosing`;
    case "size":
      return thing.kind === "column" ? "its rim" : `corner ${number}`;
    case "jamb":
      return number === 1 ? "the jamb nearer the wall's start" : "the jamb nearer the wall's end";
    case "turn":
      return "its front, to turn it";
  }
}
