import { Agent, type IncomingMessage, request } from "node:http";
import type { LiveState } from "@/lib/classroom/live/live-state";

/** One phone of the benchmark: its own cookie, and its own stream. */
export type Phone = {
  readonly address: string;
  readonly cookie: string;
  /** The newest state the stream has told, and when, by `performance.now()`. */
  readonly seen: () => { readonly state: LiveState; readonly atMs: number } | null;
  readonly close: () => void;
};

/** Nothing is waited for longer. */
export const MOST_WAIT_MS = 60_000;

/** Forms travel on lines that stay open, as a browser's do; each stream has a line of its own. */
const FORMS = new Agent({ keepAlive: true, maxSockets: 400 });

export async function postForm(
  address: string,
  path: string,
  body: unknown,
  cookie: string,
): Promise<{ readonly status: number; readonly reply: Readonly<Record<string, unknown>>; readonly cookie: string }> {
  const text = JSON.stringify(body);
  const headers = {
    "Content-Type": "application/json",
    "Content-Length": Buffer.byteLength(text),
    Origin: address,
    Cookie: cookie,
  };
  const ask = () =>
    new Promise<IncomingMessage | null>((resolve, reject) => {
      const asked = request(`${address}${path}`, { method: "POST", headers, agent: FORMS }, resolve);
      // A line that rested may be closed by the server just when it is used again; a browser then sends once more.
      asked.on("error", (error) => (asked.reusedSocket ? resolve(null) : reject(error)));
      asked.setTimeout(MOST_WAIT_MS, () => asked.destroy(new Error(`No answer from ${path}.`)));
      asked.end(text);
    });
  let answer: IncomingMessage | null = null;
  while (!answer) answer = await ask();
  let said = "";
  for await (const part of answer.setEncoding("utf8")) said += part;
  const cookies = (answer.headers["set-cookie"] ?? []).map((line) => line.split(";")[0] ?? "");
  return { status: answer.statusCode ?? 0, reply: JSON.parse(said), cookie: cookies.join("; ") };
}

/** A guest comes in and looks. */
export async function takePart(address: string, voteId: string): Promise<Phone> {
  const joined = await postForm(address, "/api/live/join", { voteId }, "");
  if (joined.status !== 200) throw new Error(`A phone was not let in: ${JSON.stringify(joined.reply)}`);
  return watch(address, voteId, joined.cookie);
}

/** Someone who was let in looks. */
export function watch(address: string, voteId: string, cookie: string): Phone {
  let seen: ReturnType<Phone["seen"]> = null;
  const stream = request(`${address}/api/live/events?vote=${voteId}`, { headers: { Cookie: cookie }, agent: false });
  stream.on("response", (answer) => {
    let rest = "";
    answer.setEncoding("utf8").on("data", (part: string) => {
      const lines = (rest + part).split("\n");
      rest = lines.pop() ?? "";
      for (const line of lines)
        if (line.startsWith("data: {"))
          seen = { state: JSON.parse(line.slice("data: ".length)) as LiveState, atMs: performance.now() };
    });
    answer.on("error", () => {});
  });
  stream.on("error", () => {});
  stream.end();
  return { address, cookie, seen: () => seen, close: () => stream.destroy() };
}

/** Sends a mark after a while; how long until it was acknowledged, in milliseconds. */
export async function placeMark(
  { address, cookie }: Pick<Phone, "address" | "cookie">,
  voteId: string,
  round: number,
  afterMs: number,
  i: number,
): Promise<number> {
  await new Promise((resolve) => setTimeout(resolve, afterMs));
  const sent = performance.now();
  const body = { voteId, round, at: [Math.sin(i), 1 + Math.cos(i)] };
  const { status, reply } = await postForm(address, "/api/live/guess", body, cookie);
  if (status !== 200) throw new Error(`A mark was not taken: ${JSON.stringify(reply)}`);
  return performance.now() - sent;
}

/** Runs some work for each of many, so many at a time. */
export async function inTurn<In, Out>(
  all: readonly In[],
  atOnce: number,
  work: (one: In) => Promise<Out>,
): Promise<Out[]> {
  const results: Out[] = [];
  let next = 0;
  const worker = async () => {
    for (let i = next++; i < all.length; i = next++) results[i] = await work(all[i] as In);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
  return results;
}

export async function until(done: () => boolean, mostMs: number): Promise<void> {
  const begun = performance.now();
  while (!done()) {
    if (performance.now() - begun > mostMs) throw new Error(`Not done within ${mostMs} ms.`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

/** "p50 12 ms, p95 40 ms, most 55 ms". */
export function sayTimes(times: readonly number[], digits = 0): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) => (sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN).toFixed(digits);
  return `p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, most ${at(1)} ms`;
}
