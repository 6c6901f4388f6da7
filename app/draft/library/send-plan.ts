import { nameOfText } from "@/app/_parts/own-exercise/name-of-text";

/** What became of a plan that was sent to the library. */
export type Sent =
  | {
      readonly kind: "kept";
      readonly where: "plan" | "beside";
      readonly edition: number;
      readonly changedAt: string;
    }
  | { readonly kind: "refused"; readonly reason: string; readonly sentence: string }
  /** No answer came: whether it arrived is not known, and sending it again does no harm. */
  | { readonly kind: "unreached" };

type ToSend = { readonly planId: string; readonly base: number; readonly text: string; readonly words: string };

type Reply = {
  readonly ok: boolean;
  readonly kept?: "plan" | "beside";
  readonly edition?: number;
  readonly changedAt?: string;
  readonly reason?: string;
  readonly sentence?: string;
};

/**
 * Sends a plan to the library of whoever is signed in. Where an earlier one had arrived though no answer came (`unanswered` is its
 * text's short name), it is no other browser's: this one goes on from it.
 */
export async function sendOn(plan: ToSend, unanswered: string | null): Promise<Sent> {
  const sent = await sendPlan(plan);
  if (sent.kind !== "kept" || sent.where === "plan" || unanswered === null) return sent;
  try {
    const answer = await fetch(`/api/class/plan?planId=${encodeURIComponent(plan.planId)}`);
    const mine = answer.ok && nameOfText(await answer.text()) === unanswered;
    return mine ? await sendPlan({ ...plan, base: sent.edition }) : sent;
  } catch {
    return sent;
  }
}

async function sendPlan(plan: ToSend): Promise<Sent> {
  try {
    const answer = await fetch("/api/class/keep-plan", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(plan),
    });
    const { ok, kept, edition, changedAt, reason = "", sentence = "" } = (await answer.json()) as Reply;
    if (ok && kept && edition !== undefined && changedAt) return { kind: "kept", where: kept, edition, changedAt };
    return { kind: "refused", reason, sentence };
  } catch {
    return { kind: "unreached" };
  }
}
