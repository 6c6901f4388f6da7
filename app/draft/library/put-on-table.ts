import { findShelf, type Shelf } from "@/app/_parts/kept-work/shelf";
import { nameOfText } from "@/app/_parts/own-exercise/name-of-text";
import type { Draft } from "@/lib/draft/draft";
import { startHistory } from "@/lib/draft/history";
import { CHOOSING } from "../hand/hand";
import { fileText } from "../kept/file-text";
import { freshKey, keepPlan, keptDraft, openNext } from "../kept/kept-plans";
import { keepLink, linkedPlans } from "./kept-links";
import { type Opening, whichToOpen } from "./which-to-open";

/** A plan as the library has it. */
export type FromLibrary = {
  readonly planId: string;
  readonly ownerId: string;
  readonly edition: number;
  readonly changedAt: string;
  readonly text: string;
};

export type PutDown =
  | { readonly kind: "done" }
  /** Both have changed. */
  | { readonly kind: "either"; readonly key: string }
  | { readonly kind: "unread" }
  /** This browser keeps nothing. */
  | { readonly kind: "unkept" };

/** Puts a plan of the library on the table; with what this browser has of it, as `whichToOpen` says. */
export async function putOnTable(plan: FromLibrary, now: string): Promise<PutDown> {
  const shelf = findShelf();
  const { readDraft } = await import("@/lib/draft/read-draft");
  const read = (text: string) => {
    const reading = readDraft(text);
    return reading.ok ? reading.draft : null;
  };
  const draft = read(plan.text);
  if (!draft) return { kind: "unread" };
  if (!shelf) return { kind: "unkept" };
  const sum = nameOfText(fileText(draft));
  const here = linkedPlans(shelf, plan.planId, plan.ownerId).flatMap(({ key, link }) => {
    const mine = keptDraft(shelf, key, read);
    return mine ? [{ key, link, sum: nameOfText(fileText(mine)) }] : [];
  });
  const opening = whichToOpen({ edition: plan.edition, sum }, here);
  if (opening.open === "either") return { kind: "either", key: opening.key };
  return put(shelf, opening, plan, draft, now) ? { kind: "done" } : { kind: "unkept" };
}

/** Puts the library's beside the one here, which stays among the plans as it is. */
export async function putBeside(plan: FromLibrary, now: string): Promise<PutDown> {
  const shelf = findShelf();
  const { readDraft } = await import("@/lib/draft/read-draft");
  const reading = readDraft(plan.text);
  if (!reading.ok) return { kind: "unread" };
  return shelf && put(shelf, { open: "new" }, plan, reading.draft, now) ? { kind: "done" } : { kind: "unkept" };
}

function put(
  shelf: Shelf,
  opening: Exclude<Opening, { open: "either" }>,
  { planId, ownerId, edition, changedAt }: FromLibrary,
  draft: Draft,
  now: string,
): boolean {
  if (opening.open === "here") return openNext(shelf, opening.key);
  const key = opening.open === "new" ? freshKey(shelf) : opening.key;
  const sum = nameOfText(fileText(draft));
  const link = { planId, ownerId, edition, sum, keptAt: changedAt, beside: null, unanswered: null };
  const work = { history: startHistory(draft), done: [], undone: [], hand: CHOOSING, measures: null };
  const kept = opening.open === "same" ? openNext(shelf, key) : keepPlan(shelf, key, work, now);
  return kept && keepLink(shelf, key, link);
}
