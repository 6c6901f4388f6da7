import type { Kysely } from "kysely";
import type { Engine } from "../store/store";
import type { Tables } from "../store/tables";
import type { HomeworkTable } from "../store/tables/homework-tables";

/**
 * A homework's row, held until the transaction ends: by a change alone, or by any number of hand-ins together. What comes in
 * is so judged either by the old terms and then anew by the change, or by the new ones. SQLite has one writer anyway.
 */
export async function lockHomework(
  all: Kysely<Tables>,
  engine: Engine,
  homeworkId: string,
  how: "alone" | "together",
): Promise<Readonly<HomeworkTable> | undefined> {
  const row = all.selectFrom("homework").selectAll().where("id", "=", homeworkId);
  if (engine === "sqlite") return row.executeTakeFirst();
  return (how === "alone" ? row.forUpdate() : row.forShare()).executeTakeFirst();
}
