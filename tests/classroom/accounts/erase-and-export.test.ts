import { expect, it } from "vitest";
import { eraseClass, eraseMember, eraseOldWork } from "@/lib/classroom/accounts/erase";
import { exportWork } from "@/lib/classroom/accounts/export-work";
import type { Store } from "@/lib/classroom/store/store";
import { TABLES } from "@/lib/classroom/store/tables";
import { onBothEngines } from "../engines";
import { allOf } from "../store/any-rows";
import { putSmallClass, smallHandIn } from "../store/small-class";

const NOW = "2026-11-25T09:00:00.000Z";
const USERS_PERSON = { image: null, createdAt: NOW, updatedAt: NOW, role: "student" as const };

/** Beside Wim a second student, Tess; something of each in every table. */
async function putWork(store: Store): Promise<void> {
  await putSmallClass(store);
  const { db, engine } = store;
  const emailVerified = engine === "postgres" ? false : 0;
  await db
    .insertInto("user")
    .values({ ...USERS_PERSON, id: "tess-user", name: "Tess", email: "tess@student.invalid", emailVerified })
    .execute();
  await db
    .insertInto("member")
    .values({
      id: "tess",
      class_id: "class",
      user_id: "tess-user",
      name: "Tess",
      number: null,
      joined_at: NOW,
      removed: 0,
    })
    .execute();
  await db
    .insertInto("vote")
    .values({
      id: "vote",
      class_id: "class",
      exercise: "{}",
      point: "A.foot",
      round: 1,
      state: "open",
      code: "VVVVVV",
      opened_at: NOW,
    })
    .execute();
  for (const id of ["wim", "tess"]) {
    const user = id === "wim" ? "pupil" : "tess-user";
    await db
      .insertInto("session")
      .values({
        id: `${id}-session`,
        token: `${id}-token`,
        userId: user,
        expiresAt: NOW,
        createdAt: NOW,
        updatedAt: NOW,
        ipAddress: null,
        userAgent: null,
      })
      .execute();
    await db
      .insertInto("homework_member")
      .values({ homework_id: "week-1", member_id: id, due_at: null, excused: 0, assigned: 1 })
      .execute();
    await db
      .insertInto("hand_in")
      .values({ ...smallHandIn, id: `${id}-1`, member_id: id })
      .execute();
    await db
      .insertInto("override")
      .values({ item_id: "item", member_id: id, score: 0.9, reason: "said aloud", at: NOW })
      .execute();
    await db
      .insertInto("remark")
      .values({ id: `${id}-remark`, hand_in_id: `${id}-1`, strokes: "[[0,1]]", words: `for ${id}`, at: NOW })
      .execute();
    await db
      .insertInto("criterion_score")
      .values({ item_id: "item", member_id: id, criterion: "line quality", points: 3 })
      .execute();
    await db
      .insertInto("guess")
      .values({ vote_id: "vote", round: 1, person: id, at: "[1,2]", received_at: NOW })
      .execute();
  }
}

async function everything(store: Store): Promise<string> {
  const rows = [];
  for (const { name } of TABLES) rows.push(await allOf(store, name));
  return JSON.stringify(rows);
}

onBothEngines("what is kept of a student or a class", ({ newStore }) => {
  it("can be erased for one student, and nothing of theirs is left anywhere", async () => {
    const store = await newStore();
    await putWork(store);
    expect(await eraseMember(store, "wim")).toMatchObject({ ok: true });
    const left = await everything(store);
    expect(left).not.toMatch(/wim|pupil/i);
    expect(left).toMatch(/tess-remark/);
    for (const table of [
      "session",
      "homework_member",
      "hand_in",
      "override",
      "remark",
      "criterion_score",
      "guess",
    ] as const)
      expect({ table, rows: await allOf(store, table) }).toMatchObject({ table, rows: [expect.anything()] });
  });

  it("keeps a student's account for another class they are in", async () => {
    const store = await newStore();
    await putWork(store);
    await store.db
      .insertInto("class")
      .values({
        id: "second",
        teacher_id: "teacher",
        title: "Second",
        code: "DDDDDD",
        keep_days: 0,
        created_at: NOW,
        archived: 0,
      })
      .execute();
    await store.db
      .insertInto("member")
      .values({
        id: "wim-2",
        class_id: "second",
        user_id: "pupil",
        name: "Wim",
        number: null,
        joined_at: NOW,
        removed: 0,
      })
      .execute();
    await eraseMember(store, "wim");
    expect(await store.db.selectFrom("user").select("id").where("id", "=", "pupil").execute()).toHaveLength(1);
    await eraseClass(store, "second");
    expect(await store.db.selectFrom("user").select("id").where("id", "=", "pupil").execute()).toEqual([]);
  });

  it("can be erased for a class wholly, its teacher's account apart", async () => {
    const store = await newStore();
    await putWork(store);
    expect(await eraseClass(store, "class")).toMatchObject({ ok: true });
    for (const { name } of TABLES)
      expect({ name, rows: (await allOf(store, name)).length }).toEqual({ name, rows: name === "user" ? 1 : 0 });
  });

  it("can be saved for one student without a word about another, and without what proves who they are", async () => {
    const store = await newStore();
    await putWork(store);
    const { tables } = await exportWork(store, "class", "wim");
    const text = JSON.stringify(tables);
    expect(text).not.toMatch(/tess|token|session|password/i);
    for (const table of ["member", "homework_member", "hand_in", "override", "remark", "criterion_score", "guess"])
      expect({ table, rows: tables[table] }).toMatchObject({ table, rows: [expect.anything()] });
    expect(tables.hand_in?.[0]?.marks).toEqual(JSON.parse(smallHandIn.marks));
    expect(tables.override?.[0]?.at).toBe(NOW);
    const whole = await exportWork(store, "class", null);
    expect(whole.tables.hand_in).toHaveLength(2);
    expect(whole.tables.vote).toHaveLength(1);
  });

  it("goes by itself when its class keeps it for so many days only", async () => {
    const store = await newStore();
    await putWork(store);
    await store.db
      .insertInto("hand_in")
      .values({ ...smallHandIn, id: "new", received_at: "2027-01-20T00:00:00.000Z" })
      .execute();
    await eraseOldWork(store, new Date("2027-02-01"));
    expect(await allOf(store, "hand_in")).toHaveLength(3);
    await store.db.updateTable("class").set({ keep_days: 30 }).execute();
    await eraseOldWork(store, new Date("2027-02-01"));
    expect((await allOf(store, "hand_in")).map(({ id }) => id)).toEqual(["new"]);
    expect([await allOf(store, "remark"), await allOf(store, "override"), await allOf(store, "guess")]).toEqual([
      [],
      [],
      [],
    ]);
    expect(await allOf(store, "member")).toHaveLength(2);
    // Points by criteria go with the last drawing they are for: Wim has one left, Tess has none.
    expect((await allOf(store, "criterion_score")).map(({ member_id }) => member_id)).toEqual(["wim"]);
    await eraseOldWork(store, new Date("2027-06-01"));
    expect(await allOf(store, "criterion_score")).toEqual([]);
  });

  it("keeps points for homework that is still young, though nothing was handed in for it", async () => {
    const store = await newStore();
    await putWork(store);
    await store.db.updateTable("class").set({ keep_days: 30 }).execute();
    await store.db.updateTable("homework").set({ created_at: "2027-01-20T00:00:00.000Z" }).execute();
    await eraseOldWork(store, new Date("2027-02-01"));
    expect(await allOf(store, "hand_in")).toEqual([]);
    expect(await allOf(store, "criterion_score")).toHaveLength(2);
  });
});
