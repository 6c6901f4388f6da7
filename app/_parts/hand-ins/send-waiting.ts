import { isRecord } from "../kept-work/read-attempt";
import { type KeptReceipt, readReceipt, type Waiting } from "./waiting";

/** Refusals that no second try will change. */
const FOR_GOOD: readonly unknown[] = ["gone", "not-yours", "bad-marks", "too-long", "no-attempt-left", "unclear"];

export type Sent =
  | { readonly kind: "taken"; readonly receipt: KeptReceipt }
  | { readonly kind: "refused"; readonly sentence: string }
  /** No word, or a word that may be another one later; null where the server was not reached. */
  | { readonly kind: "later"; readonly sentence: string | null };

/** Sends one hand-in. The same may be sent any number of times: the server keeps it once. */
export async function sendWaiting({ id, itemId, memberId, marks, madeAt }: Waiting): Promise<Sent> {
  let reply: unknown;
  try {
    const answer = await fetch("/api/class/hand-in", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ id, itemId, memberId, marks, madeAt }),
    });
    reply = await answer.json();
  } catch {
    return { kind: "later", sentence: null };
  }
  if (!isRecord(reply)) return { kind: "later", sentence: null };
  const receipt = reply.ok === true ? readReceipt(reply.receipt) : null;
  if (receipt) return { kind: "taken", receipt };
  const sentence = typeof reply.sentence === "string" ? reply.sentence : null;
  if (sentence !== null && FOR_GOOD.includes(reply.reason)) return { kind: "refused", sentence };
  return { kind: "later", sentence };
}
