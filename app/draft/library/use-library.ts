"use client";

import { useCallback, useEffect, useMemo, useState } from "react";
import { newId } from "@/app/_parts/hand-ins/new-id";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { nameOfText } from "@/app/_parts/own-exercise/name-of-text";
import type { Draft } from "@/lib/draft/draft";
import { fileText } from "../kept/file-text";
import { forgetLink, keepLink, keptLink, type LibraryLink } from "./kept-links";
import { type Sent, sendOn } from "./send-plan";

/** What went wrong the last time; null when nothing did. */
export type Trouble = Exclude<Sent, { kind: "kept" }> | { readonly kind: "unkept" };

export type InLibrary = {
  /** Where the plan on the table lies in the library; null where it does not. */
  readonly link: LibraryLink | null;
  /** Whether it has changed here since. */
  readonly changed: boolean;
  readonly sending: boolean;
  readonly trouble: Trouble | null;
  /** Keeps it there. `over` puts it in the place of what another browser kept there first. */
  readonly keep: (words: string, over?: boolean) => Promise<boolean>;
  /** Lets go of a plan that is in the library no more, so that it can be kept there anew. */
  readonly letGo: () => void;
};

/** The plan on the table and the one in its teacher's library, and how the two stand to each other. */
export function useLibrary(ownerId: string, plan: string, draft: Draft): InLibrary {
  const [link, setLink] = useState<LibraryLink | null>(null);
  const [sending, setSending] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const look = useCallback(() => setLink(keptLink(findShelf(), plan, ownerId)), [plan, ownerId]);
  useEffect(() => {
    look();
    setTrouble(null);
    // The same plan may be kept from another tab.
    window.addEventListener("storage", look);
    return () => window.removeEventListener("storage", look);
  }, [look]);
  const sum = useMemo(() => nameOfText(fileText(draft)), [draft]);

  const keep = async (words: string, over = false): Promise<boolean> => {
    if (sending) return false;
    setSending(true);
    const [shelf, text] = [findShelf(), fileText(draft)];
    const before = keptLink(shelf, plan, ownerId);
    const planId = before?.planId ?? newId();
    // Written down before it is sent: should no answer come, the next try keeps the same plan and no second one.
    const first = before ?? { planId, ownerId, edition: 0, sum: "", keptAt: "", beside: null, unanswered: null };
    const written = keepLink(shelf, plan, first);
    const base = over && first.beside ? first.beside.edition : first.edition;
    const sent: Sent | { kind: "unkept" } = written
      ? await sendOn({ planId, base, text, words }, first.unanswered)
      : { kind: "unkept" };
    if (sent.kind === "kept") keepLink(shelf, plan, linkAfter(first, sent, nameOfText(text)));
    if (sent.kind === "unreached") keepLink(shelf, plan, { ...first, unanswered: nameOfText(text) });
    setTrouble(sent.kind === "kept" ? null : sent);
    setSending(false);
    look();
    return sent.kind === "kept";
  };
  const letGo = () => {
    const shelf = findShelf();
    if (shelf) forgetLink(shelf, plan);
    setTrouble(null);
    look();
  };
  const there = link && link.edition + (link.beside?.edition ?? 0) > 0 ? link : null;
  return { link: there, changed: there !== null && there.sum !== sum, sending, trouble, keep, letGo };
}

/** Where a plan lies once it was kept: the plan there, or beside the one that another browser kept first. */
function linkAfter(before: LibraryLink, sent: Extract<Sent, { kind: "kept" }>, sum: string): LibraryLink {
  const { where, edition, changedAt } = sent;
  if (where === "plan") return { ...before, edition, sum, keptAt: changedAt, beside: null, unanswered: null };
  return { ...before, sum, beside: { edition, changedAt }, unanswered: null };
}
