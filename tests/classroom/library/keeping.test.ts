import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { countKeeping } from "@/lib/classroom/library/count-keeping";
import { goBack } from "@/lib/classroom/library/go-back";
import { keepPlan } from "@/lib/classroom/library/keep-plan";
import { MOST_BYTES, MOST_PLANS, MOST_VERSIONS } from "@/lib/classroom/library/library-limits";
import { plansOfTeacher, planWithText, textOf, versionsOfPlan } from "@/lib/classroom/library/read-library";
import { erasePlan, eraseThrownPlans, throwAway } from "@/lib/classroom/library/throw-away";
import type { Store } from "@/lib/classroom/store/store";
import { onBothEngines } from "../engines";
import { AT, keep, planText, twoTeachers } from "./two-teachers";

const textsOf = async (store: Store, planId: string) => {
  const versions = await versionsOfPlan(store, planId);
  const texts = await Promise.all(versions.map(({ id }) => textOf(store, planId, id)));
  return texts.map((text) => JSON.parse(text ?? "{}").title as string);
};

onBothEngines("a teacher's library", ({ newStore }) => {
  it("keeps a plan, its changes as versions, and goes back to one without losing another", async () => {
    const store = await newStore();
    const { ida, bo } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First", { words: "  As we met  " });
    expect(await keep(store, ida, "Second", { planId, base: 1, clock: "11:00" })).toMatchObject({ edition: 2 });
    // The answer was lost, and it was sent again.
    expect(await keep(store, ida, "Second", { planId, base: 1, clock: "11:01" })).toMatchObject({
      kept: "plan",
      edition: 2,
      changedAt: AT("11:00").toISOString(),
    });
    expect(await keep(store, ida, "Third", { planId, base: 2, clock: "12:00" })).toMatchObject({ edition: 3 });
    const versions = await versionsOfPlan(store, planId);
    expect(versions.map(({ at, words, beside }) => [at, words, beside])).toEqual([
      [AT("11:00").toISOString(), "", 0],
      [AT("10:00").toISOString(), "As we met", 0],
    ]);
    const back = { ownerId: ida, planId, versionId: versions[1]?.id ?? "", base: 3 };
    expect(await goBack(store, { ...back, base: 2 }, AT("12:30"))).toMatchObject({ ok: false, reason: "changed" });
    expect(await goBack(store, { ...back, ownerId: bo }, AT("12:30"))).toMatchObject({ ok: false, reason: "unknown" });
    expect(await goBack(store, back, AT("12:30"))).toMatchObject({ ok: true, edition: 4 });
    expect(await planWithText(store, planId)).toMatchObject({ title: "First", words: "As we met", edition: 4 });
    expect(await textsOf(store, planId)).toEqual(["Third", "Second", "First"]);
  });

  it("keeps both where two browsers changed the same edition, and tells the one that comes later", async () => {
    const store = await newStore();
    const { ida } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const change = (title: string) => keep(store, ida, title, { planId, base: 1, clock: "11:00" });
    const both = await Promise.all([change("At school"), change("At home")]);
    expect(both.map(({ kept }) => kept).sort()).toEqual(["beside", "plan"]);
    expect(both.map(({ edition }) => edition)).toEqual([2, 2]);
    const plan = await planWithText(store, planId);
    const [beside] = (await versionsOfPlan(store, planId)).filter((version) => version.beside === 1);
    const other = await textOf(store, planId, beside?.id ?? "");
    expect([plan?.title, JSON.parse(other ?? "{}").title].sort()).toEqual(["At home", "At school"]);
    // Sent once more, it does not lie there twice; put in its place on purpose, it is the plan and nothing is gone.
    const later = both[0]?.kept === "beside" ? "At school" : "At home";
    expect(await change(later)).toMatchObject({ kept: "beside", edition: 2 });
    expect(await keep(store, ida, later, { planId, base: 2, clock: "12:00" })).toMatchObject({
      kept: "plan",
      edition: 3,
    });
    // It is the plan now, and lies beside it no more.
    const earlier = later === "At school" ? "At home" : "At school";
    expect((await textsOf(store, planId)).sort()).toEqual([earlier, "First"].sort());
    expect((await planWithText(store, planId))?.title).toBe(later);
  });

  it("loses none of twenty changes that come at once", async () => {
    const store = await newStore();
    const { ida } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const titles = Array.from({ length: 20 }, (_, i) => `Change ${i}`);
    const kept = await Promise.all(titles.map((title) => keep(store, ida, title, { planId, base: 1, clock: "11:00" })));
    expect(kept.filter((each) => each.kept === "plan")).toHaveLength(1);
    const all = [...(await textsOf(store, planId)), (await planWithText(store, planId))?.title];
    expect(all.sort()).toEqual(["First", ...titles].sort());
  });

  it("refuses what cannot be read, what is another's, and a change to what is there no more, and keeps nothing", async () => {
    const store = await newStore();
    const { ida, bo } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const sent = { ownerId: ida, planId, base: 1, text: planText("Second"), words: "" };
    const broken = planText("Second").replace('"level"', '"lvl"');
    const cut = await keepPlan(store, { ...sent, text: broken });
    expect(cut).toMatchObject({ ok: false, reason: "bad-plan" });
    expect(cut.ok ? "" : cut.sentence).toMatch(/^This plan cannot be read, so it was not kept\. .*lvl/);
    expect(await keepPlan(store, { ...sent, ownerId: bo })).toMatchObject({ ok: false, reason: "gone" });
    expect(await keepPlan(store, { ...sent, planId: randomUUID() })).toMatchObject({ ok: false, reason: "gone" });
    expect(await plansOfTeacher(store, bo)).toEqual([]);
    expect(await planWithText(store, planId)).toMatchObject({ title: "First", edition: 1 });
  });

  it("throws a plan away so that it can be taken back for thirty days, and then erases it", async () => {
    const store = await newStore();
    const { ida } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const gone = await keep(store, ida, "Other");
    await throwAway(store, planId, true, AT("10:30"));
    await throwAway(store, gone.planId, true, AT("10:30"));
    await eraseThrownPlans(store, new Date("2026-12-10T10:29:00.000Z"));
    expect(await plansOfTeacher(store, ida)).toHaveLength(2);
    await throwAway(store, planId, false);
    await eraseThrownPlans(store, new Date("2026-12-10T10:31:00.000Z"));
    expect((await plansOfTeacher(store, ida)).map(({ id, thrown_at }) => [id, thrown_at])).toEqual([[planId, null]]);
    await keep(store, ida, "Second", { planId, base: 1 });
    const [version] = await versionsOfPlan(store, planId);
    await erasePlan(store, planId, version?.id ?? "");
    expect(await versionsOfPlan(store, planId)).toEqual([]);
    await keep(store, ida, "Third", { planId, base: 2 });
    await erasePlan(store, planId, null);
    expect(await plansOfTeacher(store, ida)).toEqual([]);
    expect(await store.db.selectFrom("plan_version").select("id").execute()).toEqual([]);
  });

  it("has room for so many plans and versions, and says so", async () => {
    const store = await newStore();
    const { ida, bo } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First", { words: "The one to stay" });
    for (let edition = 1; edition <= MOST_VERSIONS + 2; edition++)
      await keep(store, ida, `Change ${edition}`, { planId, base: edition, clock: `11:${10 + edition}` });
    const titles = await textsOf(store, planId);
    expect(titles).toHaveLength(MOST_VERSIONS);
    expect(titles).toContain("First");
    expect(titles).not.toContain("Change 1");
    const row = await store.db.selectFrom("plan").selectAll().where("id", "=", planId).executeTakeFirstOrThrow();
    const others = Array.from({ length: MOST_PLANS - 2 }, (_, i) => ({ ...row, id: `plan-${i}` }));
    await store.db.insertInto("plan").values(others).execute();
    // Two at once, and room for one.
    const last = await Promise.all(
      ["One", "Two"].map((title) =>
        keepPlan(store, { ownerId: ida, planId: randomUUID(), base: 0, text: planText(title), words: "" }),
      ),
    );
    expect(last.filter(({ ok }) => ok)).toHaveLength(1);
    expect(last.find(({ ok }) => !ok)).toMatchObject({ reason: "no-room" });
    // Another teacher's library has its own room.
    expect(await keep(store, bo, "Mine")).toMatchObject({ kept: "plan" });
  });

  it("is not kept in more often than anyone draws", async () => {
    const store = await newStore();
    const { ida, bo } = await twoTeachers(store);
    const answers = [];
    for (let i = 0; i < 301; i++) answers.push(await countKeeping(store, ida, AT("10:00")));
    expect(answers.slice(0, 300).every((answer) => answer === null)).toBe(true);
    expect(answers[300]).toMatchObject({ ok: false, reason: "too-many" });
    expect(answers[300]?.sentence).toMatch(/^You kept plans very often just now\. Wait 15 minutes/);
    expect(await countKeeping(store, bo, AT("10:00"))).toBeNull();
    expect(await countKeeping(store, ida, AT("10:15"))).toBeNull();
  });

  it("is full by its size as well", async () => {
    const store = await newStore();
    const { ida } = await twoTeachers(store);
    const { planId } = await keep(store, ida, "First");
    const big = await keep(store, ida, "Big");
    await store.db
      .updateTable("plan")
      .set({ bytes: MOST_BYTES - planText("First").length - 10 })
      .where("id", "=", big.planId)
      .execute();
    const more = { ownerId: ida, planId, base: 1, text: planText("x".repeat(70)), words: "" };
    expect(await keepPlan(store, more)).toMatchObject({ ok: false, reason: "no-room" });
    expect(await planWithText(store, planId)).toMatchObject({ title: "First", edition: 1 });
  });
});
