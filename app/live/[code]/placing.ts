import { createStore, type StoreApi } from "zustand/vanilla";
import type { Reply } from "@/app/_live/send-json";

export type Place = readonly [number, number];

/**
 * One person's mark in the open round. `at` is where it stands on this phone, `kept` where the server has acknowledged it.
 * `waiting`: the server cannot be reached, and it is sent again until it can.
 */
export type Placing = {
  readonly round: number;
  readonly at: Place | null;
  readonly kept: Place | null;
  readonly status: "empty" | "sending" | "in" | "waiting" | "refused";
  readonly sentence: string;
  readonly begin: () => void;
  readonly move: (at: Place | null) => void;
  /** The mark has come to rest: it is sent. */
  readonly rest: () => void;
  /** Back to where it stood before this gesture. */
  readonly undo: () => void;
  /** A round begins, or the page was loaded anew within one. */
  readonly enter: (round: number, kept: Place | null, unsent: Place | null) => void;
};

export type PlacingStore = StoreApi<Placing>;

type Ways = {
  readonly send: (round: number, at: Place) => Promise<Reply>;
  /** Asks to be known again, where the server does not know this phone any more. */
  readonly rejoin: () => Promise<unknown>;
  readonly wait: (ms: number) => Promise<void>;
  /** Remembers a mark that is not acknowledged yet, beyond a reload; null forgets it. */
  readonly remember: (round: number, at: Place | null) => void;
};

/** Waits between sendings that fail, in milliseconds: longer each time. */
const FIRST_WAIT_MS = 500;
const MOST_WAIT_MS = 4000;

/**
 * Holds a mark and sees to it that the server has the newest of it: one sending at a time, so that an older one never comes
 * after, and again until it is acknowledged.
 */
export function createPlacing({ send, rejoin, wait, remember }: Ways): PlacingStore {
  let sending = false;
  let before: Place | null = null;
  const store = createStore<Placing>((set, get) => ({
    round: 0,
    at: null,
    kept: null,
    status: "empty",
    sentence: "",
    begin: () => {
      before = get().at;
    },
    move: (at) => set({ at }),
    rest: () => void push(),
    undo: () => {
      set(({ kept }) => ({ at: before ?? kept }));
      void push();
    },
    enter: (round, kept, unsent) => {
      set({ round, kept, at: unsent ?? kept, status: kept ? "in" : "empty", sentence: "" });
      void push();
    },
  }));

  async function push(): Promise<void> {
    if (sending) return;
    sending = true;
    let waitMs = FIRST_WAIT_MS;
    for (;;) {
      const { at, kept, round } = store.getState();
      if (!at || at === kept) break;
      remember(round, at);
      store.setState(({ status }) => ({ status: status === "waiting" ? "waiting" : "sending", sentence: "" }));
      const reply = await send(round, at);
      const now = store.getState();
      if (now.round !== round) continue;
      if (reply.ok) {
        waitMs = FIRST_WAIT_MS;
        store.setState({ kept: at, status: "in", sentence: "" });
        if (now.at === at) remember(round, null);
        continue;
      }
      if (reply.reason === "not-open") {
        store.setState({ status: "refused", sentence: reply.sentence ?? "", at: now.kept });
        remember(round, null);
        break;
      }
      store.setState({ status: "waiting", sentence: reply.sentence ?? "" });
      if (reply.reason === "no-place") await rejoin();
      await wait(waitMs);
      waitMs = Math.min(waitMs * 2, MOST_WAIT_MS);
    }
    sending = false;
  }
  return store;
}
