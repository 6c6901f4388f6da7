"use client";

import { useSyncExternalStore } from "react";
import type { AttemptRecord } from "@/lib/progress/record";
import type { Attempt } from "./attempt";
import { copyProgress } from "./copy-work";
import { everythingFinished } from "./kept-finished";
import type { Records } from "./record";
import { findShelf } from "./shelf";

export type OnShelf = {
  /** False where the browser keeps nothing. */
  readonly keeping: boolean;
  readonly records: Records;
  readonly attempts: readonly Attempt[];
  /** All that is known of the exercises finished. */
  readonly finished: readonly AttemptRecord[];
};

/** Looked through once, and again when it may have changed: a year of work takes a while to read. */
let seen: OnShelf | null = null;
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
  if (watchers.size === 0) {
    window.addEventListener("storage", shelfChanged);
    window.addEventListener("pageshow", cameBack);
  }
  watchers.add(watcher);
  return () => {
    watchers.delete(watcher);
    if (watchers.size > 0) return;
    window.removeEventListener("storage", shelfChanged);
    window.removeEventListener("pageshow", cameBack);
    // What is kept may change while no part of the page looks.
    seen = null;
  };
}

/** A page that the browser had laid aside has heard of no change. */
function cameBack(event: PageTransitionEvent): void {
  if (event.persisted) shelfChanged();
}

function read(): OnShelf {
  seen ??= look();
  return seen;
}

function look(): OnShelf {
  const shelf = findShelf();
  if (!shelf) return { keeping: false, records: {}, attempts: [], finished: [] };
  const { records, attempts, finished } = copyProgress(shelf);
  return { keeping: true, records, attempts, finished: everythingFinished(finished, records) };
}
