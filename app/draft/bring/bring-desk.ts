import type { Placed, Placing } from "@/lib/draft/bring/place/place-brought";
import type { Draft } from "@/lib/draft/draft";
import type { Answer, Asked, FromWorker, ReadAnswer } from "./worker/messages";

/** What the page asks its worker; a failure is an error in words. */
export type BringDesk = {
  readonly read: (file: Blob) => Promise<ReadAnswer>;
  /** Of the drawing read last. */
  readonly place: (placing: Placing, draft: Draft) => Promise<Placed>;
  readonly close: () => void;
};

type Waiting = { readonly done: (answer: Answer) => void; readonly failed: (error: Error) => void };

/** A desk with a worker that is started at the first question. */
export function openBringDesk(start: () => Worker): BringDesk {
  let worker: Worker | null = null;
  let last = 0;
  const waiting = new Map<number, Waiting>();
  const failAll = (words: string) => {
    for (const { failed } of waiting.values()) failed(new Error(words));
    waiting.clear();
    worker?.terminate();
    worker = null;
  };
  const begin = () => {
    const begun = start();
    begun.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      const one = waiting.get(data.id);
      waiting.delete(data.id);
      if ("answer" in data) one?.done(data.answer);
      else one?.failed(new Error(data.failed));
    };
    begun.onerror = () =>
      failAll("What reads drawings could not be started. Reload the page, and choose the file again.");
    return begun;
  };
  const ask = (asked: Asked) =>
    new Promise<Answer>((done, failed) => {
      worker ??= begin();
      last += 1;
      waiting.set(last, { done, failed });
      worker.postMessage({ id: last, ...asked });
    });
  return {
    read: async (file) => (await ask({ ask: "read", file })) as ReadAnswer,
    place: async (placing, draft) => (await ask({ ask: "place", placing, draft })) as Placed,
    close: () => failAll("The page was left."),
  };
}

/** The worker itself, as the builder makes it. */
export function startBringWorker(): Worker {
  return new Worker(new URL("./worker/bring-worker.ts", import.meta.url), { type: "module" });
}
