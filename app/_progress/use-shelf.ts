"use client";

import { useSyncExternalStore } from "react";
import type { Attempt } from "./attempt";
import { copyProgress, findShelf } from "./keep";
import type { Records } from "./record";

export type OnShelf = {
  /** False where the browser keeps nothing. */
  readonly keeping: boolean;
  readonly records: Records;
  readonly attempts: readonly Attempt[];
};

let seen: { readonly raw: string; readonly value: OnShelf } | null = null;
const watchers = new Set<() => void>();

/** What is kept, or null while the server's page is still as it came. */
export function useShelf(): OnShelf | null {
  return useSyncExternalStore(watch, read, () => null);
}

/** Tells every part of the page that what is kept has changed. */
export function shelfChanged(): void {
  seen = null;
  for (const watcher of watchers) watcher();
}

function watch(watcher: () => void): () => void {
  watchers.add(watcher);
  window.addEventListener("storage", shelfChanged);
  return () => {
    watchers.delete(watcher);
    if (watchers.size === 0) window.removeEventListener("storage", shelfChanged);
  };
}

function read(): OnShelf {
  const shelf = findShelf();
  const copy = shelf && copyProgress(shelf);
  const raw = JSON.stringify(copy);
  if (seen?.raw !== raw) {
    seen = { raw, value: { keeping: copy !== null, records: copy?.records ?? {}, attempts: copy?.attempts ?? [] } };
  }
  return seen.value;
}
