import { randomUUID } from "node:crypto";
import { expect, it } from "vitest";
import { applyRegrade, previewRegrade } from "@/lib/classroom/gradebook/regrade";
import { exerciseFor } from "@/lib/classroom/homework/exercise-for";
import { findSheet } from "@/lib/classroom/pile/find-sheet";
import { handInFor, PAPER_IN_TIME } from "@/lib/classroom/pile/hand-in-for";
import type { Store } from "@/lib/classroom/store/store";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { onBothEngines } from "../engines";
import { AT, give, marksOf, set, two, WALLS, wallsExercise } from "../homework/desk";

const sheet = layOutPracticeSheet(wallsExercise, { paper: "letter" });
if (!sheet) throw new Error("The sheet has no room on Letter.");
const PRINTED = sheet.scale.written;

const onPaper = (aside = 0, scale: string | undefined = PRINTED) => ({
  ...marksOf(wallsExercise, aside),
  ...(scale === undefined ? {} : { scale }),
});

function giveFor(
  store: Store,
  itemId: string,
  memberId: string,
  { id = randomUUID(), marks = onPaper() as unknown, late = false, at = AT("09:00") } = {},
) {
  return handInFor(store, { id, itemId, memberId, marks, madeAt: AT("08:59").toISOString(), late }, at);
}

const sought = (classId: string, other = {}) => ({
  classId,
  exercise: wallsExercise.id,
  version: wallsExercise.version,
  ...other,
});

