import { writeCsv } from "./csv";
import type { Gradebook } from "./gradebook";

/**
 * The columns of lineItems.csv in the CSV binding of OneRoster 1.2, https://www.imsglobal.org/spec/oneroster/v1p2/bind/csv.
 * Names and order agree with the schemas of its rows in a published package, `@conform-ed/contracts` (oneroster/v1_2); that
 * its dates are written year, month, day is from memory.
 */
const LINE_ITEM_COLUMNS = [
  "sourcedId",
  "status",
  "dateLastModified",
  "title",
  "description",
  "assignDate",
  "dueDate",
  "classSourcedId",
  "categorySourcedId",
  "academicSessionSourcedId",
  "resultValueMin",
  "resultValueMax",
  "schoolSourcedId",
] as const;

/**
 * Every exercise that was set, one a record, for the results to point to: ids are this server's own. Categories, terms and
 * schools are not kept here, so those stay empty, and so does a due date that there is not.
 */
export function lineItemsCsv({ work }: Gradebook, classId: string): string {
  const records = work.flatMap(({ title, setAt, dueAt, columns }) =>
    columns.map((column) => [
      column.itemId,
      null,
      null,
      `${title}: ${column.title}`,
      null,
      setAt.slice(0, 10),
      dueAt?.slice(0, 10) ?? null,
      classId,
      null,
      null,
      0,
      100,
      null,
    ]),
  );
  return writeCsv([LINE_ITEM_COLUMNS, ...records]);
}
