import { createStore, type StoreApi } from "zustand/vanilla";
import { findShelf, type Shelf } from "../kept-work/shelf";
import { sendWaiting } from "./send-waiting";
import {
  forgetWaiting,
  type KeptReceipt,
  keepReceipt,
  keepWaiting,
  keptReceipt,
  keptWaiting,
  type Waiting,
} from "./waiting";

/** While something waits it is tried again so often, milliseconds: the server may be back though the network never went. */
const TRY_AGAIN_MS = 30_000;

export type Post = {
  /** False until the browser's storage has been looked into. */
  readonly opened: boolean;
  readonly waiting: readonly Waiting[];
  /** What the storage would not take: it lasts as long as the page. */
  readonly unkept: readonly Waiting[];
  readonly sending: boolean;
  /** What the server last said against sending just now. */
  readonly said: string | null;
  /** Receipts of this page's own sending, by item, over those kept. */
  readonly receipts: Readonly<Record<string, KeptReceipt>>;
  /** Looks for what waits, sends it, and goes on doing so; answers with how to stop. */
  readonly open: () => () => void;
  readonly handIn: (waiting: Waiting) => void;
  readonly send: () => Promise<void>;
  /** Forgets one that the server will never take, once its student has saved it or does not want it. */
  readonly putAway: (id: string) => void;
  readonly receiptOf: (memberId: string, itemId: string) => KeptReceipt | null;
};

export type PostStore = StoreApi<Post>;

/** What takes homework to the server: kept in the browser until the server has acknowledged it. Knows no React. */
export function createPost(): PostStore {
  return createStore<Post>((set, get) => {
    const shelf = (): Shelf | null => findShelf();
    const look = () => {
      const from = shelf();
      set({ opened: true, waiting: [...(from ? keptWaiting(from) : []), ...get().unkept] });
    };
    const change = (waiting: Waiting) => {
      const to = shelf();
      const kept = to !== null && keepWaiting(to, waiting);
      const others = get().unkept.filter(({ id }) => id !== waiting.id);
      set({ unkept: kept ? others : [...others, waiting] });
    };
    const drop = (id: string) => {
      const from = shelf();
      if (from) forgetWaiting(from, id);
      set({ unkept: get().unkept.filter((each) => each.id !== id) });
    };
    const sendOne = async (waiting: Waiting): Promise<boolean> => {
      const sent = await sendWaiting(waiting);
      if (sent.kind === "refused") change({ ...waiting, refused: sent.sentence });
      if (sent.kind === "taken") {
        const to = shelf();
        if (to) keepReceipt(to, waiting, sent.receipt);
        set({ receipts: { ...get().receipts, [waiting.itemId]: sent.receipt } });
        drop(waiting.id);
      }
      set({ said: sent.kind === "later" ? sent.sentence : null });
      look();
      return sent.kind !== "later" || sent.sentence !== null;
    };
    const send = async () => {
      if (get().sending) return;
      set({ sending: true });
      try {
        const tried = new Set<string>();
        const nextOne = () => get().waiting.find(({ id, refused }) => refused === null && !tried.has(id));
        for (let next = nextOne(); next; next = nextOne()) {
          tried.add(next.id);
          // Where the server is not reached at all, the others wait with this one.
          if (!(await sendOne(next))) break;
        }
      } finally {
        set({ sending: false });
      }
    };
    return {
      opened: false,
      waiting: [],
      unkept: [],
      sending: false,
      said: null,
      receipts: {},
      open: () => {
        const again = () => {
          look();
          void send();
        };
        again();
        const timer = window.setInterval(() => get().waiting.length > 0 && again(), TRY_AGAIN_MS);
        window.addEventListener("online", again);
        window.addEventListener("pageshow", again);
        window.addEventListener("storage", look);
        return () => {
          window.clearInterval(timer);
          window.removeEventListener("online", again);
          window.removeEventListener("pageshow", again);
          window.removeEventListener("storage", look);
        };
      },
      handIn: (waiting) => {
        change(waiting);
        look();
        void send();
      },
      send,
      putAway: (id) => {
        drop(id);
        look();
      },
      receiptOf: (memberId, itemId) => {
        const from = shelf();
        return get().receipts[itemId] ?? (from && keptReceipt(from, memberId, itemId));
      },
    };
  });
}
