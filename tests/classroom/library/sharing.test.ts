import { randomUUID } from "node:crypto";
import { join } from "node:path";
import { expect, it } from "vitest";
import { fillPlans } from "@/lib/classroom/homework/fill-plans";
import { setHomework } from "@/lib/classroom/homework/set-homework";
import { plansOfTeacher, planWithText, versionsOfPlan } from "@/lib/classroom/library/read-library";
import { copyShared, openShared, sharePlan } from "@/lib/classroom/library/share-plan";
import { throwAway } from "@/lib/classroom/library/throw-away";
import { backUpStore } from "@/lib/classroom/store/open-store";
import { restoreStore } from "@/lib/classroom/store/restore";
import { ROUTER } from "../accounts/room";
import { onBothEngines, opened } from "../engines";
import { wanted } from "../homework/desk";
import { keep, planText, twoTeachers } from "./two-teachers";

onBothEngines("plans of a library", ({ newStore, newPlace }) => {
  it("are shared by a word that opens a copy, until the owner ends it", async () => {
    const store = await newStore();
    const { ida, bo } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const shared = await sharePlan(store, planId, true);
    const again = await sharePlan(store, planId, true);
    const word = shared.ok ? (shared.value ?? "") : "";
    expect(word).toMatch(/^[A-Z]{20}$/);
    expect(again).toEqual(shared);
    const tried = { word: word.toLowerCase(), address: ROUTER };
    expect(await openShared(store, tried)).toMatchObject({ ok: true, by: "Ida Brandt", title: "First", ownerId: ida });
    const copyId = randomUUID();
    const copy = () => copyShared(store, { ...tried, planId: copyId, ownerId: bo });
    expect(await copy()).toMatchObject({ ok: true, kept: "plan", edition: 1 });
    // Sent twice, it is one copy.
    expect(await copy()).toMatchObject({ ok: true, kept: "plan", edition: 1 });
    await keep(store, bo, "Changed by Bo", { planId: copyId, base: 1 });
    await keep(store, ida, "Changed by Ida", { planId, base: 1 });
    expect((await plansOfTeacher(store, bo)).map(({ title, share_word }) => [title, share_word])).toEqual([
      ["Changed by Bo", null],
    ]);
    expect((await planWithText(store, planId))?.title).toBe("Changed by Ida");
    // It shows the plan as it is now.
    expect(await openShared(store, tried)).toMatchObject({ title: "Changed by Ida" });
    await sharePlan(store, planId, false);
    expect(await openShared(store, tried)).toMatchObject({ ok: false, reason: "no-word" });
    const other = await sharePlan(store, planId, true);
    expect(other.ok && other.value !== word).toBe(true);
    expect((await plansOfTeacher(store, bo)).length).toBe(1);
  });

  it("are shared no more once they are thrown away, and a word is not to be guessed", async () => {
    const store = await newStore();
    const { ida } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const shared = await sharePlan(store, planId, true);
    const word = shared.ok ? (shared.value ?? "") : "";
    await throwAway(store, planId, true);
    expect(await sharePlan(store, planId, true)).toEqual({ ok: true, value: null });
    await throwAway(store, planId, false);
    expect(await openShared(store, { word, address: ROUTER })).toMatchObject({ ok: false, reason: "no-word" });
    const tries = [];
    for (let i = 0; i < 31; i++) tries.push(await openShared(store, { word: "A".repeat(20), address: ROUTER }));
    expect(tries.at(-1)).toMatchObject({ ok: false, reason: "too-many" });
  });

  it("are set as homework as they are then, and another's never", async () => {
    const store = await newStore();
    const { room, ida, bo } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const items = [{ source: "plan" as const, planId, weight: 2 }];
    expect(await fillPlans(store, bo, items)).toMatchObject({ ok: false, reason: "no-exercise" });
    const filled = await fillPlans(store, ida, items);
    if (!filled.ok) throw new Error(filled.sentence);
    expect(
      await setHomework(store, { ...wanted(room.classId), items: filled.items }, async () => undefined),
    ).toMatchObject({ ok: true });
    await keep(store, ida, "Second", { planId, base: 1 });
    const [item] = await store.db.selectFrom("homework_item").selectAll().execute();
    expect(item).toMatchObject({ source: "own", exercise: planText("First"), weight: 2 });
    await throwAway(store, planId, true);
    expect(await fillPlans(store, ida, items)).toMatchObject({ ok: false, reason: "no-exercise" });
  });

  it("come back from a backup with their versions and links", async () => {
    const place = await newPlace();
    const store = await opened(place);
    const { ida } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First", { words: "With the niche" });
    await keep(store, ida, "Second", { planId, base: 1 });
    await keep(store, ida, "From another browser", { planId, base: 1 });
    await sharePlan(store, planId, true);
    const held = [await planWithText(store, planId), await versionsOfPlan(store, planId)];
    const file = join(place.folder, "all.jsonl.gz");
    const backed = await backUpStore(place, file);
    await store.close();
    const there = await newPlace();
    expect(await restoreStore(there, file, false)).toEqual({
      ok: true,
      rows: backed.ok ? backed.rows : 0,
      before: null,
    });
    const after = await opened(there);
    expect([await planWithText(after, planId), await versionsOfPlan(after, planId)]).toEqual(held);
    await after.close();
  });
});
