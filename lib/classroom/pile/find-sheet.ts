import type { Kysely } from "kysely";
import type { Exercise } from "../../exercise/exercise";
import { readVariantId } from "../../generator/variant-id";
import { isSetTo } from "../homework/due";
import { exerciseFor, mayBeVariant } from "../homework/exercise-for";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import type { HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import type { FindSheet } from "./requests";
import type { FoundSheet, SheetWork } from "./sheet-works";

type Item = Readonly<HomeworkItemTable>;
type Homework = Readonly<HomeworkTable>;
type Agreed = Awaited<ReturnType<typeof agreedIn>>[number];
type Fit = { readonly item: Item; readonly exercise: Exercise; readonly memberIds: readonly string[] };

/**
 * Which of a class's homework a printed sheet belongs to, by the exercise and the version that its code names. An exercise that
 * was made for one student is found by that student's alone; of what was set to some, only they are named.
 */
export async function findSheet({ db }: Store, { classId, exercise: id, version }: FindSheet): Promise<FoundSheet> {
  const homework = await db.selectFrom("homework").selectAll().where("class_id", "=", classId).execute();
  const homeworkIds = ["", ...homework.map((each) => each.id)];
  const items = await db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "in", homeworkIds)
    .where("taken_out_at", "is", null)
    .execute();
  const members = await db
    .selectFrom("member")
    .select("id")
    .where("class_id", "=", classId)
    .where("removed", "=", 0)
    .execute();
  const agreed = await agreedIn(db, homeworkIds);
  const fits = items.flatMap((item): Fit[] => {
    const set = homework.find((each) => each.id === item.homework_id);
    if (!set) return [];
    const to = members.map((member) => member.id).filter((memberId) => isSetTo(set, termsOf(agreed, set, memberId)));
    return item.source === "variant" ? variantFits(item, set, to, id) : frozenFits(item, set, to, id);
  });
  const [same, others] = [
    fits.filter(({ exercise }) => exercise.version === version),
    fits.filter(({ exercise }) => exercise.version !== version),
  ];
  const [first] = same;
  if (!first) {
    const [other] = others;
    if (!other) return { kind: "not-set" };
    const versions = [...new Set(others.map(({ exercise }) => exercise.version))].sort((a, b) => a - b);
    return { kind: "other-version", title: other.exercise.title, versions };
  }
  const handedIn = await handedInOf(
    db,
    same.map(({ item }) => item.id),
  );
  const works = same.map((fit) =>
    workOf(
      fit,
      homework.find((each) => each.id === fit.item.homework_id),
      agreed,
      handedIn,
    ),
  );
  return {
    kind: "set",
    exercise: first.exercise,
    works: works.sort((a, b) => (a.setAt < b.setAt ? 1 : a.setAt > b.setAt ? -1 : a.itemId < b.itemId ? -1 : 1)),
  };
}

/** Exercises that were frozen as they were set, whoever draws them. */
function frozenFits(item: Item, set: Homework, to: readonly string[], id: string): Fit[] {
  if (item.exercise_id !== id) return [];
  const given = exerciseFor(item, set, "");
  return given ? [{ item, exercise: given.exercise, memberIds: to }] : [];
}

/** Another exercise for each student: only those are made whose number could be the sheet's. */
function variantFits(item: Item, set: Homework, to: readonly string[], id: string): Fit[] {
  const order = readVariantId(id);
  if (!order) return [];
  const own = to.flatMap((memberId) => {
    const given = mayBeVariant(item, memberId, order) ? exerciseFor(item, set, memberId) : null;
    return given?.exercise.id === id ? [{ memberId, exercise: given.exercise }] : [];
  });
  const [first] = own;
  // Two students can draw the same number.
  return first ? [{ item, exercise: first.exercise, memberIds: own.map(({ memberId }) => memberId) }] : [];
}

function workOf(
  { item, memberIds }: Fit,
  set: Homework | undefined,
  agreed: readonly Agreed[],
  handedIn: readonly { readonly item_id: string; readonly member_id: string }[],
): SheetWork {
  if (!set) throw new Error("An exercise was found in no homework.");
  const times: Record<string, number> = {};
  for (const row of handedIn) if (row.item_id === item.id) times[row.member_id] = (times[row.member_id] ?? 0) + 1;
  return {
    itemId: item.id,
    homeworkId: set.id,
    homework: set.title,
    setAt: set.created_at,
    dueAt: set.due_at,
    archived: set.archived === 1,
    memberIds,
    ownVariant: item.source === "variant",
    excused: memberIds.filter((memberId) => termsOf(agreed, set, memberId)?.excused === 1),
    handedIn: times,
  };
}

function termsOf(agreed: readonly Agreed[], { id }: Homework, memberId: string): Agreed | undefined {
  return agreed.find((row) => row.homework_id === id && row.member_id === memberId);
}

function agreedIn(db: Kysely<Tables>, homeworkIds: readonly string[]) {
  return db.selectFrom("homework_member").selectAll().where("homework_id", "in", homeworkIds).execute();
}

function handedInOf(db: Kysely<Tables>, itemIds: readonly string[]) {
  return db.selectFrom("hand_in").select(["item_id", "member_id"]).where("item_id", "in", itemIds).execute();
}
