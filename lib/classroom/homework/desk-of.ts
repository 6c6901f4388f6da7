import type { Exercise } from "../../exercise/exercise";
import type { MarkSet } from "../../exercise/marks";
import { mayDo } from "../access/may-do";
import type { Person } from "../access/person";
import type { Store } from "../store/store";
import { isSetTo } from "./due";
import { exerciseFor } from "./exercise-for";
import { findItem, findTerms, placeIn, workSubject } from "./find-homework";
import { handInsOf, type Receipt, receiptOf } from "./receipt";

/** What a student needs to do one exercise of their homework. */
export type Desk = {
  readonly itemId: string;
  readonly memberId: string;
  readonly classId: string;
  readonly homework: string;
  readonly exercise: Exercise;
  /** Corrections and scores are not shown yet. */
  readonly held: boolean;
  readonly dueAt: string | null;
  readonly attemptsLeft: number | null;
  /** The last hand-in; its marks only once they may be seen with their corrections. */
  readonly last: { readonly receipt: Receipt; readonly marks: MarkSet | null } | null;
};

/** The desk of whoever asks at one exercise; undefined for everyone whose work it is not. */
export async function deskOf(
  store: Store,
  person: Person,
  itemId: string,
  now = new Date(),
): Promise<Desk | undefined> {
  const found = await findItem(store.db, itemId);
  const memberId = found && placeIn(person, found.homework.class_id);
  if (!found || memberId === undefined || found.item.taken_out_at !== null) return undefined;
  const { homework, item } = found;
  const terms = await findTerms(store.db, homework.id, memberId);
  const subject = workSubject(found, memberId, terms, now);
  if (!mayDo(person, "do-homework", subject) || !isSetTo(homework, terms)) return undefined;
  const given = exerciseFor(item, homework, memberId);
  if (!given) return undefined;
  const held = !mayDo(person, "see-result", subject);
  const row = (await handInsOf(store.db, itemId, memberId)).at(-1);
  const receipt = row && (await receiptOf(store.db, { homework, item, memberId, terms }, now, row.id));
  return {
    itemId,
    memberId,
    classId: homework.class_id,
    homework: homework.title,
    exercise: given.exercise,
    held,
    dueAt: terms?.due_at ?? homework.due_at,
    attemptsLeft: receipt ? receipt.attemptsLeft : homework.attempts === 0 ? null : homework.attempts,
    last: row && receipt ? { receipt, marks: held ? null : (JSON.parse(row.marks) as MarkSet) } : null,
  };
}
