import type { Draft, Thing } from "./draft";
import type { Edit } from "./edit";
import { applyEdit } from "./edits/apply-edit";

/** A draft with all that it has been since it was opened, and what was undone of it. Drafts share what did not change. */
export type History = {
  readonly draft: Draft;
  /** Earlier drafts, oldest first. */
  readonly past: readonly Draft[];
  /** Undone drafts, the one to come back first at the end. */
  readonly future: readonly Draft[];
  /** The edit that led to `draft`; null when it was opened so, or was come to by undoing. */
  readonly last: Edit | null;
};

export type HistoryEdited =
  | { readonly ok: true; readonly history: History; readonly made: readonly Thing[] }
  | { readonly ok: false; readonly say: string };

export function startHistory(draft: Draft): History {
  return { draft, past: [], future: [], last: null };
}

/**
 * Makes one edit. With `joins` it becomes one step with the edit before it, provided that was the same change of the same
 * things: a drag is one step however often it moved (give `joins` from its second move on). An edit that changes nothing
 * leaves the history as it is; any other forgets what was undone.
 */
export function edit(history: History, change: Edit, options: { readonly joins?: boolean } = {}): HistoryEdited {
  const edited = applyEdit(history.draft, change);
  if (!edited.ok) return edited;
  if (edited.draft === history.draft) return { ok: true, history, made: edited.made };
  const joined = options.joins === true && history.last !== null && canJoin(history.last, change);
  const past = joined ? history.past : [...history.past, history.draft];
  return { ok: true, history: { draft: edited.draft, past, future: [], last: change }, made: edited.made };
}

/** The draft before the last step; the same history where there is none. */
export function undo(history: History): History {
  const before = history.past.at(-1);
  if (!before) return history;
  return {
    draft: before,
    past: history.past.slice(0, -1),
    future: [...history.future, history.draft],
    last: null,
  };
}

/** The step undone last, done again; the same history where there is none. */
export function redo(history: History): History {
  const after = history.future.at(-1);
  if (!after) return history;
  return { draft: after, past: [...history.past, history.draft], future: history.future.slice(0, -1), last: null };
}

/** Edits that set or shift something that stays can be one step; what comes, goes or is split is a step of its own. */
const JOINING: readonly Edit["edit"][] = [
  "set-stage",
  "set-viewer",
  "set-back-wall-rise",
  "change-wall",
  "change-opening",
  "change-platform",
  "change-stair",
  "change-furniture",
  "change-column",
  "change-masking",
  "move-corner",
  "set-wall-length",
  "move",
  "turn",
  "set-task",
  "set-words",
];

function canJoin(before: Edit, change: Edit): boolean {
  return JOINING.includes(change.edit) && subjectOf(before) === subjectOf(change);
}

/** What an edit changes, and how, without the amounts: edits of one subject can be one step. */
function subjectOf(change: Edit): string {
  const name = (thing: Thing) => [thing.kind, thing.kind === "opening" ? thing.wall : "", thing.id];
  const things = "things" in change ? change.things.map(name) : [];
  const id = "id" in change ? change.id : "";
  const wall = "wall" in change ? change.wall : "";
  const members = "change" in change ? Object.keys(change.change).sort() : [];
  return JSON.stringify([change.edit, wall, id, members, things]);
}
