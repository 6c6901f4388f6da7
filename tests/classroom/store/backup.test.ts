import { readdirSync, readFileSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ALL_MIGRATIONS } from "@/lib/classroom/store/migrations/all-migrations";
import { backUpStore, openStore } from "@/lib/classroom/store/open-store";
import { restoreStore } from "@/lib/classroom/store/restore";
import type { Engine, Store } from "@/lib/classroom/store/store";
import { TABLES } from "@/lib/classroom/store/tables";
import { seeded } from "../../seeded";
import { hasPostgres, onBothEngines, opened, storesOf } from "../engines";
import { allOf, anyRows, putIn } from "./any-rows";
import { putSmallClass, smallHandIn } from "./small-class";

/** Stores that differ in many rows; each is written, backed up, restored and read. */
const SAMPLES = 3;
const samples = fc.sample(fc.array(anyRows, { minLength: 1, maxLength: 6 }), { ...seeded, numRuns: SAMPLES });

/** All that a store holds, times and yes-or-nos in one form, so that two engines can be compared. */
async function contents(store: Store): Promise<string> {
  const tables: Record<string, unknown[]> = {};
  for (const { name } of TABLES) {
    const rows = (await allOf(store, name)).map((row) =>
      JSON.stringify(
        Object.fromEntries(
          Object.entries(row).map(([column, value]) => [column, typeof value === "boolean" ? Number(value) : value]),
        ),
      ),
    );
    tables[name] = rows.sort();
  }
  return JSON.stringify(tables);
}

const PAIRS: readonly (readonly [Engine, Engine])[] = [
  ["sqlite", "sqlite"],
  ["sqlite", "postgres"],
  ["postgres", "sqlite"],
  ["postgres", "postgres"],
];

for (const [from, to] of PAIRS) {
  describe.skipIf(!hasPostgres && (from === "postgres" || to === "postgres"))(
    `a backup of ${from} put into ${to}`,
    () => {
      const [source, target] = [storesOf(from), storesOf(to)];

      it.each(samples.map((rows, i) => [i + 1, rows] as const))("is the same store, sample %i", async (_, sets) => {
        const place = await source.newPlace();
        const before = await opened(place);
        for (const rows of sets) await putIn(before, rows).catch(() => {});
        const held = await contents(before);
        const file = join(place.folder, "all.jsonl.gz");
        const backed = await backUpStore(place, file);
        await before.close();
        const there = await target.newPlace();
        const restored = await restoreStore(there, file, false);
        expect(restored).toEqual({ ok: true, rows: backed.ok ? backed.rows : 0, before: null });
        const after = await opened(there);
        expect(await contents(after)).toBe(held);
        await after.close();
      });
    },
  );
}

onBothEngines("backups", ({ newPlace }) => {
  it("are made beside the running server, by a great many rows, for the owner's eyes only", async () => {
    const place = await newPlace();
    const store = await opened(place);
    await putSmallClass(store);
    const rows = Array.from({ length: 257 }, (_, i) => ({ ...smallHandIn, id: `hand-in ${i}` }));
    for (const row of rows) await store.db.insertInto("hand_in").values(row).execute();
    const file = join(place.folder, "now.jsonl.gz");
    const backed = await backUpStore(place, file);
    await store.close();
    expect(backed).toEqual({ ok: true, rows: 257 + 6 });
    if (process.platform !== "win32") expect(statSync(file).mode & 0o777).toBe(0o600);
    const lines = gunzipSync(readFileSync(file)).toString().trimEnd().split("\n");
    const ids = lines.flatMap((line) => (line.startsWith('{"table":"hand_in"') ? [JSON.parse(line).row.id] : []));
    expect(ids.sort()).toEqual(rows.map(({ id }) => id).sort());
    expect(readdirSync(place.folder).filter((name) => name.includes("unfinished"))).toEqual([]);
  });

  it("are not made of nothing", async () => {
    const place = await newPlace();
    expect(await backUpStore(place, join(place.folder, "x"))).toMatchObject({
      ok: false,
      refusal: { reason: "nothing" },
    });
    await (await opened(place)).close();
    expect(await backUpStore(place, join(place.folder, "x"))).toMatchObject({
      ok: false,
      refusal: { reason: "nothing" },
    });
  });

  it("replace what is there only when told to, and keep it in another backup", async () => {
    const place = await newPlace();
    const store = await opened(place);
    await putSmallClass(store);
    const file = join(place.folder, "monday.jsonl.gz");
    await backUpStore(place, file);
    await store.db
      .insertInto("hand_in")
      .values({ ...smallHandIn, id: "tuesday" })
      .execute();
    const tuesday = await contents(store);
    await store.close();
    expect(await restoreStore(place, file, false)).toMatchObject({ ok: false, refusal: { reason: "not-empty" } });
    const over = await restoreStore(place, file, true);
    if (!over.ok || over.before === null) throw new Error("It was to be restored, and the old work kept.");
    const monday = await opened(place);
    expect(await allOf(monday, "hand_in")).toEqual([]);
    await monday.close();
    await restoreStore(place, over.before, true);
    const again = await opened(place);
    expect(await contents(again)).toBe(tuesday);
    await again.close();
  });

  it("change nothing when they are cut short, damaged, of a later form, or no backup at all", async () => {
    const place = await newPlace();
    const store = await opened(place);
    await putSmallClass(store);
    const held = await contents(store);
    const file = join(place.folder, "whole.jsonl.gz");
    await backUpStore(place, file);
    await store.close();
    const text = gunzipSync(readFileSync(file)).toString();
    const lines = text.trimEnd().split("\n");
    const bad = {
      "cut.gz": () => {
        writeFileSync(join(place.folder, "cut.gz"), readFileSync(file));
        truncateSync(join(place.folder, "cut.gz"), statSync(file).size - 20);
      },
      "endless.gz": () => writeFileSync(join(place.folder, "endless.gz"), gzipSync(lines.slice(0, -1).join("\n"))),
      "short.gz": () =>
        writeFileSync(join(place.folder, "short.gz"), gzipSync([...lines.slice(0, 3), lines.at(-1)].join("\n"))),
      "strange.gz": () => writeFileSync(join(place.folder, "strange.gz"), gzipSync(text.replace('"class"', '"clazz"'))),
      "plain.gz": () => writeFileSync(join(place.folder, "plain.gz"), text),
      "missing.gz": () => {},
    };
    for (const [name, make] of Object.entries(bad)) {
      make();
      const said = await restoreStore(place, join(place.folder, name), true);
      expect({ name, said }).toMatchObject({ name, said: { ok: false, refusal: { reason: "unreadable" } } });
    }
    writeFileSync(
      join(place.folder, "later.gz"),
      gzipSync(text.replace('"0002-classes"', '"0002-classes","0999-later"')),
    );
    const later = await restoreStore(place, join(place.folder, "later.gz"), true);
    expect(later).toMatchObject({ ok: false, refusal: { reason: "newer" } });
    const after = await opened(place);
    expect(await contents(after)).toBe(held);
    await after.close();
  });

  it("put all back or nothing, even when a row will not go in", async () => {
    const place = await newPlace();
    const store = await opened(place);
    await putSmallClass(store);
    const held = await contents(store);
    const file = join(place.folder, "whole.jsonl.gz");
    await backUpStore(place, file);
    await store.close();
    const text = gunzipSync(readFileSync(file)).toString();
    const stray = join(place.folder, "stray.gz");
    writeFileSync(stray, gzipSync(text.replace('"class_id":"class"', '"class_id":"nowhere"')));
    await expect(restoreStore(place, stray, true)).rejects.toThrow(/foreign key/i);
    const after = await opened(place);
    expect(await contents(after)).toBe(held);
    await after.close();
  });
});

