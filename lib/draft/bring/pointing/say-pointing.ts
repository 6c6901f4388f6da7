import type { CaughtBy } from "./catch-place";
import type { PlaceName, Pointing } from "./pointing";

/** What to point at now. */
const ASKS: Readonly<Record<PlaceName, string>> = {
  "centre line downstage": "Point at a place on the centre line, near the audience.",
  "centre line upstage": "Point at the centre line again, as far upstage as it is drawn.",
  "plaster line": "Point at a place on the plaster line, toward one side.",
  "plaster line again": "Point at the plaster line again, toward the other side.",
  "size from": "Point at one end of something whose length you know: a wall, the opening, a scale bar.",
  "size to": "Point at its other end.",
};

/** The places in a list of them. */
export const PLACE_WORDS: Readonly<Record<PlaceName, string>> = {
  "centre line downstage": "Centre line, near the audience",
  "centre line upstage": "Centre line, upstage",
  "plaster line": "Plaster line, one side",
  "plaster line again": "Plaster line, the other side",
  "size from": "Known length, one end",
  "size to": "Known length, other end",
};

const CAUGHT_WORDS: Readonly<Record<CaughtBy, string>> = {
  end: "At the end of a line.",
  crossing: "Where two lines cross.",
  middle: "In the middle of a line.",
  line: "On a line.",
};

/** What to point at next, in a sentence, or that all is pointed at. */
export function sayAsked({ asked }: Pick<Pointing, "asked">): string {
  return asked ? ASKS[asked] : "Everything is pointed at. A place can be dragged, or set again.";
}

/** By what a held place was caught; empty for nothing. */
export function sayCaughtBy(by: CaughtBy | null): string {
  return by ? CAUGHT_WORDS[by] : "";
}
