import { expect, it } from "vitest";
import {
  excuse,
  overrideScore,
  scoreCriterion,
  setWeights,
  takeBackOverride,
} from "@/lib/classroom/gradebook/change-cell";
import { homeworkSubject, itemSubject } from "@/lib/classroom/gradebook/item-subject";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { readGradebook } from "@/lib/classroom/gradebook/read-gradebook";
import { readWork } from "@/lib/classroom/gradebook/read-work";
import { applyRegrade, previewRegrade } from "@/lib/classroom/gradebook/regrade";
import { keepRemark, NO_REMARK, readRemark } from "@/lib/classroom/gradebook/remarks";
import type { Store } from "@/lib/classroom/store/store";
import { readMarksOfClass, readTeachAgain } from "@/lib/classroom/teach-again/read-teach-again";
import { join, openRoom } from "../accounts/room";
import { onBothEngines } from "../engines";
import { FILES, putDrawnClass } from "./drawn-class";

const NOW = "2026-11-20T12:00:00.000Z";
const IN_TIME = "2026-11-09T12:00:00.000Z";
const LATE = "2026-11-11T12:00:00.000Z";

async function drawnClass(store: Store) {
  const room = await openRoom(store);
  const [wim, tess, noor] = [await join(room, "Wim"), await join(room, "Tess"), await join(room, "Noor")];
  await putDrawnClass(store, room.classId, [
    { id: "w1", memberId: wim.memberId, item: "floor", receivedAt: IN_TIME, habit: "plan-depth" },
    { id: "w2", memberId: wim.memberId, item: "floor", receivedAt: LATE, offMm: [0.1, 0.1] },
    { id: "t1", memberId: tess.memberId, item: "floor", receivedAt: IN_TIME, offMm: [2, 2] },
    { id: "t2", memberId: tess.memberId, item: "lamps", receivedAt: IN_TIME, habit: "plan-depth" },
  ]);
  const { classId, teacherId } = room;
  const book = async (now = NOW) => makeGradebook(await readGradebook(store, classId), now);
  const cell = async (memberId: string, itemId: string) =>
    (await book()).rows
      .flatMap(({ cells }) => cells)
      .find((each) => each.memberId === memberId && each.itemId === itemId);
  return { room, classId, teacherId, wim: wim.memberId, tess: tess.memberId, noor: noor.memberId, book, cell };
}

