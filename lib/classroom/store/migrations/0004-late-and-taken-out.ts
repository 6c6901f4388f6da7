import type { StoreMigration } from "./migration";

/** Late work that the teacher counts as in time, and exercises taken out of homework with their drawings kept. */
export const lateAndTakenOut: StoreMigration = {
  name: "0004-late-and-taken-out",
  up: async (db) => {
    await db.schema.alterTable("hand_in").addColumn("in_time_reason", "text").execute();
    await db.schema.alterTable("homework_item").addColumn("taken_out_at", "text").execute();
  },
};
