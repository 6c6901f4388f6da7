import type { BroughtPoint } from "../brought";
import type { PointedLine } from "../place/place-frame";
import type { CaughtBy } from "./catch-place";

/** The places that are pointed at on a drawing or a picture of a plan, in the order they are asked for. */
export const PLACES = [
  "centre line downstage",
  "centre line upstage",
  "plaster line",
  "plaster line again",
  "size from",
  "size to",
] as const;
export type PlaceName = (typeof PLACES)[number];

/** Pairs of places that are one thing between them. */
export const POINTED_PAIRS = {
  "centre line": ["centre line downstage", "centre line upstage"],
  "plaster line": ["plaster line", "plaster line again"],
  size: ["size from", "size to"],
} as const satisfies Readonly<Record<string, readonly [PlaceName, PlaceName]>>;
export type PointedPair = keyof typeof POINTED_PAIRS;

/** Where the pointer or the keys are held, and what of the drawing caught it; null for nothing. */
export type Held = { readonly at: BroughtPoint; readonly by: CaughtBy | null };

type Places = Readonly<Partial<Record<PlaceName, BroughtPoint>>>;

/** What has been pointed at so far. Places are in the drawing's own frame and unit, y up. */
export type Pointing = {
  readonly places: Places;
  /** The place that is pointed at next; null when all are. */
  readonly asked: PlaceName | null;
  /** Whether two places and the length between them tell the size. */
  readonly asksSize: boolean;
  /** The length between the two places of the size, as it was written. */
  readonly written: string;
  readonly held: Held | null;
  /** What taking back goes back to, the latest last. */
  readonly before: readonly Pick<Pointing, "places" | "asked">[];
  /** Why the last place could not be set, in a sentence; empty when it could. */
  readonly trouble: string;
};

export type PointingEvent =
  /** The pointer or the keys are held there; null: nowhere. */
  | { readonly do: "hold"; readonly held: Held | null }
  /** Sets the place that is asked for where the pointer is held. */
  | { readonly do: "set" }
  /** That place is asked for (again), whether it was set or not. */
  | { readonly do: "ask"; readonly place: PlaceName }
  /** A place that was set goes elsewhere; nothing else is asked for. */
  | { readonly do: "move"; readonly place: PlaceName; readonly to: BroughtPoint }
  /** A line that was found is taken, as if it had been pointed at. */
  | { readonly do: "take line"; readonly pair: "centre line" | "plaster line"; readonly line: PointedLine }
  /** The centre line the other way round: its places change about. */
  | { readonly do: "turn round" }
  | { readonly do: "take back" }
  | { readonly do: "write"; readonly text: string }
  | { readonly do: "ask size"; readonly asksSize: boolean };

export function startPointing(asksSize: boolean): Pointing {
  return {
    places: {},
    asked: "centre line downstage",
    asksSize,
    written: "",
    held: null,
    before: [],
    trouble: "",
  };
}

/** What is pointed at after an event. Where an event cannot be done nothing changes but `trouble`, which says why. */
export function point(now: Pointing, event: PointingEvent): Pointing {
  switch (event.do) {
    case "hold":
      return { ...now, held: event.held };
    case "set":
      return now.asked && now.held ? setPlace(now, now.asked, now.held.at) : now;
    case "ask":
      return placesAsked(now).includes(event.place) ? { ...now, asked: event.place, held: null, trouble: "" } : now;
    case "move":
      return setPlace(now, event.place, event.to);
    case "take line": {
      const [first, second] = POINTED_PAIRS[event.pair];
      return changed(now, { ...now.places, [first]: event.line[0], [second]: event.line[1] });
    }
    case "turn round": {
      const line = pointedPair(now, "centre line");
      return line ? point(now, { do: "take line", pair: "centre line", line: [line[1], line[0]] }) : now;
    }
    case "take back": {
      const last = now.before.at(-1);
      if (!last) return now;
      return withAsked({ ...now, ...last, before: now.before.slice(0, -1), held: null, trouble: "" });
    }
    case "write":
      return { ...now, written: event.text };
    case "ask size":
      return withAsked({ ...now, asksSize: event.asksSize });
  }
}

/** The two places of a pair; null while one of them is missing. */
export function pointedPair({ places }: Pick<Pointing, "places">, pair: PointedPair): PointedLine | null {
  const [first, second] = POINTED_PAIRS[pair];
  const [one, other] = [places[first], places[second]];
  return one && other ? [one, other] : null;
}

/** The places that are asked for at all, in order. */
export function placesAsked({ asksSize }: Pick<Pointing, "asksSize">): readonly PlaceName[] {
  return PLACES.filter((place) => asksSize || (place !== "size from" && place !== "size to"));
}

function setPlace(now: Pointing, place: PlaceName, at: BroughtPoint): Pointing {
  const pair = Object.values(POINTED_PAIRS).find((names) => names.some((name) => name === place));
  const other = pair?.find((name) => name !== place);
  const there = other && now.places[other];
  if (there && there[0] === at[0] && there[1] === at[1])
    return { ...now, trouble: "That is the same place again. Point at another, far from the first." };
  return changed(now, { ...now.places, [place]: at });
}

function changed(now: Pointing, places: Places): Pointing {
  const before = [...now.before, { places: now.places, asked: now.asked }];
  return withAsked({ ...now, places, asked: null, held: null, before, trouble: "" });
}

/** With the next place asked for, unless one is and belongs to what is asked for at all. */
function withAsked(now: Pointing): Pointing {
  const names = placesAsked(now);
  if (now.asked && names.includes(now.asked)) return now;
  return { ...now, asked: names.find((name) => !now.places[name]) ?? null };
}
