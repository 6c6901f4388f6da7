import type { Thing } from "../draft";
import type { Edit } from "../edit";

/** What a note speaks of: a thing of the plan, the stage and the plan as a whole, the eye, or what the student is asked. */
export type NotePlace = Thing | "stage" | "viewer" | "task";

/** A quiet remark beside the drawing. A fault keeps the draft from being an exercise, a note is for the author to weigh. */
export type Note = {
  readonly weight: "note" | "fault";
  readonly where: NotePlace;
  /** Everything it speaks of, to be shown in the drawing. */
  readonly things: readonly Thing[];
  /** What is the matter, and what can be done about it, each a whole sentence or several. */
  readonly say: string;
  readonly remedy: string;
  /** A change that mends it, where there is one; `remedy` says what it does. */
  readonly edit?: Edit;
};

/** A note of a thing or things, the first of them where it stands. */
export function noteOf(things: readonly [Thing, ...Thing[]], say: string, remedy: string, edit?: Edit | null): Note {
  return { weight: "note", where: things[0], things, say, remedy, ...(edit ? { edit } : {}) };
}

/** Names in a sentence, the first few of many: "A, B and C", "A, B, C and 9 more". */
export function listNames(names: readonly string[]): string {
  const shown = names.length > MOST_NAMES ? names.slice(0, MOST_NAMES - 1) : names;
  const rest = names.length - shown.length;
  const last = rest > 0 ? `${rest} more` : shown.at(-1);
  const before = rest > 0 ? shown : shown.slice(0, -1);
  return before.length > 0 ? `${before.join(", ")} and ${last}` : (last ?? "");
}

/** A sentence names no more than this. */
const MOST_NAMES = 4;
