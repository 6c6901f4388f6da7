import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Attempt, GradebookRows, Work } from "@/lib/classroom/gradebook/gradebook";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { weightedMean } from "@/lib/classroom/gradebook/weighted-mean";
import { seeded } from "../../seeded";

const DUE = "2026-11-10T12:00:00.000Z";
const BEFORE = "2026-11-09T12:00:00.000Z";
const AFTER = "2026-11-11T12:00:00.000Z";
const NOW = "2026-11-20T12:00:00.000Z";

const WORK: Work = {
  id: "week-1",
  title: "Week one",
  setAt: BEFORE,
  dueAt: DUE,
  counts: "best",
  weight: 1,
  toAll: true,
  criteria: [{ name: "Line", points: 5 }],
  columns: [{ itemId: "a", title: "Tide office", exerciseId: "tide-office", weight: 1 }],
};

function attempt(score: number | null, receivedAt = BEFORE, id = `${receivedAt} ${score}`, itemId = "a"): Attempt {
  return { id, itemId, memberId: "wim", score, receivedAt, madeAt: BEFORE, inTimeReason: null };
}

function book(change: Partial<GradebookRows>, now = NOW) {
  return makeGradebook(
    {
      work: [WORK],
      students: [{ memberId: "wim", name: "Wim", number: null }],
      arrangements: [],
      attempts: [],
      overrides: [],
      points: [],
      ...change,
    },
    now,
  );
}

const arranged = { homeworkId: "week-1", memberId: "wim", dueAt: null, excused: false, assigned: false };
const byHand = { itemId: "a", memberId: "wim", score: 90, reason: "The file was broken.", at: NOW };

describe("one cell", () => {
  it.each([
    ["nothing, not due", {}, BEFORE, "waiting", null, null],
    ["nothing, at the very moment it is due", {}, DUE, "waiting", null, null],
    ["nothing, and due", {}, NOW, "missing", 0, 0],
    ["nothing, never due", { work: [{ ...WORK, dueAt: null }] }, NOW, "waiting", null, null],
    ["excused", { arrangements: [{ ...arranged, excused: true }] }, NOW, "excused", null, null],
    [
      "excused though handed in",
      { arrangements: [{ ...arranged, excused: true }], attempts: [attempt(70)] },
      NOW,
      "excused",
      null,
      null,
    ],
    [
      "more time, not over",
      { arrangements: [{ ...arranged, dueAt: "2026-12-01T00:00:00.000Z" }] },
      NOW,
      "waiting",
      null,
      null,
    ],
    ["set to others", { work: [{ ...WORK, toAll: false }] }, NOW, "not-set", null, null],
    [
      "set to this one",
      { work: [{ ...WORK, toAll: false }], arrangements: [{ ...arranged, assigned: true }] },
      NOW,
      "missing",
      0,
      0,
    ],
    ["the best of three", { attempts: [attempt(40), attempt(80), attempt(60, AFTER)] }, NOW, "scored", 80, 80],
    [
      "the last of three",
      { work: [{ ...WORK, counts: "last" }], attempts: [attempt(60, AFTER), attempt(80), attempt(40)] },
      NOW,
      "scored",
      60,
      60,
    ],
    ["an attempt without a mark", { attempts: [attempt(null)] }, NOW, "missing", 0, 0],
    ["by hand over the program's", { attempts: [attempt(20)], overrides: [byHand] }, NOW, "scored", 90, 90],
    ["by hand with nothing handed in", { overrides: [byHand] }, NOW, "scored", 90, 90],
    [
      "by hand, of an excused one",
      { arrangements: [{ ...arranged, excused: true }], overrides: [byHand] },
      NOW,
      "excused",
      null,
      null,
    ],
  ] satisfies readonly [string, Partial<GradebookRows>, string, string, number | null, number | null][])(
    "%s",
    (_, rows, now, state, score, mean) => {
      const [row] = book(rows, now).rows;
      expect(row?.cells[0]).toMatchObject({ state, score });
      expect(row?.mean).toBe(mean);
    },
  );

  it("keeps the program's score beside one by hand, and counts attempts", () => {
    const cell = book({ attempts: [attempt(20), attempt(10, AFTER)], overrides: [byHand] }).rows[0]?.cells[0];
    expect(cell).toMatchObject({ graded: 20, attempts: 2, override: { score: 90, reason: "The file was broken." } });
  });

  it("is late by the attempt that counts, and by the student's own due date", () => {
    const late = { attempts: [attempt(40), attempt(80, AFTER)] };
    expect(book(late).rows[0]?.cells[0]?.late).toBe(true);
    expect(book({ attempts: [attempt(80), attempt(40, AFTER)] }).rows[0]?.cells[0]?.late).toBe(false);
    const longer = { ...late, arrangements: [{ ...arranged, dueAt: NOW }] };
    expect(book(longer).rows[0]?.cells[0]?.late).toBe(false);
  });

  it("is late no more once it was counted as in time, and says why only where it came late", () => {
    const [reason, madeAt] = ["The workshop had no network.", BEFORE];
    const excused = (receivedAt: string) => ({
      attempts: [{ ...attempt(80, receivedAt), inTimeReason: reason, madeAt }],
    });
    expect(book(excused(AFTER)).rows[0]?.cells[0]).toMatchObject({
      late: false,
      inTimeReason: reason,
      madeAt,
      receivedAt: AFTER,
      dueAt: DUE,
    });
    expect(book(excused(BEFORE)).rows[0]?.cells[0]).toMatchObject({ late: false, inTimeReason: null });
  });

  it("is not set where the work was taken from the student, whatever came in, but for a score by hand", () => {
    const others = { work: [{ ...WORK, toAll: false }], attempts: [attempt(70)] };
    expect(book(others).rows[0]).toMatchObject({ mean: null, cells: [{ state: "not-set", score: null, attempts: 1 }] });
    expect(book({ ...others, overrides: [byHand] }).rows[0]).toMatchObject({ mean: 90, cells: [{ state: "scored" }] });
  });

  it("has points by the teacher's own criteria beside the score, never in it", () => {
    const points = [{ itemId: "a", memberId: "wim", criterion: "Line", points: 1 }];
    expect(book({ attempts: [attempt(70)], points }).rows[0]).toMatchObject({
      mean: 70,
      cells: [{ score: 70, points: [1] }],
    });
    expect(book({ attempts: [attempt(70)] }).rows[0]?.cells[0]?.points).toEqual([null]);
  });
});

