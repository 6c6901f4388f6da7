import type { Arrangement, Attempt, Cell, CellState, Column, Override, Points, Student, Work } from "./gradebook";

export type CellRows = {
  readonly work: Pick<Work, "dueAt" | "counts" | "toAll" | "criteria">;
  readonly column: Pick<Column, "itemId">;
  readonly student: Pick<Student, "memberId">;
  readonly arrangement: Arrangement | undefined;
  /** Of this student at this exercise, in any order. */
  readonly attempts: readonly Attempt[];
  readonly override: Override | undefined;
  readonly points: readonly Points[];
};

/**
 * Where one exercise stands with one student at `now` (ISO 8601). A due date of the student's own goes before the homework's,
 * also for what has come in already. An override stands whatever was handed in, but not against being excused.
 */
export function fillCell(rows: CellRows, now: string): Cell {
  const { work, arrangement, override, attempts } = rows;
  const { itemId } = rows.column;
  const { memberId } = rows.student;
  const dueAt = arrangement?.dueAt ?? work.dueAt;
  const counting = attemptThatCounts(attempts, work.counts);
  const graded = counting?.score ?? null;
  const state = stateOf(rows, graded, dueAt !== null && now > dueAt);
  const own = override ? override.score : graded;
  const cameLate = counting !== undefined && dueAt !== null && counting.receivedAt > dueAt;
  const inTimeReason = cameLate ? counting.inTimeReason : null;
  return {
    itemId,
    memberId,
    state,
    score: state === "scored" ? own : state === "missing" ? 0 : null,
    graded,
    late: cameLate && inTimeReason === null,
    inTimeReason,
    attempts: attempts.length,
    handInId: counting?.id ?? null,
    receivedAt: counting?.receivedAt ?? null,
    madeAt: counting?.madeAt ?? null,
    dueAt,
    override: override ? { score: override.score, reason: override.reason, at: override.at } : null,
    points: work.criteria.map(({ name }) => rows.points.find(({ criterion }) => criterion === name)?.points ?? null),
  };
}

function stateOf({ work, arrangement, override }: CellRows, graded: number | null, isDue: boolean): CellState {
  if (arrangement?.excused) return "excused";
  if (override) return "scored";
  if (!work.toAll && !arrangement?.assigned) return "not-set";
  if (graded !== null) return "scored";
  return isDue ? "missing" : "waiting";
}

/** The best attempt, of equal ones the first; or the last to come in. An attempt without a score counts only if none has one. */
function attemptThatCounts(attempts: readonly Attempt[], counts: Work["counts"]): Attempt | undefined {
  const inOrder = [...attempts].sort((a, b) => order(a.receivedAt, b.receivedAt) || order(a.id, b.id));
  const scored = inOrder.filter(({ score }) => score !== null);
  if (scored.length === 0 || counts === "last") return (scored.length === 0 ? inOrder : scored).at(-1);
  return scored.reduce((best, each) => ((each.score ?? 0) > (best.score ?? 0) ? each : best));
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