onBothEngines("a change of form", ({ newPlace }) => {
  const later = {
    name: "0999-trial",
    up: async (db: Parameters<(typeof ALL_MIGRATIONS)[number]["up"]>[0]) =>
      db.schema.createTable("trial").addColumn("id", "text").execute(),
  };
  const broken = {
    ...later,
    up: async (db: Parameters<typeof later.up>[0]) => {
      await later.up(db);
      throw new Error("This step fails half way.");
    },
  };
  const backupsIn = (folder: string) => {
    try {
      return readdirSync(join(folder, "backups"));
    } catch {
      return [];
    }
  };

  it("makes a backup first when there is work, and none when there is none", async () => {
    const place = await newPlace();
    await (await opened(place)).close();
    const empty = await openStore(place, [...ALL_MIGRATIONS, { ...later, name: "0998-other", up: async () => {} }]);
    if (!empty.ok) throw new Error(empty.refusal.sentence);
    expect(backupsIn(place.folder)).toEqual([]);
    await putSmallClass(empty.store);
    const held = await contents(empty.store);
    await empty.store.close();
    const steps = [...ALL_MIGRATIONS, { ...later, name: "0998-other", up: async () => {} }, later];
    const second = await openStore(place, steps);
    if (!second.ok) throw new Error(second.refusal.sentence);
    expect(await contents(second.store)).toBe(held);
    await second.store.close();
    expect(backupsIn(place.folder)).toEqual([expect.stringMatching(/-before-0999-trial\.jsonl\.gz$/)]);
    expect(await openStore(place)).toMatchObject({ ok: false, refusal: { reason: "newer" } });
  });

  it("brings a class's work over from the form before one-time words, also out of a backup of then", async () => {
    const [place, other] = [await newPlace(), await newPlace()];
    const then = await openStore(place, ALL_MIGRATIONS.slice(0, 2));
    if (!then.ok) throw new Error(then.refusal.sentence);
    await putSmallClass(then.store);
    await then.store.close();
    const now = await opened(place);
    expect(await now.db.selectFrom("member").select("name").execute()).toEqual([{ name: "Wim" }]);
    expect(await now.db.selectFrom("one_time_word").selectAll().execute()).toEqual([]);
    const held = await contents(now);
    await now.close();
    const [backup = ""] = backupsIn(place.folder);
    expect(backup).toMatch(/-before-0003-one-time-words\.jsonl\.gz$/);
    expect(await restoreStore(other, join(place.folder, "backups", backup), false)).toMatchObject({ ok: true });
    const restored = await opened(other);
    expect(await contents(restored)).toBe(held);
    await restored.close();
  });

  it("leaves the store as it was when a step fails, and goes on once it is mended", async () => {
    const place = await newPlace();
    const store = await opened(place);
    await putSmallClass(store);
    const held = await contents(store);
    await store.close();
    await expect(openStore(place, [...ALL_MIGRATIONS, broken])).rejects.toThrow("This step fails half way.");
    const after = await opened(place);
    expect(await contents(after)).toBe(held);
    await after.close();
    const mended = await openStore(place, [...ALL_MIGRATIONS, later]);
    if (!mended.ok) throw new Error(mended.refusal.sentence);
    await mended.store.close();
  });

  it("is only ever added to: its steps stand in the order of their names, each name once", () => {
    const names = ALL_MIGRATIONS.map(({ name }) => name);
    expect(names).toEqual([...new Set(names)].sort());
  });
});
