import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import { write } from "../store/write";
import { stepVote, type VoteMove, type VoteStage } from "./vote-stage";

/**
 * Takes a vote a move on. The round says which one the teacher was looking at, so that a press sent twice does not begin
 * another. A guess that was acknowledged before is in what the room then sees.
 */
export async function moveVote(
  store: Store,
  asked: { readonly voteId: string; readonly round: number; readonly move: VoteMove },
): Promise<({ readonly ok: true } & VoteStage) | No<"elsewhere">> {
  const { voteId, round, move } = asked;
  const moved = await write(store, async (all) => {
    const found = all.selectFrom("vote").select(["round", "state"]).where("id", "=", voteId);
    const now = await (store.engine === "postgres" ? found.forUpdate() : found).executeTakeFirst();
    if (!now || now.round !== round) return null;
    const next = stepVote(now, move);
    if (next) await all.updateTable("vote").set(next).where("id", "=", voteId).execute();
    return next;
  });
  if (!moved.ok) return moved;
  if (!moved.value) return no("elsewhere", "The vote had moved on already.");
  return { ok: true, ...moved.value };
}
