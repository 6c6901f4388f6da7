import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import type { Person } from "@/lib/classroom/access/person";
import { makeClass } from "@/lib/classroom/accounts/classes";
import { agreeTerms, archiveHomework, reuseHomework } from "@/lib/classroom/homework/change-homework";
import { deskOf } from "@/lib/classroom/homework/desk-of";
import { exerciseFor } from "@/lib/classroom/homework/exercise-for";
import { handIn } from "@/lib/classroom/homework/hand-in";
import { homeworkOfClass, homeworkSheet } from "@/lib/classroom/homework/homework-of-class";
import { setHomework } from "@/lib/classroom/homework/set-homework";
import { resultsOf, whatIsDue } from "@/lib/classroom/homework/what-is-due";
import type { Store } from "@/lib/classroom/store/store";
import { readExercise } from "@/lib/exercise/read-exercise";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { join, openRoom, type Room } from "../accounts/room";
import { onBothEngines } from "../engines";
import { AT, courseText, marksOf, set, WALLS, wallsExercise, wanted } from "./desk";

const person = ({ memberId, classId }: { memberId: string; classId: string }): Person => ({
  kind: "student",
  userId: "u",
  name: "Wim",
  places: [{ memberId, classId }],
});

function give(
  store: Store,
  itemId: string,
  memberId: string,
  { id = randomUUID(), marks = marksOf(wallsExercise) as unknown, at = AT("09:00") } = {},
) {
  return handIn(store, { id, itemId, memberId, marks, madeAt: AT("08:59").toISOString() }, at);
}

async function two(store: Store): Promise<{ room: Room; wim: string; tess: string }> {
  const room = await openRoom(store);
  return { room, wim: (await join(room, "Wim")).memberId, tess: (await join(room, "Tess")).memberId };
}

