import { type CsvValue, writeCsv } from "./csv";
import type { Cell, Gradebook } from "./gradebook";

/** Decimals of a score in a file. */
const DECIMALS = 2;

export function roundScore(score: number | null): number | null {
  return score === null ? null : Number(score.toFixed(DECIMALS));
}

/**
 * The whole gradebook, a row for each student: name, number, mean, then of every exercise the score that counts, what there is
 * to know about it, the reason of a score changed by hand, and the points of each criterion.
 */
export function gradebookCsv({ work, rows }: Gradebook): string {
  const columns = work.flatMap((each) => each.columns.map((column) => ({ work: each, column })));
  const head = columns.flatMap(({ work: { title, criteria }, column }) => {
    const name = `${title}: ${column.title}`;
    return [name, `${name}, notes`, ...criteria.map((each) => `${name}, ${each.name} (of ${each.points})`)];
  });
  const body = rows.map(({ student, cells, mean }): CsvValue[] => [
    student.name,
    student.number,
    roundScore(mean),
    ...cells.flatMap((cell) => [roundScore(cell.score), sayCell(cell), ...cell.points]),
  ]);
  return writeCsv([["Name", "Number", "Weighted mean", ...head], ...body]);
}

/** What there is to know of a cell beside its score, in words; empty for a plain score of one attempt. */
export function sayCell({ state, late, inTimeReason, attempts, override, graded }: Cell): string {
  const parts = [
    state === "missing" ? "missing" : "",
    state === "excused" ? "excused" : "",
    state === "not-set" ? "not set" : "",
    late ? "late" : "",
    inTimeReason === null ? "" : `counted as in time: ${inTimeReason}`,
    attempts > 1 ? `${attempts} attempts` : "",
    override ? `by hand${graded === null ? "" : `, was ${Math.round(graded)}`}: ${override.reason}` : "",
  ];
  return parts.filter((part) => part !== "").join("; ");
}
