import { fillCell } from "./fill-cell";
import type { Cell, Gradebook, GradebookRows, Student, Work } from "./gradebook";
import { weightedMean } from "./weighted-mean";

/**
 * The gradebook at `now` (ISO 8601): students by name, and for each every exercise that was set. A student's mean is that of
 * the homework by its weight, and a homework's that of its exercises by theirs. What is excused, set to others, or neither
 * handed in nor due is left out of both; what is missing counts 0.
 */
export function makeGradebook(rows: GradebookRows, now: string): Gradebook {
  const attempts = group(rows.attempts, cellKey);
  const points = group(rows.points, cellKey);
  const overrides = group(rows.overrides, cellKey);
  const arrangements = group(rows.arrangements, ({ homeworkId, memberId }) => `${homeworkId} ${memberId}`);
  const cellsOf = (student: Student, work: Work) =>
    work.columns.map((column) => {
      const key = cellKey({ itemId: column.itemId, memberId: student.memberId });
      return fillCell(
        {
          work,
          column,
          student,
          arrangement: arrangements.get(`${work.id} ${student.memberId}`)?.[0],
          attempts: attempts.get(key) ?? [],
          override: overrides.get(key)?.[0],
          points: points.get(key) ?? [],
        },
        now,
      );
    });
  const students = [...rows.students].sort((a, b) => a.name.localeCompare(b.name, "en"));
  return {
    work: rows.work,
    rows: students.map((student) => {
      const byWork = rows.work.map((work) => ({ work, cells: cellsOf(student, work) }));
      const mean = weightedMean(byWork.map(({ work, cells }) => ({ weight: work.weight, value: meanOf(work, cells) })));
      return { student, cells: byWork.flatMap(({ cells }) => cells), mean };
    }),
  };
}

function meanOf(work: Work, cells: readonly Cell[]): number | null {
  return weightedMean(work.columns.map(({ weight }, i) => ({ weight, value: cells[i]?.score ?? null })));
}

function cellKey({ itemId, memberId }: { readonly itemId: string; readonly memberId: string }): string {
  return `${itemId} ${memberId}`;
}

function group<Each>(all: readonly Each[], keyOf: (each: Each) => string): ReadonlyMap<string, readonly Each[]> {
  const groups = new Map<string, Each[]>();
  for (const each of all) {
    const key = keyOf(each);
    const there = groups.get(key);
    if (there) there.push(each);
    else groups.set(key, [each]);
  }
  return groups;
}