onBothEngines("a gradebook kept in a store", ({ newStore }) => {
  it("reads what was handed in", async () => {
    const { book } = await drawnClass(await newStore());
    const { work, rows } = await book();
    expect(work.map(({ title, columns }) => [title, ...columns.map((each) => each.title)])).toEqual([
      ["Week one", "Points on the floor", JSON.parse(FILES.lamps).title],
    ]);
    expect(rows.map(({ student }) => student.name)).toEqual(["Noor", "Tess", "Wim"]);
    expect(rows.map(({ cells }) => cells.map(({ state, late, attempts }) => [state, late, attempts]))).toEqual([
      [
        ["missing", false, 0],
        ["missing", false, 0],
      ],
      [
        ["scored", false, 1],
        ["scored", false, 1],
      ],
      [
        ["scored", true, 2],
        ["missing", false, 0],
      ],
    ]);
    expect(rows[0]?.mean).toBe(0);
    expect(rows[2]?.cells[0]?.score).toBe(100);
    expect(rows[2]?.mean).toBe(50);
  });

  it("keeps a score by hand with its reason, and takes it back", async () => {
    const store = await newStore();
    const { wim, cell } = await drawnClass(store);
    const place = { itemId: "floor", memberId: wim };
    await overrideScore(store, { ...place, score: 60, reason: "Drawn with help." }, NOW);
    await overrideScore(store, { ...place, score: 65, reason: "Drawn with a little help." }, NOW);
    expect(await cell(wim, "floor")).toMatchObject({
      score: 65,
      graded: 100,
      override: { reason: "Drawn with a little help." },
    });
    await takeBackOverride(store, place);
    expect(await cell(wim, "floor")).toMatchObject({ score: 100, override: null });
  });

  it("excuses, weighs and gives points within bounds", async () => {
    const store = await newStore();
    const { classId, noor, wim, book, cell } = await drawnClass(store);
    await excuse(store, { homeworkId: "week-one", memberId: noor, excused: true });
    expect((await book()).rows[0]).toMatchObject({ mean: null, cells: [{ state: "excused" }, { state: "excused" }] });
    await excuse(store, { homeworkId: "week-one", memberId: noor, excused: false });
    expect((await book()).rows[0]?.mean).toBe(0);
    await setWeights(store, {
      classId,
      homework: [{ id: "week-one", weight: 2 }],
      items: [{ id: "floor", weight: 3 }],
    });
    expect((await book()).rows[2]?.mean).toBe(75);
    await setWeights(store, {
      classId: "another",
      homework: [{ id: "week-one", weight: 9 }],
      items: [{ id: "floor", weight: 9 }],
    });
    expect((await book()).work[0]).toMatchObject({ weight: 2, columns: [{ weight: 3 }, { weight: 1 }] });
    const place = { itemId: "floor", memberId: wim, criterion: "Line quality" };
    expect(await scoreCriterion(store, { ...place, points: 4 })).toEqual({ ok: true });
    expect(await scoreCriterion(store, { ...place, points: 6 })).toMatchObject({
      ok: false,
      reason: "too-many-points",
    });
    expect(await scoreCriterion(store, { ...place, criterion: "Ink", points: 1 })).toMatchObject({
      ok: false,
      reason: "unknown",
    });
    expect((await cell(wim, "floor"))?.points).toEqual([4]);
    await scoreCriterion(store, { ...place, points: null });
    expect((await cell(wim, "floor"))?.points).toEqual([null]);
  });

  it("knows whose a place is, and none across classes", async () => {
    const store = await newStore();
    const { classId, teacherId, wim } = await drawnClass(store);
    expect(await itemSubject(store, { itemId: "floor", memberId: wim })).toEqual({ classId, teacherId, memberId: wim });
    await store.db
      .insertInto("class")
      .values({
        id: "other",
        teacher_id: teacherId,
        title: "Other",
        code: "AAAAAA",
        keep_days: 0,
        created_at: NOW,
        archived: 0,
      })
      .execute();
    await store.db
      .insertInto("member")
      .values({ id: "mia", class_id: "other", user_id: null, name: "Mia", number: null, joined_at: null, removed: 0 })
      .execute();
    expect(await itemSubject(store, { itemId: "floor", memberId: "mia" })).toBeUndefined();
    expect(await homeworkSubject(store, { homeworkId: "week-one", memberId: "mia" })).toBeUndefined();
    expect(await homeworkSubject(store, { homeworkId: "week-one" })).toEqual({ classId, teacherId });
  });

  it("previews grading anew, applies just that, and nothing when something came between", async () => {
    const store = await newStore();
    const { tess, noor, cell } = await drawnClass(store);
    const regrade = { homeworkId: "week-one", strictness: "drafted", course: null } as const;
    const before = await cell(tess, "floor");
    const preview = await previewRegrade(store, regrade);
    expect(await cell(tess, "floor")).toEqual(before);
    expect(preview.all).toBe(4);
    const change = preview.changes.find(({ handInId }) => handInId === "t1");
    expect(change).toMatchObject({ name: "Tess", exercise: "Points on the floor", from: before?.graded });
    expect(change?.to).toBeLessThan(before?.graded ?? 0);
    expect(await applyRegrade(store, regrade, "another seal", "0.2.0")).toMatchObject({ ok: false, reason: "changed" });
    expect(await cell(tess, "floor")).toEqual(before);

    const row = await store.db.selectFrom("hand_in").selectAll().where("id", "=", "t1").executeTakeFirstOrThrow();
    await store.db
      .insertInto("hand_in")
      .values({ ...row, id: "n1", member_id: noor })
      .execute();
    expect(await applyRegrade(store, regrade, preview.seal, "0.2.0")).toMatchObject({ ok: false, reason: "changed" });
    const again = await previewRegrade(store, regrade);
    expect(await applyRegrade(store, regrade, again.seal, "0.2.0")).toMatchObject({ ok: true });
    expect((await cell(tess, "floor"))?.graded).toBeCloseTo(change?.to ?? -1, 9);
    expect((await previewRegrade(store, { ...regrade, strictness: "as-set" })).changes).toEqual([]);
    const kept = await store.db
      .selectFrom("hand_in")
      .select(["engine_version", "marks"])
      .where("id", "=", "t1")
      .executeTakeFirst();
    expect(kept).toEqual({ engine_version: "0.2.0", marks: row.marks });
  });

  it("grades by the course's file as it is now, and keeps what it cannot grade", async () => {
    const store = await newStore();
    const { cell, tess } = await drawnClass(store);
    const file = JSON.parse(FILES.floor);
    const changed = JSON.stringify({ ...file, task: { ...file.task, strictness: "drafted" } });
    await store.db.updateTable("hand_in").set({ marks: "not marks" }).where("id", "=", "w1").execute();
    const regrade = { homeworkId: "week-one", strictness: "as-set", course: new Map([[file.id, changed]]) } as const;
    const preview = await previewRegrade(store, regrade);
    expect(preview.kept).toEqual([{ name: "Wim", exercise: file.title, sentence: "The marks cannot be read." }]);
    expect(preview.changes.map(({ handInId }) => handInId)).toContain("t1");
    expect(await applyRegrade(store, regrade, preview.seal, "0.1.0")).toMatchObject({ ok: true });
    expect((await cell(tess, "floor"))?.graded).toBeCloseTo(
      preview.changes.find(({ handInId }) => handInId === "t1")?.to ?? -1,
      9,
    );
    const item = await store.db
      .selectFrom("homework_item")
      .select("exercise")
      .where("id", "=", "floor")
      .executeTakeFirst();
    expect(item?.exercise).toBe(changed);
  });

  it("grades a variant by what each student had, and takes no course file for it", async () => {
    const store = await newStore();
    const { cell, tess } = await drawnClass(store);
    await store.db.updateTable("homework_item").set({ source: "variant", exercise: null }).execute();
    const file = JSON.parse(FILES.floor);
    const changed = JSON.stringify({ ...file, task: { ...file.task, strictness: "drafted" } });
    const before = await cell(tess, "floor");
    const regrade = { homeworkId: "week-one", strictness: "as-set", course: new Map([[file.id, changed]]) } as const;
    const preview = await previewRegrade(store, regrade);
    expect(preview).toMatchObject({ all: 4, changes: [], kept: [] });
    expect(await applyRegrade(store, regrade, preview.seal, "0.2.0")).toMatchObject({ ok: true });
    expect(await cell(tess, "floor")).toEqual(before);
  });

  it("leaves a student's own due date when it excuses", async () => {
    const store = await newStore();
    const { noor, book } = await drawnClass(store);
    const own = "2026-12-01T12:00:00.000Z";
    await store.db
      .insertInto("homework_member")
      .values({ homework_id: "week-one", member_id: noor, due_at: own, excused: 0, assigned: 1 })
      .execute();
    expect((await book()).rows[0]?.cells[0]?.state).toBe("waiting");
    await excuse(store, { homeworkId: "week-one", memberId: noor, excused: true });
    await excuse(store, { homeworkId: "week-one", memberId: noor, excused: false });
    const kept = await store.db.selectFrom("homework_member").selectAll().executeTakeFirst();
    expect(kept).toMatchObject({ due_at: own, assigned: 1, excused: 0 });
  });

  it("keeps a remark beside the drawing, and shows it when results are shown", async () => {
    const store = await newStore();
    const { wim } = await drawnClass(store);
    const strokes = [
      [
        [0, 0.5],
        [0.25, 0.75],
      ] as const,
    ];
    await keepRemark(store, { handInId: "w1", strokes, words: " Look at the depth. " }, NOW);
    await keepRemark(store, { handInId: "w1", strokes, words: "Look at the depth again." }, NOW);
    expect(await readRemark(store, "w1")).toEqual({ strokes, words: "Look at the depth again.", at: NOW });
    const work = await readWork(store, "w1", NOW);
    expect(work).toMatchObject({
      name: "Wim",
      title: "Points on the floor",
      subject: { memberId: wim, released: true },
    });
    expect(work?.attempts.map(({ id }) => id)).toEqual(["w1", "w2"]);
    expect(work?.grade.habits[0]?.id).toBe("plan-depth");
    await store.db.updateTable("homework").set({ feedback: "after-due" }).execute();
    expect((await readWork(store, "w1", IN_TIME))?.subject.released).toBe(false);
    expect((await readWork(store, "w1", NOW))?.subject.released).toBe(true);
    await store.db.updateTable("homework").set({ due_at: null }).execute();
    expect((await readWork(store, "w1", NOW))?.subject.released).toBe(false);
    await keepRemark(store, { handInId: "w1", strokes: [], words: "  " }, NOW);
    expect(await readRemark(store, "w1")).toEqual(NO_REMARK);
    expect(await readWork(store, "nothing", NOW)).toBeUndefined();
  });

  it("tells what to teach again", async () => {
    const store = await newStore();
    const { classId, wim, tess, book } = await drawnClass(store);
    const { figures, habits } = await readTeachAgain(store, classId, NOW);
    expect(figures.map(({ n }) => n)).toEqual([2, 1]);
    expect(habits[0]).toMatchObject({ id: "plan-depth", counts: { gone: 1, untried: 1, still: 0 } });
    expect(habits[0]?.holders).toEqual(
      expect.arrayContaining([
        { memberId: wim, state: "gone" },
        { memberId: tess, state: "untried" },
      ]),
    );
    const one = await readMarksOfClass(store, await book(), "floor");
    const [first] = one?.exercise.task.marks ?? [];
    expect(one?.marks.get(first ?? "")?.map(({ name, handInId }) => [name, handInId])).toEqual([
      ["Tess", "t1"],
      ["Wim", "w2"],
    ]);
    await store.db.updateTable("homework_item").set({ source: "variant" }).execute();
    expect(await readMarksOfClass(store, await book(), "floor")).toBeUndefined();
  });
});
