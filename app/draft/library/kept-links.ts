import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { keysOf, put, type Shelf, take } from "@/app/_parts/kept-work/shelf";

const LINK_KEY = "plasterline.draft.library.";

/** Where a plan of this browser lies in a teacher's library on the class server, and how far the two went together. */
export type LibraryLink = {
  readonly planId: string;
  /** Whose library: another teacher at the same browser has another. */
  readonly ownerId: string;
  /** The edition in the library that the plan here goes on from. */
  readonly edition: number;
  /** The plan's text as it was then, by its short name. */
  readonly sum: string;
  readonly keptAt: string;
  /** Another browser was first: its edition is the plan there, and what was kept from here lies beside it. */
  readonly beside: { readonly edition: number; readonly changedAt: string } | null;
  /** The short name of what was sent last, where no answer came: it may have arrived. */
  readonly unanswered: string | null;
};

export function keepLink(shelf: Shelf | null, plan: string, link: LibraryLink): boolean {
  return shelf !== null && put(shelf, LINK_KEY + plan, link);
}

/** Where a plan lies in this teacher's library; null where it does not. */
export function keptLink(shelf: Shelf | null, plan: string, ownerId: string): LibraryLink | null {
  const link = shelf && readLink(take(shelf, LINK_KEY + plan));
  return link && link.ownerId === ownerId ? link : null;
}

export function forgetLink(shelf: Shelf, plan: string): void {
  shelf.removeItem(LINK_KEY + plan);
}

/** The plans of this browser that are a plan of a library, the newest edition first. */
export function linkedPlans(
  shelf: Shelf,
  planId: string,
  ownerId: string,
): readonly { readonly key: string; readonly link: LibraryLink }[] {
  return keysOf(shelf, LINK_KEY)
    .flatMap((name) => {
      const key = name.slice(LINK_KEY.length);
      const link = keptLink(shelf, key, ownerId);
      return link?.planId === planId ? [{ key, link }] : [];
    })
    .sort((a, b) => b.link.edition - a.link.edition);
}

function readLink(value: unknown): LibraryLink | null {
  if (!isRecord(value)) return null;
  const { planId, ownerId, edition, sum, keptAt, beside } = value;
  if (typeof planId !== "string" || typeof ownerId !== "string" || typeof sum !== "string") return null;
  if (typeof edition !== "number" || typeof keptAt !== "string") return null;
  const unanswered = typeof value.unanswered === "string" ? value.unanswered : null;
  return { planId, ownerId, edition, sum, keptAt, beside: readBeside(beside), unanswered };
}

function readBeside(value: unknown): LibraryLink["beside"] {
  if (!isRecord(value) || typeof value.edition !== "number" || typeof value.changedAt !== "string") return null;
  return { edition: value.edition, changedAt: value.changedAt };
}