onBothEngines("a pile", ({ newStore }) => {
  it("is graded at the scale its sheets were printed at, and stays so when it is graded anew", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const { itemId, homeworkId } = await set(store, room.classId, { strictness: "drafted" });
    const marks = onPaper(0.05);
    expect(PRINTED).not.toBe(wallsExercise.scale);
    expect(await giveFor(store, itemId, wim, { marks })).toMatchObject({ ok: true });
    const row = await store.db.selectFrom("hand_in").selectAll().executeTakeFirstOrThrow();
    const drafted = { ...wallsExercise, task: { ...wallsExercise.task, strictness: "drafted" as const } };
    const [printed, asSet] = [
      gradeMarks(drafted, marks).score,
      gradeMarks(drafted, { ...marks, scale: wallsExercise.scale }).score,
    ];
    expect(row.score).toBeCloseTo(printed ?? -1, 9);
    // The smaller the drawing, the more millimetres of the stage under a pencil's point.
    expect(printed).not.toBeCloseTo(asSet ?? -1, 1);
    const kept = JSON.parse(row.marks);
    expect(kept.scale).toBe(PRINTED);
    expect(kept.marks.every((mark: { with?: string }) => mark.with === "paper")).toBe(true);
    const regrade = { homeworkId, strictness: "as-set", course: null } as const;
    const preview = await previewRegrade(store, regrade);
    expect(preview).toMatchObject({ all: 1, changes: [], kept: [] });
    expect(await applyRegrade(store, regrade, preview.seal, "0.1.0")).toMatchObject({ ok: true });
  });

  it("leaves a student no say in the scale, now or when graded anew", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const { itemId, homeworkId } = await set(store, room.classId);
    await give(store, itemId, wim, { marks: { ...marksOf(wallsExercise, 0.05), scale: "1/8in=1ft" } });
    expect(await previewRegrade(store, { homeworkId, strictness: "as-set", course: null })).toMatchObject({
      all: 1,
      changes: [],
    });
  });

  it("counts as in time however late it is photographed, unless the teacher calls it late", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const { itemId } = await set(store, room.classId);
    const at = AT("15:00");
    expect(await giveFor(store, itemId, wim, { at })).toMatchObject({ ok: true, receipt: { late: false } });
    expect(await giveFor(store, itemId, tess, { at, late: true })).toMatchObject({ ok: true, receipt: { late: true } });
    const rows = await store.db.selectFrom("hand_in").select(["member_id", "in_time_reason"]).execute();
    expect(rows.find(({ member_id }) => member_id === wim)?.in_time_reason).toBe(PAPER_IN_TIME);
    expect(rows.find(({ member_id }) => member_id === tess)?.in_time_reason).toBeNull();
    // Called late before it is due, it is not.
    expect(await giveFor(store, itemId, tess, { late: true })).toMatchObject({ ok: true, receipt: { late: false } });
  });

  it("keeps one page once, and never for two students", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const { itemId } = await set(store, room.classId);
    const id = randomUUID();
    const all = await Promise.all(Array.from({ length: 5 }, () => giveFor(store, itemId, wim, { id })));
    for (const each of all) expect(each).toMatchObject({ ok: true, receipt: { id, handedIn: 1 } });
    expect(await giveFor(store, itemId, tess, { id })).toMatchObject({ ok: false, reason: "not-yours" });
    expect(await store.db.selectFrom("hand_in").select("id").execute()).toHaveLength(1);
  });

  it("refuses in words for a teacher, and keeps nothing", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const { itemId } = await set(store, room.classId, { attempts: 1, toWhom: { kind: "some", memberIds: [wim] } });
    const cases: readonly (readonly [string, unknown, string])[] = [
      [wim, onPaper(0, "1:3"), "no-scale"],
      [wim, { ...onPaper(), scale: undefined }, "no-scale"],
      [wim, onPaper(0, "1:50"), "no-scale"],
      [wim, { ...onPaper(), exercise: "another" }, "bad-marks"],
      [wim, { ...onPaper(), marks: [] }, "bad-marks"],
      [wim, null, "bad-marks"],
      [tess, onPaper(), "not-yours"],
    ];
    for (const [member, marks, reason] of cases) {
      const done = await giveFor(store, itemId, member, { marks });
      expect(done).toMatchObject({ ok: false, reason });
      expect(done.ok ? "" : done.sentence).not.toMatch(/\byour?\b.*teacher|set to you/);
    }
    expect(await store.db.selectFrom("hand_in").select("id").execute()).toEqual([]);
    expect(await giveFor(store, itemId, wim)).toMatchObject({ ok: true });
    const again = await giveFor(store, itemId, wim);
    expect(again).toMatchObject({ reason: "no-attempt-left", sentence: expect.stringContaining("This student") });
  });

  it("finds the homework of a sheet by its exercise and version, and whom it was set to", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    expect(await findSheet(store, sought(room.classId))).toEqual({ kind: "not-set" });
    const older = await set(store, room.classId, { toWhom: { kind: "some", memberIds: [wim] } }, AT("07:00"));
    const newer = await set(store, room.classId, { title: "Week two" }, AT("08:00"));
    await giveFor(store, older.itemId, wim);
    const found = await findSheet(store, sought(room.classId));
    if (found.kind !== "set") throw new Error("It was set.");
    expect(found.exercise.id).toBe(wallsExercise.id);
    expect(found.works.map(({ itemId, homework }) => [itemId, homework])).toEqual([
      [newer.itemId, "Week two"],
      [older.itemId, "Week one"],
    ]);
    expect(found.works.map(({ memberIds }) => [...memberIds].sort())).toEqual([[wim, tess].sort(), [wim]]);
    expect(found.works.map(({ handedIn }) => handedIn)).toEqual([{}, { [wim]: 1 }]);
    expect(await findSheet(store, sought(room.classId, { version: wallsExercise.version + 1 }))).toEqual({
      kind: "other-version",
      title: wallsExercise.title,
      versions: [wallsExercise.version],
    });
    for (const other of [{ exercise: "another" }, { exercise: "walls-1-77" }, { classId: "elsewhere" }])
      expect(await findSheet(store, sought(room.classId, other))).toEqual({ kind: "not-set" });
  });

  it("knows a student by the exercise that was made for nobody else", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const items = [{ source: "variant" as const, unit: "floor" as const, level: 2, weight: 1 }];
    const { homework, items: rows } = await set(store, room.classId, { items });
    const [item] = rows;
    if (!item) throw new Error("Nothing was set.");
    for (const memberId of [wim, tess]) {
      const own = exerciseFor(item, homework, memberId)?.exercise;
      if (!own) throw new Error("No variant came of it.");
      expect(await findSheet(store, sought(room.classId, { exercise: own.id, version: own.version }))).toMatchObject({
        kind: "set",
        exercise: { id: own.id },
        works: [{ itemId: item.id, ownVariant: true, memberIds: [memberId] }],
      });
    }
  });

  it("no longer finds what was taken out of the homework", async () => {
    const store = await newStore();
    const { room } = await two(store);
    const { itemId } = await set(store, room.classId, {
      items: [
        { source: "own", text: WALLS, weight: 1 },
        { source: "course", exerciseId: "points-on-the-floor", weight: 1 },
      ],
    });
    expect(await findSheet(store, sought(room.classId))).toMatchObject({ kind: "set", works: [{ itemId }] });
    await store.db
      .updateTable("homework_item")
      .set({ taken_out_at: AT("09:00").toISOString() })
      .where("id", "=", itemId)
      .execute();
    expect(await findSheet(store, sought(room.classId))).toEqual({ kind: "not-set" });
  });
});
