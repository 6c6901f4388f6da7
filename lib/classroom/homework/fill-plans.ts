import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";

type PlanItem = { readonly source: "plan"; readonly planId: string; readonly weight: number };
type OwnItem = { source: "own"; text: string; weight: number };

/**
 * Puts the text of each plan that was chosen from a teacher's library in its place, as it is now. Nobody else's plan is read, and
 * none that is thrown away.
 */
export async function fillPlans<Item extends { readonly source: string }>(
  { db }: Store,
  ownerId: string,
  items: readonly (Item | PlanItem)[],
): Promise<{ readonly ok: true; readonly items: (Exclude<Item, PlanItem> | OwnItem)[] } | No<"no-exercise">> {
  const filled: (Exclude<Item, PlanItem> | OwnItem)[] = [];
  for (const item of items) {
    if (!isPlan(item)) {
      filled.push(item as Exclude<Item, PlanItem>);
      continue;
    }
    const row = await db
      .selectFrom("plan")
      .select("text")
      .where("id", "=", item.planId)
      .where("owner_id", "=", ownerId)
      .where("thrown_at", "is", null)
      .executeTakeFirst();
    if (!row) return no("no-exercise", "One of the plans is in your library no more. Choose another in its place.");
    filled.push({ source: "own", text: row.text, weight: item.weight });
  }
  return { ok: true, items: filled };
}

function isPlan(item: { readonly source: string }): item is PlanItem {
  return item.source === "plan";
}
