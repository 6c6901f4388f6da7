/** What a worker sends back to a question of that number: how far it is, what came of it, or why nothing did. */
type FromWorker<Answer> = { readonly id: number } & (
  | { readonly step: string }
  | { readonly answer: Answer }
  | { readonly failed: string }
);

type Waiting<Answer> = {
  readonly done: (answer: Answer) => void;
  readonly failed: (error: Error) => void;
  readonly step: (words: string) => void;
};

export type WorkerAsker<Asked, Answer> = {
  readonly ask: (asked: Asked, step?: (words: string) => void, handOver?: Transferable[]) => Promise<Answer>;
  readonly close: () => void;
};

/**
 * Asks a worker, which is started at the first question; each answer comes in its own time, and a failure is an error in words.
 * `notStarted` says that the worker cannot be had.
 */
export function askWorker<Asked extends object, Answer>(
  start: () => Worker,
  notStarted: string,
): WorkerAsker<Asked, Answer> {
  let worker: Worker | null = null;
  let last = 0;
  const waiting = new Map<number, Waiting<Answer>>();

  const failAll = (words: string) => {
    for (const { failed } of waiting.values()) failed(new Error(words));
    waiting.clear();
    worker?.terminate();
    worker = null;
  };
  const begin = () => {
    const begun = start();
    begun.onmessage = ({ data }: MessageEvent<FromWorker<Answer>>) => {
      const one = waiting.get(data.id);
      if (!one) return;
      if ("step" in data) return one.step(data.step);
      waiting.delete(data.id);
      if ("answer" in data) one.done(data.answer);
      else one.failed(new Error(data.failed));
    };
    begun.onerror = () => failAll(notStarted);
    return begun;
  };
  return {
    ask: (asked, step = () => {}, handOver = []) =>
      new Promise<Answer>((done, failed) => {
        worker ??= begin();
        last += 1;
        waiting.set(last, { done, failed, step });
        worker.postMessage({ id: last, ...asked }, handOver);
      }),
    close: () => failAll("The page was left."),
  };
}
