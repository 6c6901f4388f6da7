import { randomUUID } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exportWork } from "@/lib/classroom/accounts/export-work";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { readGradebook } from "@/lib/classroom/gradebook/read-gradebook";
import { previewRegrade } from "@/lib/classroom/gradebook/regrade";
import { agreeTerms } from "@/lib/classroom/homework/change-homework";
import { courseText } from "@/lib/classroom/homework/course-text";
import { deskOf } from "@/lib/classroom/homework/desk-of";
import { editHomework } from "@/lib/classroom/homework/edit-homework";
import { findHomework } from "@/lib/classroom/homework/find-homework";
import { homeworkSheet } from "@/lib/classroom/homework/homework-of-class";
import { countInTime } from "@/lib/classroom/homework/judge-lateness";
import { planItems } from "@/lib/classroom/homework/plan-items";
import type { ChangeHomework } from "@/lib/classroom/homework/requests";
import { ChangeHomeworkRequest, CountInTimeRequest } from "@/lib/classroom/homework/requests";
import { whatIsDue } from "@/lib/classroom/homework/what-is-due";
import type { Store } from "@/lib/classroom/store/store";
import { seeded } from "../../seeded";
import { onBothEngines } from "../engines";
import { AT, give, marksOf, set, two, WALLS, wallsExercise, wanted } from "./desk";

const NOTHING = { hides: 0, seal: null };
const fromCourse = (id: string) => courseText("exercises", id);
const kept = (itemId: string, weight = 1) => ({ source: "kept", itemId, weight }) as const;
const LAMPS = { source: "course", exerciseId: "ring-of-lamps", weight: 1 } as const;

/** The change that leaves everything as it was set, but for what a test wants otherwise. */
function change(homeworkId: string, itemId: string, other: Partial<ChangeHomework> = {}): ChangeHomework {
  const { classId: _, items: __, ...rules } = wanted("");
  return { homeworkId, items: [kept(itemId)], agreed: NOTHING, ...rules, ...other };
}

const edit = (store: Store, change_: ChangeHomework, clock = "10:00") =>
  editHomework(store, change_, fromCourse, AT(clock));

const handIns = (store: Store) =>
  store.db.selectFrom("hand_in").selectAll().orderBy("received_at").orderBy("id").execute();

describe("what becomes of the exercises", () => {
  const before = [
    { id: "a", taken_out_at: null },
    { id: "b", taken_out_at: null },
    { id: "c", taken_out_at: "2026-11-25T08:00:00.000Z" },
  ];
  it.each([
    ["all as they were", [kept("a"), kept("b")], ["a", "b"], 0, []],
    ["another order", [kept("b"), kept("a")], ["b", "a"], 0, []],
    ["one goes", [kept("b")], ["b"], 0, ["a"]],
    ["one comes back", [kept("a"), kept("b"), kept("c")], ["a", "b", "c"], 0, []],
    ["one comes, another goes", [LAMPS, kept("a")], ["a"], 1, ["b"]],
    ["all go, for another", [LAMPS], [], 1, ["a", "b"]],
  ] as const)("%s", (_, items, keep, added, takeOut) => {
    const plan = planItems(before, [...items]);
    if (!plan.ok) throw new Error(plan.sentence);
    expect(plan.keep.map(({ itemId }) => itemId)).toEqual(keep);
    expect(plan.add).toHaveLength(added);
    expect(plan.takeOut).toEqual(takeOut);
  });
  it.each([
    ["one of another homework", [kept("z")]],
    ["the same twice", [kept("a"), kept("a")]],
  ])("refuses %s", (_, items) => expect(planItems(before, items)).toMatchObject({ ok: false, reason: "unknown" }));

  it("loses none and places each once, whatever is chosen", () => {
    const ids = fc.uniqueArray(fc.constantFrom("a", "b", "c"));
    fc.assert(
      fc.property(ids, fc.nat({ max: 3 }), (chosen, more) => {
        const items = [...chosen.map((id) => kept(id)), ...Array.from({ length: more }, () => LAMPS)];
        const plan = planItems(before, items);
        if (!plan.ok) throw new Error(plan.sentence);
        const places = [...plan.keep, ...plan.add].map(({ place }) => place).sort((a, b) => a - b);
        expect(places).toEqual(items.map((_, i) => i + 1));
        const stay = new Set([...plan.keep.map(({ itemId }) => itemId), ...plan.takeOut]);
        for (const { id, taken_out_at } of before) expect(stay.has(id) || taken_out_at !== null).toBe(true);
      }),
      seeded,
    );
  });
});

