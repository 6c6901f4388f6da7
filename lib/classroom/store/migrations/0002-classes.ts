import type { ColumnDefinitionBuilder, Kysely } from "kysely";
import type { StoreMigration } from "./migration";

const must = (column: ColumnDefinitionBuilder) => column.notNull();
const key = (column: ColumnDefinitionBuilder) => column.primaryKey().notNull();
/** What hangs on a row goes with it: erasing a class or a student leaves nothing behind. */
const belongsTo = (table: string) => (column: ColumnDefinitionBuilder) =>
  column.notNull().references(`${table}.id`).onDelete("cascade");

/** The classes, what is set, what is handed in, and the votes. */
export const classes: StoreMigration = {
  name: "0002-classes",
  up: async (db) => {
    await makePeople(db);
    await makeHomework(db);
    await makeWork(db);
    await makeVotes(db);
  },
};

async function makePeople(db: Kysely<unknown>): Promise<void> {
  await db.schema.createTable("setting").addColumn("name", "text", key).addColumn("value", "text", must).execute();
  await db.schema
    .createTable("tries")
    .addColumn("key", "text", key)
    .addColumn("count", "integer", must)
    .addColumn("since", "text", must)
    .execute();
  await db.schema
    .createTable("class")
    .addColumn("id", "text", key)
    .addColumn("teacher_id", "text", belongsTo("user"))
    .addColumn("title", "text", must)
    .addColumn("code", "text", (column) => column.notNull().unique())
    .addColumn("keep_days", "integer", must)
    .addColumn("created_at", "text", must)
    .addColumn("archived", "integer", must)
    .execute();
  await db.schema
    .createTable("member")
    .addColumn("id", "text", key)
    .addColumn("class_id", "text", belongsTo("class"))
    .addColumn("user_id", "text", (column) => column.references("user.id").onDelete("set null"))
    .addColumn("name", "text", must)
    .addColumn("number", "text")
    .addColumn("joined_at", "text")
    .addColumn("removed", "integer", must)
    .addUniqueConstraint("member_name_in_class", ["class_id", "name"])
    .execute();
  await db.schema.createIndex("class_teacher_idx").on("class").column("teacher_id").execute();
  await db.schema.createIndex("member_user_idx").on("member").column("user_id").execute();
}

async function makeHomework(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("homework")
    .addColumn("id", "text", key)
    .addColumn("class_id", "text", belongsTo("class"))
    .addColumn("title", "text", must)
    .addColumn("due_at", "text")
    .addColumn("attempts", "integer", must)
    .addColumn("counts", "text", must)
    .addColumn("feedback", "text", must)
    .addColumn("strictness", "text")
    .addColumn("hints", "text", must)
    .addColumn("to_whom", "text", must)
    .addColumn("weight", "double precision", must)
    .addColumn("criteria", "text", must)
    .addColumn("created_at", "text", must)
    .addColumn("archived", "integer", must)
    .execute();
  await db.schema
    .createTable("homework_item")
    .addColumn("id", "text", key)
    .addColumn("homework_id", "text", belongsTo("homework"))
    .addColumn("place", "integer", must)
    .addColumn("source", "text", must)
    .addColumn("exercise_id", "text")
    .addColumn("unit", "text")
    .addColumn("level", "integer")
    .addColumn("exercise", "text")
    .addColumn("weight", "double precision", must)
    .execute();
  await db.schema
    .createTable("homework_member")
    .addColumn("homework_id", "text", belongsTo("homework"))
    .addColumn("member_id", "text", belongsTo("member"))
    .addColumn("due_at", "text")
    .addColumn("excused", "integer", must)
    .addColumn("assigned", "integer", must)
    .addPrimaryKeyConstraint("homework_member_pk", ["homework_id", "member_id"])
    .execute();
  await db.schema.createIndex("homework_class_idx").on("homework").column("class_id").execute();
  await db.schema.createIndex("homework_item_homework_idx").on("homework_item").column("homework_id").execute();
  await db.schema.createIndex("homework_member_member_idx").on("homework_member").column("member_id").execute();
}

async function makeWork(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("hand_in")
    .addColumn("id", "text", key)
    .addColumn("item_id", "text", belongsTo("homework_item"))
    .addColumn("member_id", "text", belongsTo("member"))
    .addColumn("exercise", "text", must)
    .addColumn("marks", "text", must)
    .addColumn("score", "double precision")
    .addColumn("grade", "text", must)
    .addColumn("engine_version", "text", must)
    .addColumn("made_at", "text", must)
    .addColumn("received_at", "text", must)
    .addColumn("late", "integer", must)
    .execute();
  await db.schema
    .createTable("override")
    .addColumn("item_id", "text", belongsTo("homework_item"))
    .addColumn("member_id", "text", belongsTo("member"))
    .addColumn("score", "double precision", must)
    .addColumn("reason", "text", must)
    .addColumn("at", "text", must)
    .addPrimaryKeyConstraint("override_pk", ["item_id", "member_id"])
    .execute();
  await db.schema
    .createTable("remark")
    .addColumn("id", "text", key)
    .addColumn("hand_in_id", "text", belongsTo("hand_in"))
    .addColumn("strokes", "text", must)
    .addColumn("words", "text", must)
    .addColumn("at", "text", must)
    .execute();
  await db.schema
    .createTable("criterion_score")
    .addColumn("item_id", "text", belongsTo("homework_item"))
    .addColumn("member_id", "text", belongsTo("member"))
    .addColumn("criterion", "text", must)
    .addColumn("points", "double precision", must)
    .addPrimaryKeyConstraint("criterion_score_pk", ["item_id", "member_id", "criterion"])
    .execute();
  await db.schema.createIndex("hand_in_item_idx").on("hand_in").columns(["item_id", "member_id"]).execute();
  await db.schema.createIndex("hand_in_member_idx").on("hand_in").column("member_id").execute();
  await db.schema.createIndex("override_member_idx").on("override").column("member_id").execute();
  await db.schema.createIndex("remark_hand_in_idx").on("remark").column("hand_in_id").execute();
  await db.schema.createIndex("criterion_score_member_idx").on("criterion_score").column("member_id").execute();
}

async function makeVotes(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("vote")
    .addColumn("id", "text", key)
    .addColumn("class_id", "text", belongsTo("class"))
    .addColumn("exercise", "text", must)
    .addColumn("point", "text", must)
    .addColumn("round", "integer", must)
    .addColumn("state", "text", must)
    .addColumn("code", "text", (column) => column.notNull().unique())
    .addColumn("opened_at", "text", must)
    .execute();
  await db.schema
    .createTable("guess")
    .addColumn("vote_id", "text", belongsTo("vote"))
    .addColumn("round", "integer", must)
    .addColumn("person", "text", must)
    .addColumn("at", "text", must)
    .addColumn("received_at", "text", must)
    .addPrimaryKeyConstraint("guess_pk", ["vote_id", "round", "person"])
    .execute();
  await db.schema.createIndex("vote_class_idx").on("vote").column("class_id").execute();
}
