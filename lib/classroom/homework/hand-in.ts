import type { Kysely } from "kysely";
import { readMarksJson } from "../../exercise/read-marks";
import { asDrawn } from "../../grading/as-drawn";
import { gradeMarks, unaskedMark } from "../../grading/grade-marks";
import { sheetScales } from "../../sheet/choose-scale";
import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import type { HandInTable } from "../store/tables/homework-tables";
import { write } from "../store/write";
import { drawnScale } from "./drawn-scale";
import { countsLate, isSetTo } from "./due";
import { ENGINE_VERSION } from "./engine-version";
import { exerciseFor } from "./exercise-for";
import { findItem, findTerms } from "./find-homework";
import { lockHomework } from "./lock-homework";
import { type Receipt, receiptOf } from "./receipt";
import { trustedMarks } from "./trusted-marks";

/** The most that one set of marks may take, in characters of JSON: ten times the longest exercise's. */
const LONGEST_MARKS = 64 * 1024;

export type HandingIn = {
  /** Made by the student's browser: the same work sent twice is one hand-in. */
  readonly id: string;
  readonly itemId: string;
  readonly memberId: string;
  /** As it came; checked here. */
  readonly marks: unknown;
  readonly madeAt: string;
  /** Of a drawing on paper that the teacher hands in; left out, it is the student's own browser that does. */
  readonly onPaper?: OnPaper;
};

/** What only the teacher's word can say of a drawing on paper. */
export type OnPaper = {
  /** The printed scale, as written: what is near enough follows it. */
  readonly scale: string;
  /** Why it counts as in time whenever it comes in; null where the server's clock decides. */
  readonly inTimeReason: string | null;
};

export type NotHandedIn = No<"gone" | "not-yours" | "bad-marks" | "too-long" | "no-scale" | "no-attempt-left">;

/** Takes a student's marks, once for each id, grades them here, and says what the student may know by now. */
export async function handIn(
  store: Store,
  { id, itemId, memberId, marks: sent, madeAt, onPaper }: HandingIn,
  now = new Date(),
): Promise<{ readonly ok: true; readonly receipt: Receipt } | NotHandedIn> {
  const found = await findItem(store.db, itemId);
  if (!found) return no("gone", "This homework is there no more. Save your marks and show them to your teacher.");
  const { homework, item } = found;
  const terms = await findTerms(store.db, homework.id, memberId);
  // What is here stays acknowledged, whatever has become of the homework since.
  const again = await receiptOf(store.db, { homework, item, memberId, terms }, now, id);
  if (again) return { ok: true, receipt: again };
  if (!isSetTo(homework, terms)) return no("not-yours", "This homework was not set to you.");
  const given = exerciseFor(item, homework, memberId);
  if (!given) return no("gone", "The exercise cannot be read any more. Save your marks and show them to your teacher.");
  const { exercise, text } = given;
  if (onPaper && !sheetScales(exercise.units).some(({ written }) => written === onPaper.scale))
    return no("no-scale", "No sheet of this exercise is printed at that scale. Read the photograph once more.");
  if (JSON.stringify(sent ?? null).length > LONGEST_MARKS) return no("too-long", "These are too many marks at once.");
  const reading = readMarksJson(sent);
  if (!reading.ok) return no("bad-marks", `These marks cannot be read: ${reading.problems[0]?.message ?? "unclear"}.`);
  const marks = {
    ...trustedMarks(exercise, reading.marks),
    scale: onPaper?.scale ?? drawnScale(exercise, reading.marks),
  };
  if (marks.exercise !== exercise.id || (marks.version ?? exercise.version) !== exercise.version)
    return no("bad-marks", "These marks belong to another exercise. Save them and show them to your teacher.");
  if (marks.marks.length === 0 || unaskedMark(exercise, marks) !== null)
    return no("bad-marks", "These marks are not those that the exercise asks for.");
  const grade = gradeMarks(asDrawn(exercise, marks), marks);
  const row: NewRow = {
    id,
    item_id: itemId,
    member_id: memberId,
    exercise: text,
    marks: JSON.stringify(marks),
    score: grade.score,
    grade: JSON.stringify(grade),
    engine_version: ENGINE_VERSION,
    made_at: madeAt,
    received_at: now.toISOString(),
    in_time_reason: onPaper?.inTimeReason ?? null,
  };
  const put = await write(store, (all) => putOnce(all, store, homework.id, row));
  if (!put.ok) return put;
  if (put.value === "others") return no("not-yours", "This hand-in is not yours.");
  if (put.value === "taken-out")
    return no(
      "gone",
      "Your teacher has taken this exercise out of the homework. Save your marks and show them to your teacher.",
    );
  if (put.value === "none-left")
    return no("no-attempt-left", "You have used all attempts at this exercise, so this one does not count.");
  const receipt = await receiptOf(store.db, { homework, item, memberId, terms }, now, id);
  return receipt ? { ok: true, receipt } : no("gone", "What you handed in was erased meanwhile.");
}

/** Whether it is late is found out where it is put down: a date that is changed meanwhile counts. */
type NewRow = Omit<HandInTable, "late">;

/** Puts a hand-in down unless it is there, the exercise was taken out, or the attempts are used up. */
async function putOnce(
  all: Kysely<Tables>,
  { engine }: Store,
  homeworkId: string,
  row: NewRow,
): Promise<"kept" | "others" | "taken-out" | "none-left"> {
  // First of all, as a change does: two that wait for each other's rows would never end.
  const homework = await lockHomework(all, engine, homeworkId, "together");
  const student = all.selectFrom("member").select("id").where("id", "=", row.member_id);
  // Two windows that hand in at once take turns, or both would find the last attempt free; SQLite has one writer anyway.
  await (engine === "postgres" ? student.forUpdate() : student).execute();
  const there = await all
    .selectFrom("hand_in")
    .select(["item_id", "member_id"])
    .where("id", "=", row.id)
    .executeTakeFirst();
  if (there) return there.item_id === row.item_id && there.member_id === row.member_id ? "kept" : "others";
  const item = await all
    .selectFrom("homework_item")
    .select("taken_out_at")
    .where("id", "=", row.item_id)
    .executeTakeFirst();
  if (!homework || !item || item.taken_out_at !== null) return "taken-out";
  const { attempts } = homework;
  const { count } = await all
    .selectFrom("hand_in")
    .select((row_) => row_.fn.countAll<number | string>().as("count"))
    .where("item_id", "=", row.item_id)
    .where("member_id", "=", row.member_id)
    .executeTakeFirstOrThrow();
  if (attempts > 0 && Number(count) >= attempts) return "none-left";
  const own = await findTerms(all, homework.id, row.member_id);
  const late = countsLate(own?.due_at ?? homework.due_at, row) ? 1 : 0;
  const put = await all
    .insertInto("hand_in")
    .values({ ...row, late })
    .onConflict((clash) => clash.column("id").doNothing())
    .returning("id")
    .executeTakeFirst();
  // Another student's browser drew the same id at this very moment.
  return put ? "kept" : "others";
}
