import type { Kysely } from "kysely";
import type { Tables } from "../store/tables";

/** The students of a class who hold a habit, by the last that they handed in of each exercise. */
export async function habitHolders(db: Kysely<Tables>, classId: string, habit: string): Promise<ReadonlySet<string>> {
  return (await habitsHeld(db, classId)).get(habit) ?? new Set();
}

/** Every habit that somebody in a class holds, with who does. */
export async function habitsHeld(
  db: Kysely<Tables>,
  classId: string,
): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
  const rows = await db
    .selectFrom("hand_in")
    .innerJoin("member", "member.id", "hand_in.member_id")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .select(["hand_in.item_id", "hand_in.member_id", "hand_in.grade"])
    .where("member.class_id", "=", classId)
    .where("member.removed", "=", 0)
    .where("homework_item.taken_out_at", "is", null)
    .orderBy("hand_in.received_at")
    .orderBy("hand_in.id")
    .execute();
  const last = new Map(rows.map((row) => [`${row.item_id} ${row.member_id}`, row]));
  const held = new Map<string, Set<string>>();
  for (const { grade, member_id } of last.values())
    for (const id of claimed(grade)) held.set(id, (held.get(id) ?? new Set()).add(member_id));
  return held;
}

/** The habits a stored grade claims; none of one that cannot be read. */
function claimed(grade: string): readonly string[] {
  try {
    const { habits }: { readonly habits?: unknown } = JSON.parse(grade);
    if (!Array.isArray(habits)) return [];
    return habits.flatMap((claim: { readonly id?: unknown } | null) =>
      typeof claim?.id === "string" ? [claim.id] : [],
    );
  } catch {
    return [];
  }
}