describe("the form of a change", () => {
  it("takes what is in already beside what is new, and no more than was asked", () => {
    const good = change("h", "i", { items: [kept("i"), LAMPS] });
    expect(ChangeHomeworkRequest.safeParse(good).success).toBe(true);
    for (const bad of [
      { ...good, items: [] },
      { ...good, agreed: { hides: -1, seal: null } },
      { ...good, agreed: undefined },
      { ...good, classId: "c" },
      { ...good, items: [{ source: "kept", itemId: "i" }] },
    ])
      expect(ChangeHomeworkRequest.safeParse(bad).success).toBe(false);
    expect(CountInTimeRequest.safeParse({ handInId: "h", reason: "  " }).success).toBe(false);
    expect(CountInTimeRequest.safeParse({ handInId: "h", reason: null }).success).toBe(true);
  });
});

onBothEngines("changing homework that is set", ({ newStore }) => {
  it("changes all that it was set with, and leaves what was handed in", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const made = await set(store, room.classId);
    await give(store, made.itemId, wim);
    const before = await handIns(store);
    const other = {
      title: " Week  two ",
      attempts: 3,
      counts: "last",
      feedback: "after-due",
      hints: "none",
      weight: 2,
      criteria: [{ name: "Line", points: 5 }],
      items: [LAMPS, kept(made.itemId, 4)],
    } as const;
    expect(
      await edit(
        store,
        change(made.homeworkId, made.itemId, { ...other, criteria: [...other.criteria], items: [...other.items] }),
      ),
    ).toEqual({
      ok: true,
      done: true,
    });
    const found = await findHomework(store.db, made.homeworkId);
    expect(found?.homework).toMatchObject({
      title: "Week two",
      attempts: 3,
      counts: "last",
      feedback: "after-due",
      hints: "none",
      weight: 2,
      criteria: JSON.stringify(other.criteria),
      created_at: made.homework.created_at,
      archived: 0,
    });
    const [first, second] = (await whatIsDue(store, wim, AT("10:00")))[0]?.items ?? [];
    expect(first).toMatchObject({ exerciseId: "ring-of-lamps", handedIn: 0, attemptsLeft: 3 });
    expect(second).toMatchObject({ exerciseId: wallsExercise.id, handedIn: 1, attemptsLeft: 2, score: null });
    expect(await handIns(store)).toEqual(before);
  });

  it("refuses what cannot be, and changes nothing then", async () => {
    const store = await newStore();
    const { room } = await two(store);
    const made = await set(store, room.classId);
    const other = await set(store, room.classId);
    const cases = [
      [{ title: " " }, "no-title"],
      [{ feedback: "after-due", dueAt: null }, "no-date"],
      [{ items: [{ source: "course", exerciseId: "not-there", weight: 1 }] }, "no-exercise"],
      [{ items: [{ source: "own", text: WALLS.replace('"level"', '"lvl"'), weight: 1 }] }, "bad-exercise"],
      [{ items: [kept(other.itemId)] }, "unknown"],
      [{ toWhom: { kind: "some", memberIds: ["someone-else"] } }, "no-student"],
      [{ homeworkId: "another" }, "gone"],
    ] as const;
    for (const [bad, reason] of cases)
      expect(
        await edit(store, { ...change(made.homeworkId, made.itemId), title: "Other", ...(bad as object) }),
      ).toMatchObject({ ok: false, reason });
    expect((await findHomework(store.db, made.homeworkId))?.homework).toEqual(made.homework);
    expect((await store.db.selectFrom("homework_item").selectAll().execute()).length).toBe(2);
  });

  it("judges what came in by the new date, at once with it, and by a student's own where there is one", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId);
    const lateOf = async () => (await handIns(store)).map(({ late }) => late);
    await give(store, made.itemId, wim, { at: AT("09:00") });
    await give(store, made.itemId, tess, { at: AT("13:00") });
    expect(await lateOf()).toEqual([0, 1]);
    const due = (clock: string | null) =>
      edit(store, change(made.homeworkId, made.itemId, { dueAt: clock && AT(clock).toISOString() }), "14:00");
    await due("08:30");
    expect(await lateOf()).toEqual([1, 1]);
    await due("13:00");
    expect(await lateOf()).toEqual([0, 0]);
    await agreeTerms(store, made.homeworkId, wim, { dueAt: AT("08:59").toISOString(), excused: false });
    expect(await lateOf()).toEqual([1, 0]);
    await due("23:00");
    expect(await lateOf()).toEqual([1, 0]);
    await agreeTerms(store, made.homeworkId, wim, { dueAt: null, excused: false });
    expect(await lateOf()).toEqual([0, 0]);
    await due(null);
    expect(await lateOf()).toEqual([0, 0]);
    // The gradebook says the same as the rows.
    await due("12:00");
    const book = makeGradebook(await readGradebook(store, room.classId), AT("14:00").toISOString());
    expect(book.rows.map(({ cells }) => cells[0]?.late)).toEqual([true, false]);
    expect(await lateOf()).toEqual([0, 1]);
  });

  it("judges what comes in while the date is changed by one date or the other, never by a date that is gone", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId, { dueAt: AT("08:00").toISOString() });
    const later = change(made.homeworkId, made.itemId, { dueAt: AT("20:00").toISOString() });
    await Promise.all([
      ...Array.from({ length: 6 }, () => give(store, made.itemId, wim)),
      edit(store, later),
      ...Array.from({ length: 6 }, () => give(store, made.itemId, tess)),
    ]);
    const rows = await handIns(store);
    expect(rows).toHaveLength(12);
    expect(new Set(rows.map(({ late }) => late))).toEqual(new Set([0]));
  });

  it("takes out an exercise nobody has handed in, and one with drawings only once their number was agreed to", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId, { items: [LAMPS, { source: "own", text: WALLS, weight: 1 }] });
    const [lamps = "", walls = ""] = made.items.map(({ id }) => id);
    const given = randomUUID();
    await give(store, walls, wim, { id: given });
    expect(await edit(store, change(made.homeworkId, walls))).toMatchObject({ done: true });
    const only = change(made.homeworkId, lamps);
    expect(await edit(store, only)).toEqual({ ok: true, done: false, hides: 1, preview: null });
    expect((await whatIsDue(store, tess, AT("10:00")))[0]?.items.map(({ itemId }) => itemId)).toEqual([walls]);
    // One more came in since the teacher was told: nothing is done, and the new number is told.
    await give(store, walls, tess);
    expect(await edit(store, { ...only, agreed: { hides: 1, seal: null } })).toMatchObject({ done: false, hides: 2 });
    expect(await edit(store, { ...only, agreed: { hides: 2, seal: null } })).toEqual({ ok: true, done: true });
    expect((await whatIsDue(store, tess, AT("10:00")))[0]?.items.map(({ itemId }) => itemId)).toEqual([lamps]);
    const person = {
      kind: "student",
      userId: "u",
      name: "Tess",
      places: [{ memberId: tess, classId: room.classId }],
    } as const;
    expect(await deskOf(store, person, walls, AT("10:00"))).toBeUndefined();
    expect((await homeworkSheet(store, made.homework)).items.map(({ id }) => id)).toEqual([lamps]);
    const book = async () =>
      makeGradebook(await readGradebook(store, room.classId), AT("10:00").toISOString()).work[0]?.columns.length;
    expect(await book()).toBe(1);
    // What is on its way to it is refused in words, for good; what is here already stays acknowledged.
    expect(await give(store, walls, tess)).toMatchObject({ reason: "gone" });
    expect(await give(store, walls, wim, { id: given })).toMatchObject({ ok: true, receipt: { id: given } });
    // Nothing is lost: it is all there, in an export too, and shown again once the exercise is put back.
    expect(await handIns(store)).toHaveLength(2);
    expect((await exportWork(store, room.classId, null)).tables.hand_in).toHaveLength(2);
    const back = change(made.homeworkId, lamps, { items: [kept(lamps), kept(walls)] });
    expect(await edit(store, back)).toMatchObject({ done: true });
    expect(await book()).toBe(2);
    expect(await deskOf(store, person, walls, AT("10:00"))).toMatchObject({
      last: { marks: { exercise: wallsExercise.id } },
    });
  });

  it("goes to others: those who keep it keep their dates, and drawings of those who lose it must be agreed to", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId);
    const own = { dueAt: AT("18:00").toISOString(), excused: false };
    await agreeTerms(store, made.homeworkId, wim, own);
    await give(store, made.itemId, tess);
    const some = (memberId: string, hides = 0) =>
      edit(
        store,
        change(made.homeworkId, made.itemId, {
          toWhom: { kind: "some", memberIds: [memberId] },
          agreed: { hides, seal: null },
        }),
      );
    expect(await some(wim)).toMatchObject({ done: false, hides: 1 });
    expect(await some(wim, 1)).toMatchObject({ done: true });
    expect(await whatIsDue(store, tess, AT("10:00"))).toEqual([]);
    expect((await whatIsDue(store, wim, AT("10:00")))[0]?.dueAt).toBe(own.dueAt);
    const state = async () =>
      makeGradebook(await readGradebook(store, room.classId), AT("10:00").toISOString()).rows.map(
        ({ cells }) => cells[0]?.state,
      );
    expect(await state()).toEqual(["not-set", "waiting"]);
    expect(await some(tess)).toMatchObject({ done: true });
    expect(await state()).toEqual(["scored", "not-set"]);
    expect(await edit(store, change(made.homeworkId, made.itemId))).toMatchObject({ done: true });
    expect(await state()).toEqual(["scored", "waiting"]);
    expect((await whatIsDue(store, wim, AT("10:00")))[0]?.dueAt).toBe(own.dueAt);
  });

  it("shows what another strictness would change, and writes just that with the rest or nothing at all", async () => {
    const store = await newStore();
    const { room, wim, tess } = await two(store);
    const made = await set(store, room.classId, { strictness: "thumbnail" });
    await give(store, made.itemId, wim, { marks: marksOf(wallsExercise, 0.05) });
    const strict = change(made.homeworkId, made.itemId, { strictness: "drafted", title: "Drafted" });
    const asked = await edit(store, strict);
    if (!asked.ok || asked.done || !asked.preview) throw new Error("Nothing was shown.");
    expect(asked.preview).toEqual(
      await previewRegrade(store, { homeworkId: made.homeworkId, strictness: "drafted", course: null }),
    );
    const [shown] = asked.preview.changes;
    expect(shown).toMatchObject({ name: "Wim" });
    expect(shown?.to).toBeLessThan(shown?.from ?? 0);
    expect((await findHomework(store.db, made.homeworkId))?.homework).toEqual(made.homework);
    await give(store, made.itemId, tess, { marks: marksOf(wallsExercise, 0.03) });
    const stale = { ...strict, agreed: { hides: 0, seal: asked.preview.seal } };
    const again = await edit(store, stale);
    if (!again.ok || again.done || !again.preview) throw new Error("Something was done unseen.");
    expect((await handIns(store))[0]?.score).toBeCloseTo(shown?.from ?? -1, 9);
    const agreed = { hides: 0, seal: again.preview.seal };
    expect(await edit(store, { ...strict, agreed })).toEqual({ ok: true, done: true });
    expect((await handIns(store)).find(({ member_id }) => member_id === wim)?.score).toBeCloseTo(shown?.to ?? -1, 9);
    expect((await findHomework(store.db, made.homeworkId))?.homework).toMatchObject({
      title: "Drafted",
      strictness: "drafted",
    });
  });
});

