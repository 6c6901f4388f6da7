import { randomUUID } from "node:crypto";
import { type No, no } from "../accounts/answer";
import { cleanName } from "../accounts/person-name";
import type { Store } from "../store/store";
import type { HomeworkItemTable } from "../store/tables/homework-tables";
import { write } from "../store/write";
import { checkExercise } from "./check-exercise";
import { habitHolders } from "./habit-holders";
import type { SetHomework } from "./requests";

/** The text of an exercise of the course; undefined for one the course does not have. */
export type CourseText = (exerciseId: string) => Promise<string | undefined>;

export type HomeworkSet = { readonly ok: true; readonly homeworkId: string };
export type NotSet = No<"no-title" | "no-date" | "no-exercise" | "bad-exercise" | "no-student" | "no-name">;

type ItemRow = Omit<HomeworkItemTable, "id" | "homework_id" | "taken_out_at">;

/** Sets homework to a class: every exercise is checked now and kept as it is now, whatever becomes of the course. */
export async function setHomework(
  store: Store,
  wanted: SetHomework,
  courseText: CourseText,
  now = new Date(),
): Promise<HomeworkSet | NotSet> {
  const rules = readRules(wanted);
  if (!rules.ok) return rules;
  const rows: ItemRow[] = [];
  for (const [i, chosen] of wanted.items.entries()) {
    const row = await itemRow(chosen, i + 1, courseText);
    if ("ok" in row) return row;
    rows.push(row);
  }
  const to = await findStudents(store, wanted);
  if ("ok" in to) return to;
  const homeworkId = randomUUID();
  const put = await write(store, async (all) => {
    await all
      .insertInto("homework")
      .values({
        id: homeworkId,
        class_id: wanted.classId,
        ...rules.columns,
        to_whom: to.kind,
        created_at: now.toISOString(),
        archived: 0,
      })
      .execute();
    await all
      .insertInto("homework_item")
      .values(rows.map((row) => ({ ...row, id: randomUUID(), homework_id: homeworkId })))
      .execute();
    if (to.kind === "some")
      await all
        .insertInto("homework_member")
        .values(
          to.memberIds.map((member_id) => ({
            homework_id: homeworkId,
            member_id,
            due_at: null,
            excused: 0,
            assigned: 1,
          })),
        )
        .execute();
  });
  return put.ok ? { ok: true, homeworkId } : put;
}

type Rules = Omit<SetHomework, "classId" | "items" | "toWhom">;

/** What homework is set with, as its row keeps it, or why it cannot be set so. */
export function readRules({ title: written, dueAt, criteria, ...rules }: Rules) {
  const title = cleanName(written);
  if (title === "") return no("no-title", "Give the homework a title, for example Week one.");
  if (rules.feedback === "after-due" && dueAt === null)
    return no("no-date", "Corrections after the due date need a due date. Choose one, or show corrections at once.");
  const twice = criteria.find(({ name }, i) => criteria.findIndex((each) => each.name === name) < i);
  if (twice) return no("no-name", `Two criteria are called ${twice.name}. Give each a name of its own.`);
  const { attempts, counts, feedback, strictness, hints, weight } = rules;
  const columns = { title, due_at: dueAt, attempts, counts, feedback, strictness, hints, weight };
  return { ok: true, columns: { ...columns, criteria: JSON.stringify(criteria) } } as const;
}

/** An exercise that was chosen, checked and frozen. */
export async function itemRow(
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

type To = { readonly kind: "all" } | { readonly kind: "some"; readonly memberIds: readonly string[] };

/** The students that work is for. */
export async function findStudents(
  { db }: Store,
  { classId, toWhom }: Pick<SetHomework, "classId" | "toWhom">,
): Promise<To | NotSet> {
  if (toWhom.kind === "all") return { kind: "all" };
  const wanted = toWhom.kind === "some" ? new Set(toWhom.memberIds) : await habitHolders(db, classId, toWhom.habit);
  const members = await db
    .selectFrom("member")
    .select("id")
    .where("class_id", "=", classId)
    .where("removed", "=", 0)
    .execute();
  const memberIds = members.map(({ id }) => id).filter((id) => wanted.has(id));
  if (toWhom.kind === "some" && memberIds.length < wanted.size)
    return no("no-student", "One of the students is in this class no more. Load the page anew and choose again.");
  if (memberIds.length === 0)
    return no("no-student", "Nobody in this class holds that habit by what they last handed in.");
  return { kind: "some", memberIds };
}
