import { isPdf, openPdf, type PdfPages } from "@/app/_photo/pdf-pages";
import type { WorkerDesk } from "@/app/_photo/worker-desk";
import type { PilePage } from "./page-state";
import { forget, type PileStore } from "./pile-store";
import { type Finder, readPage, unread } from "./read-pages";

/** As many pages as a pile takes: what is kept of each is about a megabyte. */
const MOST_PAGES = 150;

export type PileReader = {
  /** Puts files on the pile; each page is read in its turn. */
  readonly add: (files: readonly File[]) => Promise<void>;
  /** Reads a page once more, for example after its exercise was set. */
  readonly again: (id: string) => void;
  /** Whether there is something of the page to read. */
  readonly mayRead: (id: string) => boolean;
  readonly close: () => void;
};

type Source = () => Promise<Blob>;

/** Reads a pile page by page: one at a time, so that no more than one photograph is ever unpacked. */
export function createPileReader(store: PileStore, worker: WorkerDesk, find: Finder): PileReader {
  const sources = new Map<string, Source>();
  const scans = new Set<PdfPages>();
  let closed = false;
  let last = 0;
  let turn = Promise.resolve();

  const enqueue = (id: string) => {
    turn = turn.then(async () => {
      const source = sources.get(id);
      const page = store.getState().pages.find((each) => each.id === id);
      // Taken out while it waited.
      if (closed || !source || !page) return;
      const state = await source()
        .then((file) => readPage({ worker, find, store }, id, file))
        .catch((error: unknown) => unread("This page could not be read here.", sayFailed(error)));
      if (closed || !store.getState().pages.some((each) => each.id === id)) return forget(state);
      store.getState().show(id, state);
      // A page that was read needs its photograph no more.
      if (state.at === "read") sources.delete(id);
    });
  };
  const put = (from: string, source: Source | null, state: PilePage["state"] = { at: "waiting" }) => {
    last += 1;
    const id = `page ${last}`;
    if (source) sources.set(id, source);
    store.getState().put([{ id, from, state }]);
    if (source) enqueue(id);
  };
  const hasRoom = (from: string) => {
    if (store.getState().pages.length < MOST_PAGES) return true;
    put(
      from,
      null,
      unread(`A pile takes ${MOST_PAGES} pages.`, "Hand these in, load the page anew, then choose the rest."),
    );
    return false;
  };
  const addScan = async (file: File) => {
    const opened = await openPdf(file);
    if (opened.kind === "refused") return put(file.name, null, unread(opened.say, opened.remedy));
    const { pages } = opened;
    scans.add(pages);
    if (closed) return void pages.close();
    for (let page = 1; page <= pages.count; page++) {
      const from = `${file.name}, page ${page}`;
      if (!hasRoom(from)) return;
      put(from, () => pages.draw(page));
    }
  };
  return {
    add: async (files) => {
      for (const file of files) {
        try {
          if (await isPdf(file)) await addScan(file);
          else if (hasRoom(file.name)) put(file.name, async () => file);
          else return;
        } catch (error) {
          put(file.name, null, unread("This file could not be opened here.", sayFailed(error)));
        }
      }
    },
    again: (id) => {
      const page = store.getState().pages.find((each) => each.id === id);
      if (page?.state.at !== "unread" || !sources.has(id)) return;
      forget(page.state);
      store.getState().show(id, { at: "waiting" });
      enqueue(id);
    },
    mayRead: (id) => sources.has(id),
    close: () => {
      closed = true;
      for (const scan of scans) void scan.close();
      for (const { state } of store.getState().pages) forget(state);
      worker.close();
    },
  };
}

function sayFailed(error: unknown): string {
  return navigator.onLine
    ? `Read it again, or load the page anew. (${error instanceof Error ? error.message : String(error)})`
    : "The network is away: what reads photographs is fetched the first time. Read it again when it is back.";
}