onBothEngines("late work that the teacher excuses", ({ newStore }) => {
  it("counts as in time with its reason, in the rows, the lists, the gradebook and the export, until it is taken back", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const made = await set(store, room.classId);
    const id = randomUUID();
    await give(store, made.itemId, wim, { id, at: AT("12:30") });
    const seen = async () => {
      const book = makeGradebook(await readGradebook(store, room.classId), AT("13:00").toISOString());
      const cell = book.rows.flatMap(({ cells }) => cells).find(({ memberId }) => memberId === wim);
      const { students } = await homeworkSheet(store, made.homework, AT("13:00"));
      const sheet = students.find(({ memberId }) => memberId === wim)?.cells[0];
      return { cell, sheet, row: (await handIns(store))[0] };
    };
    const late = await seen();
    expect(late.cell).toMatchObject({ late: true, inTimeReason: null, madeAt: AT("08:59").toISOString() });
    expect(late.sheet).toMatchObject({
      late: true,
      cameLate: {
        handInId: id,
        madeAt: AT("08:59").toISOString(),
        receivedAt: AT("12:30").toISOString(),
        inTimeReason: null,
      },
    });
    const reason = "The network in the workshop was down.";
    await countInTime(store, { handInId: id, reason });
    const excused = await seen();
    expect(excused.cell).toMatchObject({ late: false, inTimeReason: reason });
    expect(excused.sheet).toMatchObject({ late: false, cameLate: { inTimeReason: reason } });
    expect(excused.row).toMatchObject({ late: 0, in_time_reason: reason });
    // A date that is changed does not undo it.
    await edit(store, change(made.homeworkId, made.itemId, { dueAt: AT("09:30").toISOString() }), "13:00");
    expect((await seen()).row?.late).toBe(0);
    const { tables } = await exportWork(store, room.classId, wim);
    expect(tables.hand_in?.[0]).toMatchObject({ in_time_reason: reason });
    await countInTime(store, { handInId: id, reason: null });
    expect((await seen()).cell).toMatchObject({ late: true, inTimeReason: null });
    expect((await seen()).row).toMatchObject({ late: 1 });
    expect(await countInTime(store, { handInId: "nothing", reason })).toMatchObject({ ok: true });
  });
});

