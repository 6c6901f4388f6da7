import type { StoreMigration } from "./migration";

/** Words that work once: a teacher's invitations, and ways back for teachers who lost their password. */
export const oneTimeWords: StoreMigration = {
  name: "0003-one-time-words",
  up: async (db) => {
    await db.schema
      .createTable("one_time_word")
      .addColumn("id", "text", (column) => column.primaryKey().notNull())
      .addColumn("kind", "text", (column) => column.notNull())
      .addColumn("digest", "text", (column) => column.notNull().unique())
      .addColumn("made_by", "text", (column) => column.references("user.id").onDelete("cascade"))
      .addColumn("for_user", "text", (column) => column.references("user.id").onDelete("cascade"))
      .addColumn("note", "text", (column) => column.notNull())
      .addColumn("made_at", "text", (column) => column.notNull())
      .addColumn("expires_at", "text", (column) => column.notNull())
      .addColumn("used_at", "text")
      .execute();
    await db.schema.createIndex("one_time_word_made_by_idx").on("one_time_word").column("made_by").execute();
    await db.schema.createIndex("one_time_word_for_user_idx").on("one_time_word").column("for_user").execute();
  },
};
