import fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import type { Store } from "@/lib/classroom/store/store";
import { TABLES } from "@/lib/classroom/store/tables";
import { seeded } from "../../seeded";
import { onBothEngines } from "../engines";
import { allOf, anyRows, emptyAll, putIn } from "./any-rows";
import { COLUMNS } from "./columns";

/** Each run writes and reads eighteen tables, on a real disk. */
const RUNS = Math.ceil(seeded.numRuns / 4);

onBothEngines("what the store keeps", ({ engine, newStore }) => {
  let store: Store;
  beforeAll(async () => {
    store = await newStore();
  });

  it("has exactly the columns it is said to have, empty only where that is said", async () => {
    const tables = await store.db.introspection.getTables();
    const found = Object.fromEntries(
      tables
        .filter(({ name }) => name !== "migration")
        .map(({ name, columns }) => [
          name,
          Object.fromEntries(columns.map((column) => [column.name, column.isNullable])),
        ]),
    );
    const said = Object.fromEntries(
      Object.entries(COLUMNS).map(([table, columns]) => [
        table,
        Object.fromEntries(Object.entries(columns).map(([name, kind]) => [name, kind.endsWith("?")])),
      ]),
    );
    expect(found).toEqual(said);
  });

  it("gives every column of every table of ours back as it was put in, in the same type", async () => {
    await fc.assert(
      fc.asyncProperty(anyRows, async (rows) => {
        await emptyAll(store);
        await putIn(store, rows);
        for (const { name } of TABLES) {
          const expected = Object.entries(rows.get(name) ?? {});
          const kinds: Readonly<Record<string, string>> = COLUMNS[name];
          const [row, ...others] = await allOf(store, name);
          expect(others).toEqual([]);
          for (const [column, value] of expected) {
            const kind = kinds[column]?.replace("?", "");
            if (kind === "time" && value !== null) expect(new Date(row?.[column] as string).toISOString()).toBe(value);
            else if (kind === "yes-no") expect(Number(row?.[column])).toBe(value);
            else expect(row?.[column]).toStrictEqual(value);
          }
        }
      }),
      { ...seeded, numRuns: RUNS },
    );
  });

  it("sorts its times as text", async () => {
    await emptyAll(store);
    const times = [
      "2026-11-25T09:05:00.000Z",
      "2026-02-25T10:00:00.001Z",
      "2026-11-25T09:05:00.010Z",
      "1999-12-31T23:59:59.999Z",
    ];
    for (const [i, since] of times.entries())
      await store.db
        .insertInto("tries")
        .values({ key: String(i), count: 1, since })
        .execute();
    const rows = await store.db.selectFrom("tries").select("since").orderBy("since").execute();
    expect(rows.map(({ since }) => since)).toEqual([...times].sort());
    const late = await store.db
      .selectFrom("tries")
      .select("key")
      .where("since", "<", "2026-11-25T09:05:00.001Z")
      .execute();
    expect(late.map(({ key }) => key).sort()).toEqual(["0", "1", "3"]);
  });

  it("refuses a row that points to nothing, and drops with a class all that hangs on it", async () => {
    const [rows] = fc.sample(anyRows, { ...seeded, numRuns: 1 });
    if (!rows) throw new Error("A sample has one.");
    await emptyAll(store);
    await putIn(store, rows);
    const stray = { ...rows.get("member"), id: "stray", name: "stray", class_id: "nowhere" };
    await expect(putIn(store, new Map([["member", stray]]))).rejects.toThrow(/foreign key/i);
    await store.db.deleteFrom("class").execute();
    for (const { name } of TABLES.filter(({ name }) => !KEPT_WITHOUT_CLASS.includes(name)))
      expect({ name, rows: await allOf(store, name) }).toEqual({ name, rows: [] });
    // A teacher's library goes with the teacher.
    await store.db.deleteFrom("user").execute();
    expect([await allOf(store, "plan"), await allOf(store, "plan_version")]).toEqual([[], []]);
    expect(engine).toBe(store.engine);
  });
});

const KEPT_WITHOUT_CLASS: readonly string[] = [
  "user",
  "session",
  "account",
  "verification",
  "setting",
  "tries",
  "one_time_word",
  "plan",
  "plan_version",
];
