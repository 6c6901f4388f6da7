import type { SheetPlace } from "../../sheet/place-drawings";
import type { SheetBox } from "../../sheet/sheet-box";
import { type Bend, bendPlace } from "./bend";
import { type FittedBend, leftOver, type SeenGuide } from "./fit-bend";
import { LINES_ASTRAY, notFlatBy, type PhotoTrouble } from "./photo-trouble";
import { awayFrom } from "./seen-box";

/** What the print in and round a drawing says of how the sheet lies. It is data alone, and survives JSON. */
export type Moved = {
  /** How its places lie in the flat fit; null where that alone is as good, or nothing better can be told. */
  readonly bend: Bend | null;
  /** Root mean square of how far the print lies across itself from its place, millimetres: by the fit alone, and by what is used now. Null where too little of it is seen. */
  readonly beforeMm: number | null;
  readonly afterMm: number | null;
  /** How far places of the drawing may be off at worst, about: by what is left over, and by what no print tells; null where too little is seen. */
  readonly worstMm: number | null;
  /** Stretches of print that this rests on, and how many are printed there. */
  readonly guides: number;
  readonly printed: number;
};

/** So far round the drawing print is asked whether it lies right, millimetres. */
const ROUND_MM = 12;
/** So many stretches at least, such a share of those printed, and such a share of those seen have to agree. */
const LEAST_GUIDES = 16;
const LEAST_SEEN = 0.45;
const AGREED = 0.7;
/** A bend is used if print was off by more than this, millimetres, of which it leaves a smaller share. Flat paper is off by 0.03 and less. */
const WORTH_MM = 0.035;
const FALLS = 0.5;
/** And if nothing in the drawing is moved by guess: what the print does not tell, at most, as a share of the move. */
const MOST_UNSURE = 0.25;
/** What it may leave untold at all, millimetres: more is left where only level lines are seen, or only upright ones. */
const UNTOLD_MM = 0.25;
/** Somewhere places are off by more than what is left over: so many times. In curled photographs up to 4. */
const WORST = 4;
/** Places that may be off by more than this, millimetres, are worth a word. */
const SAID_MM = 0.5;
/** The drawing's corners, the middles of its sides and its own. */
const SHARES = [0, 0.5, 1] as const;

/** Whether a bend is worth using in a box of the sheet, and what is left over either way. `places` are those of all stretches looked for. */
export function judgeBend(
  seen: readonly SeenGuide[],
  fitted: FittedBend | null,
  box: SheetBox,
  places: readonly SheetPlace[],
): Moved {
  const near = (place: SheetPlace) => awayFrom(box, place) < ROUND_MM;
  const printed = places.filter(near).length;
  const around = seen.map(({ guide }) => near(guide.at));
  const count = around.filter(Boolean).length;
  const used = around.map((is, i) => is && fitted?.kept[i] === true);
  const guides = used.filter(Boolean).length;
  const unsureMm = fitted ? Math.max(...spread(box).map(fitted.unsureMm)) : Infinity;
  const isEnough = guides >= LEAST_GUIDES && guides >= LEAST_SEEN * printed && guides >= AGREED * count;
  if (!fitted || !isEnough || unsureMm > UNTOLD_MM)
    return { bend: null, beforeMm: null, afterMm: null, worstMm: null, guides, printed };
  const beforeMm = meanSize(leftOver(seen, null).filter((_, i) => used[i]));
  const leftMm = meanSize(fitted.left.filter((_, i) => used[i]));
  const moveMm = Math.max(...spread(box).map((place) => moveOf(fitted.bend, place)));
  const worstMm = WORST * Math.hypot(leftMm, unsureMm);
  if (beforeMm > WORTH_MM && leftMm < FALLS * beforeMm && unsureMm < MOST_UNSURE * moveMm)
    return { bend: fitted.bend, beforeMm, afterMm: leftMm, worstMm, guides, printed };
  return { bend: null, beforeMm, afterMm: beforeMm, worstMm: WORST * Math.hypot(beforeMm, unsureMm), guides, printed };
}

/** What is doubtful about a photograph once its print was looked at: paper that does not lie flat is worth a word for what is left of it. */
export function doubtsLeft(doubts: readonly PhotoTrouble[], { worstMm, printed }: Moved): readonly PhotoTrouble[] {
  // A sheet with hardly a line by the drawing says nothing of it either way.
  if (worstMm === null) return printed < LEAST_GUIDES ? doubts : [...doubts, LINES_ASTRAY];
  const others = doubts.filter(({ why }) => why !== "not flat");
  return worstMm > SAID_MM ? [...others, notFlatBy(worstMm)] : others;
}

function spread({ left, top, right, bottom }: SheetBox): readonly SheetPlace[] {
  return SHARES.flatMap((x) => SHARES.map((y): SheetPlace => [left + x * (right - left), top + y * (bottom - top)]));
}

function moveOf(bend: Bend, place: SheetPlace): number {
  const [right, down] = bendPlace(bend, place);
  return Math.hypot(right - place[0], down - place[1]);
}

/** Root mean square. */
function meanSize(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / values.length);
}
