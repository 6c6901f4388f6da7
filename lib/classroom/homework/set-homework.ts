import { randomUUID } from "node:crypto";
import { type No, no } from "../accounts/answer";
import { cleanName } from "../accounts/person-name";
import type { Store } from "../store/store";
import type { HomeworkItemTable } from "../store/tables";
import { write } from "../store/write";
import { checkExercise } from "./check-exercise";
import { habitHolders } from "./habit-holders";
import type { SetHomework } from "./requests";

/** The text of an exercise of the course; undefined for one the course does not have. */
export type CourseText = (exerciseId: string) => Promise<string | undefined>;

export type HomeworkSet = { readonly ok: true; readonly homeworkId: string };
export type NotSet = No<"no-title" | "no-date" | "no-exercise" | "bad-exercise" | "no-student" | "no-name">;

type ItemRow = Omit<HomeworkItemTable, "id" | "homework_id">;

/** Sets homework to a class: every exercise is checked now and kept as it is now, whatever becomes of the course. */
export async function setHomework(
  store: Store,
  wanted: SetHomework,
  courseText: CourseText,
  now = new Date(),
): Promise<HomeworkSet | NotSet> {
  const title = cleanName(wanted.title);
  if (title === "") return no("no-title", "Give the homework a title, for example Week one.");
  if (wanted.feedback === "after-due" && wanted.dueAt === null)
    return no("no-date", "Corrections after the due date need a due date. Choose one, or show corrections at once.");
  const twice = wanted.criteria.find(({ name }, i) => wanted.criteria.findIndex((each) => each.name === name) < i);
  if (twice) return no("no-name", `Two criteria are called ${twice.name}. Give each a name of its own.`);
  const rows: ItemRow[] = [];
  for (const [i, chosen] of wanted.items.entries()) {
    const row = await itemRow(chosen, i + 1, courseText);
    if ("ok" in row) return row;
    rows.push(row);
  }
  const to = await findStudents(store, wanted);
  if (to !== "all" && !Array.isArray(to)) return to as NotSet;
  const homeworkId = randomUUID();
  const put = await write(store, async (all) => {
    await all
      .insertInto("homework")
      .values({
        id: homeworkId,
        class_id: wanted.classId,
        title,
        due_at: wanted.dueAt,
        attempts: wanted.attempts,
        counts: wanted.counts,
        feedback: wanted.feedback,
        strictness: wanted.strictness,
        hints: wanted.hints,
        to_whom: to === "all" ? "all" : "some",
        weight: wanted.weight,
        criteria: JSON.stringify(wanted.criteria),
        created_at: now.toISOString(),
        archived: 0,
      })
      .execute();
    await all
      .insertInto("homework_item")
      .values(rows.map((row) => ({ ...row, id: randomUUID(), homework_id: homeworkId })))
      .execute();
    if (to !== "all")
      await all
        .insertInto("homework_member")
        .values(to.map((member_id) => ({ homework_id: homeworkId, member_id, due_at: null, excused: 0, assigned: 1 })))
        .execute();
  });
  return put.ok ? { ok: true, homeworkId } : put;
}

async function itemRow(
  chosen: SetHomework["items"][number],
  place: number,
  courseText: CourseText,
): Promise<ItemRow | NotSet> {
  const { source, weight } = chosen;
  if (source === "variant")
    return { place, source, exercise_id: null, unit: chosen.unit, level: chosen.level, exercise: null, weight };
  const text = source === "own" ? chosen.text : await courseText(chosen.exerciseId);
  if (text === undefined)
    return no("no-exercise", "One of the exercises is in the course no more. Choose another in its place.");
  const checked = checkExercise(text);
  if (!checked.ok)
    return no("bad-exercise", `Exercise ${place} cannot be set as it stands. ${checked.sentences.join(" ")}`);
  const { id, unit, level } = checked.exercise;
  return { place, source, exercise_id: id, unit, level, exercise: text.replace(/^\uFEFF/, ""), weight };
}

async function findStudents({ db }: Store, { classId, toWhom }: SetHomework): Promise<"all" | string[] | NotSet> {
  if (toWhom.kind === "all") return "all";
  const wanted = toWhom.kind === "some" ? new Set(toWhom.memberIds) : await habitHolders(db, classId, toWhom.habit);
  const members = await db
    .selectFrom("member")
    .select("id")
    .where("class_id", "=", classId)
    .where("removed", "=", 0)
    .execute();
  const found = members.map(({ id }) => id).filter((id) => wanted.has(id));
  if (toWhom.kind === "some" && found.length < wanted.size)
    return no("no-student", "One of the students is in this class no more. Load the page anew and choose again.");
  if (found.length === 0) return no("no-student", "Nobody in this class holds that habit by what they last handed in.");
  return found;
}
