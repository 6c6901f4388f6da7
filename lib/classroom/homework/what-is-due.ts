import { UNITS } from "../../exercise/exercise";
import { variantId } from "../../generator/variant-id";
import type { Store } from "../store/store";
import type { HandInTable, HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import { dueAt, isLate, isReleased, isSetTo, type Terms } from "./due";
import { attemptsLeft, countingOf } from "./receipt";
import { variantOrder } from "./variant-order";

export type DueItem = {
  readonly itemId: string;
  /** Null for a variant, which has its title only once it is made. */
  readonly title: string | null;
  readonly unit: string | null;
  readonly level: number | null;
  /** The exercise's place among the addresses of the app. */
  readonly exerciseId: string;
  readonly handedIn: number;
  readonly lastAt: string | null;
  readonly attemptsLeft: number | null;
  /** The score that counts; null where there is none or it is kept back. */
  readonly score: number | null;
  /** Whether the one that counts came late. */
  readonly late: boolean;
  /** The drawing that counts, once the student may see it beside the truth. */
  readonly openHandIn: string | null;
};

export type DueWork = {
  readonly classId: string;
  readonly homeworkId: string;
  readonly title: string;
  readonly dueAt: string | null;
  readonly overdue: boolean;
  readonly excused: boolean;
  readonly released: boolean;
  readonly feedback: HomeworkTable["feedback"];
  readonly counts: HomeworkTable["counts"];
  readonly items: readonly DueItem[];
};

/** Everything set to a student and not put away, what is due first at the head; what has no date at the end. */
async function workOf({ db }: Store, memberId: string, now = new Date()): Promise<readonly DueWork[]> {
  const member = await db.selectFrom("member").select("class_id").where("id", "=", memberId).executeTakeFirst();
  if (!member) return [];
  const set = await db
    .selectFrom("homework")
    .selectAll()
    .where("class_id", "=", member.class_id)
    .where("archived", "=", 0)
    .execute();
  const agreed = await db.selectFrom("homework_member").selectAll().where("member_id", "=", memberId).execute();
  const terms = new Map(agreed.map((row) => [row.homework_id, row]));
  const mine = set.filter((homework) => isSetTo(homework, terms.get(homework.id)));
  const ids = ["", ...mine.map(({ id }) => id)];
  const items = await db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "in", ids)
    .where("taken_out_at", "is", null)
    .execute();
  const handIns = await db
    .selectFrom("hand_in")
    .select(["id", "item_id", "score", "late", "received_at"])
    .where("member_id", "=", memberId)
    .orderBy("received_at")
    .orderBy("id")
    .execute();
  const overrides = await db
    .selectFrom("override")
    .select(["item_id", "score"])
    .where("member_id", "=", memberId)
    .execute();
  const own = {
    memberId,
    handIns,
    overrides: new Map(overrides.map(({ item_id, score }) => [item_id, score])),
  };
  return mine
    .map((homework) => workAt(homework, terms.get(homework.id), items, own, now))
    .sort((a, b) => (a.dueAt ?? "9").localeCompare(b.dueAt ?? "9") || (a.homeworkId < b.homeworkId ? -1 : 1));
}

/** What a student has still to do: not excused, with an exercise that was never handed in. */
export async function whatIsDue(store: Store, memberId: string, now = new Date()): Promise<readonly DueWork[]> {
  return (await workOf(store, memberId, now)).filter(isOpen);
}

/** What a student has handed in wholly, or is excused from, with the scores that may be told by now; the newest first. */
export async function resultsOf(store: Store, memberId: string, now = new Date()): Promise<readonly DueWork[]> {
  return (await workOf(store, memberId, now)).filter((work) => !isOpen(work)).reverse();
}

function isOpen({ excused, items }: DueWork): boolean {
  return !excused && items.some(({ handedIn }) => handedIn === 0);
}

type Own = {
  readonly memberId: string;
  readonly handIns: readonly Pick<HandInTable, "id" | "item_id" | "score" | "late" | "received_at">[];
  readonly overrides: ReadonlyMap<string, number>;
};

function workAt(
  homework: Readonly<HomeworkTable>,
  terms: Terms,
  items: readonly Readonly<HomeworkItemTable>[],
  own: Own,
  now: Date,
): DueWork {
  const due = dueAt(homework, terms);
  const released = isReleased(homework, terms, now);
  return {
    classId: homework.class_id,
    homeworkId: homework.id,
    title: homework.title,
    dueAt: due,
    overdue: isLate(due, now),
    excused: terms?.excused === 1,
    released,
    feedback: homework.feedback,
    counts: homework.counts,
    items: items
      .filter((item) => item.homework_id === homework.id)
      .sort((a, b) => a.place - b.place)
      .map((item) => itemAt(item, homework, own, released)),
  };
}

function itemAt(
  item: Readonly<HomeworkItemTable>,
  { counts, attempts }: Readonly<HomeworkTable>,
  { memberId, handIns, overrides }: Own,
  released: boolean,
): DueItem {
  const rows = handIns.filter((row) => row.item_id === item.id);
  const counting = countingOf(rows, counts);
  const { title, exerciseId } = nameOf(item, memberId);
  return {
    itemId: item.id,
    title,
    unit: item.unit,
    level: item.level,
    exerciseId,
    handedIn: rows.length,
    lastAt: rows.at(-1)?.received_at ?? null,
    attemptsLeft: attemptsLeft(attempts, rows.length),
    score: released ? (overrides.get(item.id) ?? counting?.score ?? null) : null,
    late: counting?.late === 1,
    openHandIn: released ? (counting?.id ?? null) : null,
  };
}

/** What an item is called; its own variant's identifier for a student. */
export function nameOf(
  item: Readonly<HomeworkItemTable>,
  memberId: string,
): { readonly title: string | null; readonly exerciseId: string } {
  const unit = UNITS.find((each) => each === item.unit);
  if (item.source === "variant" && unit !== undefined && item.level !== null)
    return { title: null, exerciseId: variantId(variantOrder({ id: item.id, unit, level: item.level }, memberId)) };
  return { title: titleIn(item.exercise), exerciseId: item.exercise_id ?? item.id };
}

function titleIn(text: string | null): string {
  try {
    const { title }: { readonly title?: unknown } = JSON.parse(text ?? "{}");
    return typeof title === "string" ? title : "An exercise";
  } catch {
    return "An exercise";
  }
}
