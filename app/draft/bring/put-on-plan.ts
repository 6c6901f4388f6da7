import type { Shelf } from "@/app/_parts/kept-work/shelf";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { edit, startHistory } from "@/lib/draft/history";
import { newDraft } from "@/lib/draft/new-draft";
import type { LengthUnits } from "@/lib/measure/length";
import { CHOOSING } from "../hand/hand";
import { freshKey, keepPlan, keptPlan, lastOpen, type Work } from "../kept/kept-plans";

/** Letters of a title that is taken from a file's name. */
const LONGEST_TITLE = 60;

/** The plan on the table with all that can be undone; null where there is none, or it cannot be read. */
export function planOnTable(shelf: Shelf | null, read: (text: string) => Draft | null): Work | null {
  const key = shelf && lastOpen(shelf);
  return shelf && key !== null ? keptPlan(shelf, key, read) : null;
}

/** A plan of its own, called as the file is. */
export function newPlan(units: LengthUnits, fileName: string): Draft {
  const title = fileName
    .replace(/\.[a-z0-9]+$/i, "")
    .replace(/[_-]+/g, " ")
    .trim()
    .slice(0, LONGEST_TITLE);
  const draft = newDraft(units);
  const titled = title === "" ? null : applyEdit(draft, { edit: "set-words", words: { title } });
  return titled?.ok ? titled.draft : draft;
}

export type PutDone = { readonly ok: true } | { readonly ok: false; readonly say: string };

/**
 * Puts what was brought on a plan and keeps it, so that the desk opens with it and can undo it in one step. The plan on the table
 * keeps what could be undone on it; a new one is kept beside it.
 */
export function putOnPlan(shelf: Shelf | null, table: Work | null, plan: Draft, change: Edit, now: string): PutDone {
  if (!shelf) return { ok: false, say: "This browser keeps no plans: its storage is full or blocked." };
  const work: Work = table ?? { history: startHistory(plan), done: [], undone: [], hand: CHOOSING, measures: null };
  const edited = edit(work.history, change);
  if (!edited.ok) return edited;
  const after: Work = { ...work, history: edited.history, done: [...work.done, [change]], undone: [], hand: CHOOSING };
  const key = (table && lastOpen(shelf)) ?? freshKey(shelf);
  return keepPlan(shelf, key, after, now)
    ? { ok: true }
    : { ok: false, say: "This browser does not keep the plan: its storage is full or blocked." };
}
