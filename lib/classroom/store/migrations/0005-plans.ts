import type { ColumnDefinitionBuilder } from "kysely";
import type { StoreMigration } from "./migration";

const must = (column: ColumnDefinitionBuilder) => column.notNull();
const key = (column: ColumnDefinitionBuilder) => column.primaryKey().notNull();
const belongsTo = (table: string) => (column: ColumnDefinitionBuilder) =>
  column.notNull().references(`${table}.id`).onDelete("cascade");

/** The teachers' libraries: plans, and their versions. */
export const plans: StoreMigration = {
  name: "0005-plans",
  up: async (db) => {
    await db.schema
      .createTable("plan")
      .addColumn("id", "text", key)
      .addColumn("owner_id", "text", belongsTo("user"))
      .addColumn("title", "text", must)
      .addColumn("text", "text", must)
      .addColumn("bytes", "integer", must)
      .addColumn("words", "text", must)
      .addColumn("edition", "integer", must)
      .addColumn("made_at", "text", must)
      .addColumn("changed_at", "text", must)
      .addColumn("thrown_at", "text")
      .addColumn("share_word", "text", (column) => column.unique())
      .execute();
    await db.schema
      .createTable("plan_version")
      .addColumn("id", "text", key)
      .addColumn("plan_id", "text", belongsTo("plan"))
      .addColumn("at", "text", must)
      .addColumn("words", "text", must)
      .addColumn("text", "text", must)
      .addColumn("bytes", "integer", must)
      .addColumn("beside", "integer", must)
      .execute();
    await db.schema.createIndex("plan_owner_idx").on("plan").column("owner_id").execute();
    await db.schema.createIndex("plan_version_plan_idx").on("plan_version").column("plan_id").execute();
  },
};
