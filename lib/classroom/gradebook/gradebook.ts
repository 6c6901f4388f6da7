import type { HomeworkTable } from "../store/tables/homework-tables";

/** A criterion of the teacher's own, and the most points it gives. */
export type Criterion = { readonly name: string; readonly points: number };

/** One exercise of one homework. */
export type Column = {
  readonly itemId: string;
  readonly title: string;
  /** For a link to the course; null for a variant or a teacher's own. */
  readonly exerciseId: string | null;
  readonly weight: number;
};

export type Work = {
  readonly id: string;
  readonly title: string;
  /** ISO 8601, as all times here. */
  readonly setAt: string;
  readonly dueAt: string | null;
  readonly counts: HomeworkTable["counts"];
  readonly weight: number;
  readonly toAll: boolean;
  readonly criteria: readonly Criterion[];
  readonly columns: readonly Column[];
};

export type Student = { readonly memberId: string; readonly name: string; readonly number: string | null };

/** What was arranged with one student about one homework. */
export type Arrangement = {
  readonly homeworkId: string;
  readonly memberId: string;
  readonly dueAt: string | null;
  readonly excused: boolean;
  readonly assigned: boolean;
};

export type Attempt = {
  readonly id: string;
  readonly itemId: string;
  readonly memberId: string;
  /** 0 to 100; null where nothing was marked. */
  readonly score: number | null;
  /** By the server's clock, ISO 8601. */
  readonly receivedAt: string;
  /** By the student's own clock, which nothing goes by; null where nobody knows. */
  readonly madeAt: string | null;
  /** Why the teacher counts it as in time though it came late; null where nobody said so. */
  readonly inTimeReason: string | null;
};

export type Override = {
  readonly itemId: string;
  readonly memberId: string;
  readonly score: number;
  readonly reason: string;
  readonly at: string;
};

export type Points = {
  readonly itemId: string;
  readonly memberId: string;
  readonly criterion: string;
  readonly points: number;
};

/** All that a gradebook is made of, as the store has it. */
export type GradebookRows = {
  readonly work: readonly Work[];
  readonly students: readonly Student[];
  readonly arrangements: readonly Arrangement[];
  readonly attempts: readonly Attempt[];
  readonly overrides: readonly Override[];
  readonly points: readonly Points[];
};

/**
 * Where an exercise stands with a student. `waiting`: nothing handed in, and not due. `missing`: nothing handed in, and due.
 * `not-set`: it was set to others.
 */
export type CellState = "scored" | "waiting" | "missing" | "excused" | "not-set";

export type Cell = {
  readonly itemId: string;
  readonly memberId: string;
  readonly state: CellState;
  /** The score that counts, 0 to 100: the teacher's where there is one, 0 where missing, else null where nothing counts. */
  readonly score: number | null;
  /** The program's own score of the attempt that counts, beside an override. */
  readonly graded: number | null;
  /** The attempt that counts came after it was due, and nobody has counted it as in time. */
  readonly late: boolean;
  /** Why the attempt that counts, which came late, counts as in time; null for any other. */
  readonly inTimeReason: string | null;
  readonly attempts: number;
  /** The attempt that counts. */
  readonly handInId: string | null;
  readonly receivedAt: string | null;
  readonly madeAt: string | null;
  /** When it was due for this student. */
  readonly dueAt: string | null;
  readonly override: { readonly score: number; readonly reason: string; readonly at: string } | null;
  /** Points by the teacher's own criteria, in their order; null where not given yet. */
  readonly points: readonly (number | null)[];
};

export type Row = {
  readonly student: Student;
  /** In the order of the columns. */
  readonly cells: readonly Cell[];
  /** Weighted mean of what counts, 0 to 100; null while nothing does. */
  readonly mean: number | null;
};

export type Gradebook = { readonly work: readonly Work[]; readonly rows: readonly Row[] };