onBothEngines("hints as a browser counts them", ({ newStore }) => {
  it("are believed only within what there is to take", async () => {
    const store = await newStore();
    const { room, wim } = await two(store);
    const open = await set(store, room.classId);
    const shut = await set(store, room.classId, { hints: "none" });
    const good = marksOf(wallsExercise);
    const [first = "", second = ""] = wallsExercise.task.marks;
    const score = async (itemId: string, hints: unknown) => {
      const id = randomUUID();
      const done = await give(store, itemId, wim, { id, marks: { ...good, hints } });
      if (!done.ok) return done.reason;
      const row = (await handIns(store)).find((each) => each.id === id);
      return [row?.score, JSON.parse(row?.marks ?? "").hints];
    };
    const cost = (hints: number) => 100 - (15 * hints) / wallsExercise.task.marks.length;
    expect(await score(open.itemId, { [first]: 1 })).toEqual([expect.closeTo(cost(1), 9), { [first]: 1 }]);
    expect(await score(open.itemId, { [first]: 9e15, [second]: 0 })).toEqual([
      expect.closeTo(cost(2), 9),
      { [first]: 2 },
    ]);
    expect(await score(open.itemId, { elsewhere: 2, __proto__: 2 })).toEqual([100, undefined]);
    for (const bad of [{ [first]: -1 }, { [first]: null }, { [first]: 0.5 }, { [first]: "2" }, { [first]: 1e300 }, [1]])
      expect(await score(open.itemId, bad)).toBe("bad-marks");
    expect(await score(shut.itemId, { [first]: 2 })).toEqual([100, undefined]);
  });
});
