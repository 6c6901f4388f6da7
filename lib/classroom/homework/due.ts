import type { HandInTable, HomeworkMemberTable, HomeworkTable } from "../store/tables/homework-tables";

type Homework = Readonly<Pick<HomeworkTable, "due_at" | "to_whom" | "feedback">>;
/** What is agreed with one student; nothing where nothing was. */
export type Terms = Readonly<Pick<HomeworkMemberTable, "due_at" | "excused" | "assigned">> | undefined;

/** When the work is due for this student, ISO 8601 in UTC; null for any time. */
export function dueAt(homework: Homework, terms: Terms): string | null {
  return terms?.due_at ?? homework.due_at;
}

/** Whether the work was set to this student. */
export function isSetTo(homework: Homework, terms: Terms): boolean {
  return homework.to_whom === "all" || terms?.assigned === 1;
}

/** Whether work that comes in now is late, by the server's clock; at the very moment it is due it is not. */
export function isLate(due: string | null, now: Date): boolean {
  return due !== null && now.getTime() > Date.parse(due);
}

/**
 * Whether what came in counts as late: by when the server received it, for a browser's clock is not believed. Never where the
 * teacher has counted it as in time.
 */
export function countsLate(
  due: string | null,
  { received_at, in_time_reason }: Readonly<Pick<HandInTable, "received_at" | "in_time_reason">>,
): boolean {
  return in_time_reason === null && isLate(due, new Date(received_at));
}

/** Whether this student may see marks and the truth by now. Work kept back without a due date stays kept back. */
export function isReleased(homework: Homework, terms: Terms, now: Date): boolean {
  if (homework.feedback === "at-once") return true;
  return isLate(dueAt(homework, terms), now);
}
