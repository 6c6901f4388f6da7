import { askWorker } from "@/app/_parts/ask-worker";
import type { Placed, Placing } from "@/lib/draft/bring/place/place-brought";
import type { Draft } from "@/lib/draft/draft";
import type { Answer, Asked, ReadAnswer } from "./worker/messages";

/** What the page asks its worker; a failure is an error in words. */
export type BringDesk = {
  readonly read: (file: Blob) => Promise<ReadAnswer>;
  /** Of the drawing read last. */
  readonly place: (placing: Placing, draft: Draft) => Promise<Placed>;
  readonly close: () => void;
};

/** A desk with a worker that is started at the first question. */
export function openBringDesk(start: () => Worker): BringDesk {
  const { ask, close } = askWorker<Asked, Answer>(
    start,
    "What reads drawings could not be started. Reload the page, and choose the file again.",
  );
  return {
    read: async (file) => (await ask({ ask: "read", file })) as ReadAnswer,
    place: async (placing, draft) => (await ask({ ask: "place", placing, draft })) as Placed,
    close,
  };
}

/** The worker itself, as the builder makes it. */
export function startBringWorker(): Worker {
  return new Worker(new URL("./worker/bring-worker.ts", import.meta.url), { type: "module" });
}
