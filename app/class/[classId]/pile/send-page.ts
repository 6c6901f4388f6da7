import { newId } from "@/app/_parts/hand-ins/new-id";
import { marksOf } from "@/app/_photo/checked-drawing";
import type { PageRead, ReadPage } from "./page-state";
import type { PileStore } from "./pile-store";

/** Sends one confirmed page to the gradebook; where that fails it says why, and can be sent again. */
export async function sendPage(store: PileStore, { id, state }: PageRead): Promise<void> {
  const { itemId, memberId } = state;
  if (itemId === null || memberId === null || state.taken !== null || state.sending) return;
  const before = state.sentAs;
  const same = before?.itemId === itemId && before.memberId === memberId;
  const sentAs = same ? before : { id: newId(), itemId, memberId };
  store.getState().settle(id, { sending: true, sentAs });
  store.getState().settle(id, { sending: false, ...(await post(state, sentAs)) });
}

async function post(
  { drawing, late }: ReadPage,
  sentAs: NonNullable<ReadPage["sentAs"]>,
): Promise<Pick<ReadPage, "taken" | "complaint">> {
  try {
    const answer = await fetch("/api/class/pile", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ ...sentAs, marks: marksOf(drawing), madeAt: new Date().toISOString(), late }),
    });
    const reply = (await answer.json()) as Reply;
    if (!reply.ok) return { taken: null, complaint: reply.sentence };
    const { receivedAt, late: wasLate, result } = reply.receipt;
    return { taken: { receivedAt, late: wasLate, score: result?.score ?? null }, complaint: null };
  } catch {
    return { taken: null, complaint: "The server cannot be reached. Confirm it again when the network is back." };
  }
}

type Reply =
  | { readonly ok: false; readonly sentence: string }
  | {
      readonly ok: true;
      readonly receipt: {
        readonly receivedAt: string;
        readonly late: boolean;
        readonly result: { readonly score: number | null } | null;
      };
    };
