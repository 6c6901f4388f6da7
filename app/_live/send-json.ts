export type Reply = {
  readonly ok: boolean;
  readonly reason?: string;
  readonly sentence?: string;
  readonly [part: string]: unknown;
};

/** What a server that cannot be reached would say. */
const UNREACHED: Reply = {
  ok: false,
  reason: "unreached",
  sentence: "The server cannot be reached just now.",
};

/** Sends a form of the live pages and gives back what the server says; what cannot be sent is an answer too. */
export async function sendJson(path: string, body: unknown): Promise<Reply> {
  try {
    const answer = await fetch(path, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
    });
    return (await answer.json()) as Reply;
  } catch {
    return UNREACHED;
  }
}