describe("a student's mean", () => {
  const column = (itemId: string, weight: number) => ({ itemId, title: itemId, exerciseId: null, weight });
  const two: readonly Work[] = [
    { ...WORK, weight: 1, columns: [column("a", 1), column("b", 3)] },
    { ...WORK, id: "week-2", weight: 2, columns: [column("c", 1)] },
  ];
  const at = (itemId: string, score: number) => attempt(score, BEFORE, itemId, itemId);

  it("is worked by hand: homework by its weight, exercises by theirs", () => {
    // Week one: (100 * 1 + 60 * 3) / 4 = 70. Both: (70 * 1 + 40 * 2) / 3 = 50.
    expect(book({ work: two, attempts: [at("a", 100), at("b", 60), at("c", 40)] }).rows[0]?.mean).toBeCloseTo(50, 9);
  });
  it("leaves out what is excused and counts 0 for what is missing", () => {
    // Week one excused: 40. Without week two: (70 * 1 + 0 * 2) / 3.
    const excused = [{ ...arranged, excused: true }];
    expect(book({ work: two, attempts: [at("a", 100), at("c", 40)], arrangements: excused }).rows[0]?.mean).toBeCloseTo(
      40,
      9,
    );
    expect(book({ work: two, attempts: [at("a", 100), at("b", 60)] }).rows[0]?.mean).toBeCloseTo(70 / 3, 9);
  });
  it("lies between the least and the most, whatever the weights, and never is NaN", () => {
    const weighed = fc.record({
      value: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
      weight: fc.double({ min: 0, max: 1000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(weighed), (all) => {
        const mean = weightedMean(all);
        const there = all.filter(({ value, weight }) => value !== null && weight > 0).map(({ value }) => value ?? 0);
        if (mean === null) return there.length === 0;
        return mean >= Math.min(...there) - 1e-6 && mean <= Math.max(...there) + 1e-6;
      }),
      seeded,
    );
  });
  it("sorts students by name as people do", () => {
    const students = ["Zoë", "anna", "Élodie", "Bram"].map((name) => ({ memberId: name, name, number: null }));
    expect(book({ students }).rows.map(({ student }) => student.name)).toEqual(["anna", "Bram", "Élodie", "Zoë"]);
  });
});
