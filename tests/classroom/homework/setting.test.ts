import { expect, it } from "vitest";
import { makeClass } from "@/lib/classroom/accounts/classes";
import { agreeTerms, archiveHomework, reuseHomework } from "@/lib/classroom/homework/change-homework";
import { courseText } from "@/lib/classroom/homework/course-text";
import { exerciseFor } from "@/lib/classroom/homework/exercise-for";
import { homeworkOfClass, homeworkSheet } from "@/lib/classroom/homework/homework-of-class";
import { setHomework } from "@/lib/classroom/homework/set-homework";
import { resultsOf, whatIsDue } from "@/lib/classroom/homework/what-is-due";
import { onBothEngines } from "../engines";
import { AT, give, marksOf, set, two, WALLS, wallsExercise, wanted } from "./desk";

const fromCourse = (id: string) => courseText("exercises", id);

onBothEngines("setting homework", ({ newStore }) => {
  it("refuses what cannot be done, says why, and keeps nothing", async () => {
    const store = await newStore();
    const { room } = await two(store);
    const broken = WALLS.replace('"level"', '"lvl"');
    const cases = [
      [{ title: " \u200b" }, "no-title"],
      [{ feedback: "after-due", dueAt: null }, "no-date"],
      [{ items: [{ source: "course", exerciseId: "not-there", weight: 1 }] }, "no-exercise"],
      [{ items: [{ source: "own", text: broken, weight: 1 }] }, "bad-exercise"],
      [{ toWhom: { kind: "some", memberIds: ["someone-else"] } }, "no-student"],
      [{ toWhom: { kind: "habit", habit: "plan-depth" } }, "no-student"],
      [
        {
          criteria: [
            { name: "Line", points: 5 },
            { name: "Line", points: 3 },
          ],
        },
        "no-name",
      ],
    ] as const;
    for (const [other, reason] of cases)
      expect(await setHomework(store, { ...wanted(room.classId), ...(other as object) }, fromCourse)).toMatchObject({
        ok: false,
        reason,
      });
    expect(await store.db.selectFrom("homework").select("id").execute()).toEqual([]);
  });

  it("freezes an exercise as it was, gives variants to each, and keeps the order chosen", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId, {
      items: [
        { source: "variant", unit: "floor", level: 1, weight: 2 },
        { source: "own", text: WALLS, weight: 1 },
      ],
    });
    expect(made.items.map(({ place, source, weight }) => [place, source, weight])).toEqual([
      [1, "variant", 2],
      [2, "own", 1],
    ]);
    const [variant] = made.items;
    if (!variant) throw new Error("Nothing was set.");
    const [a, b] = [wim, tess].map((memberId) => exerciseFor(variant, made.homework, memberId)?.exercise);
    if (!a || !b) throw new Error("No variant came.");
    expect(a.id).not.toBe(b.id);
    // The wrong student's variant is no exercise of this one.
    expect(await give(store, variant.id, wim, { marks: marksOf(b) })).toMatchObject({ reason: "bad-marks" });
    expect(await give(store, variant.id, wim, { marks: marksOf(a) })).toMatchObject({ ok: true });
    const due = await whatIsDue(store, wim, AT("10:00"));
    expect(due[0]?.items.map(({ exerciseId, handedIn }) => [exerciseId, handedIn])).toEqual([
      [a.id, 1],
      [wallsExercise.id, 0],
    ]);
  });

  it("lists what is due by date, moves it to the results when all is in, and leaves out what is put away", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const late = await set(store, room.classId, { title: "Later", dueAt: AT("20:00").toISOString() });
    const soon = await set(store, room.classId, { title: "Soon", counts: "last" });
    const never = await set(store, room.classId, { title: "Any time", dueAt: null });
    const titles = async (memberId: string) =>
      (await whatIsDue(store, memberId, AT("09:00"))).map(({ title }) => title);
    expect(await titles(wim)).toEqual(["Soon", "Later", "Any time"]);
    await archiveHomework(store, never.homeworkId, true);
    await agreeTerms(store, late.homeworkId, wim, { dueAt: null, excused: true });
    expect(await titles(wim)).toEqual(["Soon"]);
    expect(await titles(tess)).toEqual(["Soon", "Later"]);
    await give(store, soon.itemId, wim);
    await give(store, soon.itemId, wim, { marks: marksOf(wallsExercise, 40), at: AT("12:01") });
    expect(await titles(wim)).toEqual([]);
    const results = await resultsOf(store, wim, AT("12:30"));
    expect(results.map(({ title, excused }) => [title, excused])).toEqual([
      ["Later", true],
      ["Soon", false],
    ]);
    expect(results[1]?.items[0]).toMatchObject({ score: 0, late: true, handedIn: 2 });
    expect((await homeworkOfClass(store, room.classId)).find(({ title }) => title === "Soon")).toMatchObject({
      students: 2,
      done: 1,
    });
    expect((await homeworkSheet(store, soon.homework, AT("12:30"))).students).toMatchObject([
      { name: "Tess", overdue: true, cells: [{ times: 0, lastAt: null }] },
      { name: "Wim", cells: [{ times: 2, late: true }] },
    ]);
    await archiveHomework(store, never.homeworkId, false);
    expect(await titles(wim)).toEqual(["Any time"]);
  });

  it("goes to another class with a new date and none of the first one's students", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const made = await set(store, room.classId, { toWhom: { kind: "some", memberIds: [wim] }, feedback: "after-due" });
    const other = await makeClass(store, room.teacherId, "Second year");
    if (!other.ok) throw new Error(other.sentence);
    expect(await reuseHomework(store, made.homeworkId, { classId: other.classId, dueAt: null })).toMatchObject({
      reason: "no-date",
    });
    const dueAt = AT("23:00").toISOString();
    const again = await reuseHomework(store, made.homeworkId, { classId: other.classId, dueAt });
    if (!again.ok) throw new Error(again.sentence);
    expect((await homeworkOfClass(store, other.classId))[0]).toMatchObject({ to_whom: "all", due_at: dueAt, items: 1 });
    expect((await homeworkOfClass(store, room.classId))[0]).toMatchObject({ to_whom: "some", students: 1 });
    const items = await store.db.selectFrom("homework_item").select(["id", "exercise"]).execute();
    expect(new Set(items.map(({ id }) => id)).size).toBe(2);
    expect(new Set(items.map(({ exercise }) => exercise))).toEqual(new Set([WALLS]));
  });

  it("finds those who hold a habit by the last they handed in", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const { itemId } = await set(store, room.classId);
    for (const memberId of [wim, tess]) await give(store, itemId, memberId);
    const claim = (habit: string) => JSON.stringify({ habits: [{ id: habit, odds: 50, marks: [], amount: null }] });
    await store.db
      .updateTable("hand_in")
      .set({ grade: claim("plan-depth") })
      .execute();
    await give(store, itemId, tess, { at: AT("10:00") });
    const made = await set(store, room.classId, { toWhom: { kind: "habit", habit: "plan-depth" } });
    expect(await store.db.selectFrom("homework_member").selectAll().execute()).toEqual([
      { homework_id: made.homeworkId, member_id: wim, due_at: null, excused: 0, assigned: 1 },
    ]);
  });
});
