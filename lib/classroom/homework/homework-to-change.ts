import type { Store } from "../store/store";
import type { HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import { nameOf } from "./what-is-due";

export type ItemToChange = Readonly<HomeworkItemTable> & {
  /** Null for a variant. */
  readonly title: string | null;
  /** How many drawings of it were handed in. */
  readonly drawings: number;
};

/** Every exercise that is in a homework or was taken out of it, by place, and the students it is set to by name. */
export async function homeworkToChange(
  { db }: Pick<Store, "db">,
  homework: Readonly<HomeworkTable>,
): Promise<{ readonly items: readonly ItemToChange[]; readonly memberIds: readonly string[] }> {
  const items = await db.selectFrom("homework_item").selectAll().where("homework_id", "=", homework.id).execute();
  const counts = await db
    .selectFrom("hand_in")
    .select(["item_id", (row) => row.fn.countAll<number | string>().as("count")])
    .where("item_id", "in", ["", ...items.map(({ id }) => id)])
    .groupBy("item_id")
    .execute();
  const members = await db
    .selectFrom("homework_member")
    .innerJoin("member", "member.id", "homework_member.member_id")
    .select("member_id")
    .where("homework_id", "=", homework.id)
    .where("assigned", "=", 1)
    .where("member.removed", "=", 0)
    .execute();
  return {
    items: items
      .sort((a, b) => a.place - b.place)
      .map((item) => ({
        ...item,
        title: nameOf(item, "").title,
        drawings: Number(counts.find(({ item_id }) => item_id === item.id)?.count ?? 0),
      })),
    memberIds: members.map(({ member_id }) => member_id),
  };
}
