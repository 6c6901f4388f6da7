import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import type { Person } from "@/lib/classroom/access/person";
import { agreeTerms } from "@/lib/classroom/homework/change-homework";
import { deskOf } from "@/lib/classroom/homework/desk-of";
import { resultsOf } from "@/lib/classroom/homework/what-is-due";
import { readExercise } from "@/lib/exercise/read-exercise";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { onBothEngines } from "../engines";
import { AT, give, marksOf, set, two, wallsExercise } from "./desk";

const person = ({ memberId, classId }: { memberId: string; classId: string }): Person => ({
  kind: "student",
  userId: "u",
  name: "Wim",
  places: [{ memberId, classId }],
});

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