onBothEngines("handing in", ({ newStore }) => {
  it("keeps the same work once, however often and at once it is sent, and answers each time alike", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const { itemId } = await set(store, room.classId, { attempts: 1 });
    const id = randomUUID();
    const all = await Promise.all(Array.from({ length: 12 }, () => give(store, itemId, wim, { id })));
    for (const each of all) expect(each).toEqual(all[0]);
    expect(all[0]).toMatchObject({ ok: true, receipt: { id, handedIn: 1, attemptsLeft: 0, late: false } });
    // Sent again after the due date it is still the first, in time.
    expect(await give(store, itemId, wim, { id, at: AT("13:00") })).toMatchObject({
      ok: true,
      receipt: { late: false, receivedAt: AT("09:00").toISOString() },
    });
    expect(await store.db.selectFrom("hand_in").select("id").execute()).toHaveLength(1);
  });

  it("counts attempts though several come at once, and refuses those beyond in words", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const { itemId } = await set(store, room.classId, { attempts: 2 });
    const all = await Promise.all(Array.from({ length: 6 }, () => give(store, itemId, wim)));
    expect(all.filter(({ ok }) => ok)).toHaveLength(2);
    for (const each of all) if (!each.ok) expect(each.reason).toBe("no-attempt-left");
    // Another's attempts are another's.
    expect(await give(store, itemId, tess)).toMatchObject({ ok: true, receipt: { attemptsLeft: 1 } });
  });

  it("grades here: what is stored is the grade of the stored exercise, at the sheet's own scale", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const { itemId } = await set(store, room.classId, { strictness: "drafted", hints: "none" });
    const marks = marksOf(wallsExercise, 0.05);
    // A student who says that it was drawn smaller is not allowed more for it.
    const done = await give(store, itemId, wim, { marks: { ...marks, scale: "1/8in=1ft" } });
    expect(done).toMatchObject({ ok: true });
    const row = await store.db.selectFrom("hand_in").selectAll().executeTakeFirstOrThrow();
    const stored = readExercise(row.exercise);
    if (!stored.ok) throw new Error("What was stored cannot be read.");
    expect(stored.exercise.task).toMatchObject({ strictness: "drafted", hints: "none" });
    const grade = gradeMarks(stored.exercise, marks);
    expect(JSON.parse(row.grade)).toEqual(JSON.parse(JSON.stringify(grade)));
    expect(row.score).toBeCloseTo(grade.score ?? -1, 9);
    expect(row.score).toBeGreaterThan(0);
    expect(row.score).toBeLessThan(100);
    expect(row).toMatchObject({ engine_version: "0.1.0", made_at: AT("08:59").toISOString() });
  });

  it("refuses what are no marks of this exercise, and keeps nothing of it", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const { itemId } = await set(store, room.classId);
    const good = marksOf(wallsExercise);
    const far = { ...good, marks: good.marks.map((mark) => ({ ...mark, at: [1e13, 0] })) };
    const cases: readonly (readonly [unknown, string])[] = [
      [null, "bad-marks"],
      [[], "bad-marks"],
      [{ ...good, exercise: "another" }, "bad-marks"],
      [{ ...good, version: 99 }, "bad-marks"],
      [{ ...good, marks: [] }, "bad-marks"],
      [{ ...good, marks: [{ point: "elsewhere.foot", at: [0, 0] }] }, "bad-marks"],
      [{ ...good, score: 100 }, "bad-marks"],
      [far, "bad-marks"],
      [{ ...good, marks: Array.from({ length: 2000 }, () => good.marks[0]) }, "too-long"],
    ];
    for (const [marks, reason] of cases) expect(await give(store, itemId, wim, { marks })).toMatchObject({ reason });
    expect(await give(store, "no-item", wim)).toMatchObject({ reason: "gone" });
    expect(await store.db.selectFrom("hand_in").select("id").execute()).toEqual([]);
  });

  it("keeps score, grade and truth back until after the due date of the student", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId, { feedback: "after-due" });
    await agreeTerms(store, made.homeworkId, tess, { dueAt: AT("18:00").toISOString(), excused: false });
    const id = randomUUID();
    const early = await give(store, made.itemId, wim, { id });
    expect(early).toMatchObject({ ok: true, receipt: { result: null } });
    expect(JSON.stringify(early)).not.toMatch(/score|true"|grade/);
    await give(store, made.itemId, tess);
    const score = async (memberId: string, clock: string) =>
      (await resultsOf(store, memberId, AT(clock)))[0]?.items[0]?.score;
    expect(await score(wim, "12:00")).toBeNull();
    expect(await score(wim, "12:01")).toBe(100);
    expect(await score(tess, "12:01")).toBeNull();
    expect(await score(tess, "18:01")).toBe(100);
    const wims = person({ memberId: wim, classId: room.classId });
    const held = await deskOf(store, wims, made.itemId, AT("11:00"));
    expect(held).toMatchObject({ held: true, last: { marks: null, receipt: { result: null } } });
    expect(await deskOf(store, wims, made.itemId, AT("12:01"))).toMatchObject({
      held: false,
      last: { marks: { exercise: wallsExercise.id }, receipt: { result: { score: 100 } } },
    });
    expect(await give(store, made.itemId, wim, { id, at: AT("12:01") })).toMatchObject({
      receipt: { result: { score: 100 } },
    });
    // Late work is told so, and is shown its result: the date has passed.
    expect(await give(store, made.itemId, wim, { at: AT("12:30") })).toMatchObject({
      receipt: { late: true, result: { score: 100 } },
    });
    expect(await give(store, made.itemId, tess, { at: AT("12:30") })).toMatchObject({ receipt: { late: false } });
  });

  it("gives no student another's exercise, work or result", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const { itemId } = await set(store, room.classId, { toWhom: { kind: "some", memberIds: [wim] } });
    const id = randomUUID();
    expect(await give(store, itemId, wim, { id })).toMatchObject({ ok: true });
    expect(await give(store, itemId, tess)).toMatchObject({ reason: "not-yours" });
    const both = await set(store, room.classId);
    expect(await give(store, both.itemId, tess, { id })).toMatchObject({ reason: "not-yours" });
    const { classId } = room;
    const seen = async (who: Person) => (await deskOf(store, who, itemId, AT("09:00")))?.last?.receipt.id;
    expect(await seen(person({ memberId: wim, classId }))).toBe(id);
    for (const who of [
      person({ memberId: tess, classId }),
      person({ memberId: wim, classId: "elsewhere" }),
      { kind: "nobody" } as const,
      { kind: "teacher", userId: room.teacherId, name: "Ida" } as const,
    ])
      expect(await deskOf(store, who, itemId, AT("09:00"))).toBeUndefined();
  });
});

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
      expect(await setHomework(store, { ...wanted(room.classId), ...(other as object) }, courseText)).toMatchObject({
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
