import type { Store } from "../store/store";
import type { HomeworkItemTable } from "../store/tables/homework-tables";
import type { GradebookRows } from "./gradebook";
import { readCriteria } from "./read-criteria";

/** Everything a class's gradebook is made of. Archived homework is left out, and so are students whose place was taken away. */
export async function readGradebook({ db }: Store, classId: string): Promise<GradebookRows> {
  const homework = await db
    .selectFrom("homework")
    .selectAll()
    .where("class_id", "=", classId)
    .where("archived", "=", 0)
    .execute();
  const members = await db
    .selectFrom("member")
    .select(["id", "name", "number"])
    .where("class_id", "=", classId)
    .where("removed", "=", 0)
    .execute();
  // An empty list is no SQL.
  const sets = ["", ...homework.map(({ id }) => id)];
  const items = await db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "in", sets)
    .where("taken_out_at", "is", null)
    .execute();
  const ids = ["", ...items.map(({ id }) => id)];
  const arrangements = await db.selectFrom("homework_member").selectAll().where("homework_id", "in", sets).execute();
  const attempts = await db
    .selectFrom("hand_in")
    .select(["id", "item_id as itemId", "member_id as memberId", "score", "received_at as receivedAt"])
    .select(["made_at as madeAt", "in_time_reason as inTimeReason"])
    .where("item_id", "in", ids)
    .execute();
  const overrides = await db.selectFrom("override").selectAll().where("item_id", "in", ids).execute();
  const points = await db.selectFrom("criterion_score").selectAll().where("item_id", "in", ids).execute();
  return {
    work: homework
      .sort((a, b) => (a.created_at < b.created_at ? -1 : a.created_at > b.created_at ? 1 : a.id < b.id ? -1 : 1))
      .map((each) => ({
        id: each.id,
        title: each.title,
        setAt: each.created_at,
        dueAt: each.due_at,
        counts: each.counts,
        weight: each.weight,
        toAll: each.to_whom === "all",
        criteria: readCriteria(each.criteria),
        columns: items
          .filter(({ homework_id }) => homework_id === each.id)
          .sort((a, b) => a.place - b.place)
          .map((item) => ({
            itemId: item.id,
            title: titleOf(item),
            exerciseId: item.exercise_id,
            weight: item.weight,
          })),
      })),
    students: members.map(({ id, name, number }) => ({ memberId: id, name, number })),
    arrangements: arrangements.map((each) => ({
      homeworkId: each.homework_id,
      memberId: each.member_id,
      dueAt: each.due_at,
      excused: each.excused === 1,
      assigned: each.assigned === 1,
    })),
    attempts,
    overrides: overrides.map(({ item_id, member_id, ...rest }) => ({ itemId: item_id, memberId: member_id, ...rest })),
    points: points.map(({ item_id, member_id, ...rest }) => ({ itemId: item_id, memberId: member_id, ...rest })),
  };
}

/** What an exercise is called: the title in its file, else its id; of variants, what they are variants of. */
export function titleOf(item: Pick<HomeworkItemTable, "exercise" | "exercise_id" | "unit" | "level">): string {
  const written = item.exercise === null ? undefined : titleIn(item.exercise);
  if (written !== undefined) return written;
  if (item.exercise_id !== null) return item.exercise_id;
  return item.unit === null ? "An exercise" : `Made anew: ${item.unit}, level ${item.level ?? 1}`;
}

function titleIn(exercise: string): string | undefined {
  try {
    const written: unknown = JSON.parse(exercise);
    return typeof written === "object" && written !== null && "title" in written && typeof written.title === "string"
      ? written.title
      : undefined;
  } catch {
    return undefined;
  }
}
