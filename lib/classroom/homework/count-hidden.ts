import type { Kysely } from "kysely";
import type { Tables } from "../store/tables";
import type { HomeworkTable } from "../store/tables/homework-tables";
import { isSetTo } from "./due";

type Change = {
  /** Exercises that go. */
  readonly takenOut: readonly string[];
  /** Whose work it is afterwards. */
  readonly to: { readonly kind: "all" } | { readonly kind: "some"; readonly memberIds: readonly string[] };
};

/** How many drawings of a homework are shown now and would not be after a change: their exercise or their student goes. */
export async function countHidden(
  all: Kysely<Tables>,
  homework: Readonly<HomeworkTable>,
  { takenOut, to }: Change,
): Promise<number> {
  const rows = await all
    .selectFrom("hand_in")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .innerJoin("member", "member.id", "hand_in.member_id")
    .select(["hand_in.item_id", "hand_in.member_id"])
    .where("homework_item.homework_id", "=", homework.id)
    .where("homework_item.taken_out_at", "is", null)
    .where("member.removed", "=", 0)
    .execute();
  const terms = await all.selectFrom("homework_member").selectAll().where("homework_id", "=", homework.id).execute();
  const shown = rows.filter(({ member_id }) =>
    isSetTo(
      homework,
      terms.find((each) => each.member_id === member_id),
    ),
  );
  const stays = ({ item_id, member_id }: (typeof rows)[number]) =>
    !takenOut.includes(item_id) && (to.kind === "all" || to.memberIds.includes(member_id));
  return shown.filter((row) => !stays(row)).length;
}
