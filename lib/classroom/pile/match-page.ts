import type { SheetWork } from "./sheet-works";

/** A student as a pile knows them. `number` is the teacher's own, from the class list. */
export type PileStudent = { readonly memberId: string; readonly name: string; readonly number: string | null };

/** Where a page is taken to belong, and by what. */
export type PagePlace = {
  readonly itemId: string | null;
  /** `only`: no other homework has the exercise. `newest`: others have it too. `put-away`: only homework put away has it. */
  readonly itemBy: "only" | "newest" | "put-away" | "teacher" | null;
  readonly memberId: string | null;
  /** `variant`: the exercise was made for this student. `number`: the sheet's number is the student's. */
  readonly memberBy: "variant" | "number" | "teacher" | null;
};

/**
 * Where a page belongs, by the homework that has its exercise (the newest first) and by the number of its sheet, from 1 or null.
 * What is not known is null: a name written by hand is for the teacher to read.
 */
export function matchPage(
  works: readonly SheetWork[],
  copy: number | null,
  students: readonly PileStudent[],
): PagePlace {
  const open = works.filter(({ archived }) => !archived);
  const work = open[0] ?? works[0];
  if (!work) return { itemId: null, itemBy: null, memberId: null, memberBy: null };
  const itemBy = open.length === 1 ? "only" : open.length > 1 ? "newest" : "put-away";
  return { itemId: work.itemId, itemBy, ...matchStudent(work, copy, students) };
}

/** Whose a page is within one homework, as far as the sheet itself tells. */
export function matchStudent(
  { ownVariant, memberIds }: Pick<SheetWork, "ownVariant" | "memberIds">,
  copy: number | null,
  students: readonly PileStudent[],
): Pick<PagePlace, "memberId" | "memberBy"> {
  const [own, ...more] = memberIds;
  if (ownVariant && own !== undefined && more.length === 0) return { memberId: own, memberBy: "variant" };
  const numbered = students.filter(
    ({ memberId, number }) => copy !== null && isNumber(number, copy) && memberIds.includes(memberId),
  );
  const [one, ...others] = numbered;
  // Two students of one number are told apart by nothing on the sheet.
  if (one && others.length === 0) return { memberId: one.memberId, memberBy: "number" };
  return { memberId: null, memberBy: null };
}

/** `7` and `07` are sheet 7; `7b` is no number. */
function isNumber(written: string | null, copy: number): boolean {
  const digits = written?.trim() ?? "";
  return /^\d{1,9}$/.test(digits) && Number(digits) === copy;
}
