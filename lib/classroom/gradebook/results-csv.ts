import { type CsvValue, writeCsv } from "./csv";
import type { Cell, Gradebook } from "./gradebook";
import { roundScore, sayCell } from "./gradebook-csv";

/**
 * The columns of results.csv in the CSV binding of OneRoster 1.2, https://www.imsglobal.org/spec/oneroster/v1p2/bind/csv. Names
 * and order agree with the schemas of its rows in a published package, `@conform-ed/contracts` (oneroster/v1_2); that a date is
 * written year, month, day is from memory.
 */
export const RESULT_COLUMNS = [
  "sourcedId",
  "status",
  "dateLastModified",
  "lineItemSourcedId",
  "studentSourcedId",
  "scoreStatus",
  "score",
  "scoreDate",
  "comment",
  "textScore",
  "classSourcedId",
  "inProgress",
  "incomplete",
  "late",
  "missing",
] as const;

/**
 * Every result that there is, one a record, under the column names of OneRoster. Ids are this server's own. A student who was
 * not set an exercise has no record of it. `status` and `dateLastModified` stay empty, as a full export has them (from memory).
 */
export function resultsCsv({ rows }: Gradebook, classId: string, now: string): string {
  const records = rows.flatMap(({ cells }) =>
    cells.flatMap((cell) => (cell.state === "not-set" ? [] : [recordOf(cell, classId, now)])),
  );
  return writeCsv([RESULT_COLUMNS, ...records]);
}

function recordOf(cell: Cell, classId: string, now: string): readonly CsvValue[] {
  const date = (cell.override?.at ?? cell.receivedAt ?? now).slice(0, 10);
  return [
    `${cell.itemId}.${cell.memberId}`,
    null,
    null,
    cell.itemId,
    cell.memberId,
    scoreStatus(cell),
    roundScore(cell.score),
    date,
    sayCell(cell),
    null,
    classId,
    cell.state === "waiting" ? "true" : "false",
    "false",
    cell.late ? "true" : "false",
    cell.state === "missing" ? "true" : "false",
  ];
}

/** The words of the binding's list of score statuses; checked against a published reader, as above. */
function scoreStatus({ state }: Cell): string {
  if (state === "excused") return "exempt";
  return state === "scored" ? "fully graded" : "not submitted";
}
