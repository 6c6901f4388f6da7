import { describe, expect, it } from "vitest";
import { makeRecord } from "@/lib/progress/make-record";
import { readRecord } from "@/lib/progress/read-record";
import type { MarkRecord } from "@/lib/progress/record";
import { allTrue, gradeAt, plainStage } from "./plain-stage";
import { day } from "./records";

/** The record of one mark, all others in their true places. */
function recordOf(point: string, at: readonly [number, number], exercise = plainStage()): MarkRecord {
  const record = makeRecord(exercise, gradeAt(exercise, { ...allTrue(exercise), [point]: at }), day(0));
  return record.marks.find((mark) => mark.point === point) as MarkRecord;
}

describe("a mark's error in parts, on the plain stage (B truly at [1, 2.5] in the picture)", () => {
  // All by hand. On the ray of x = 2, y = 5 has s = 2/3: [4/3, 5/3], 5/6 m of picture, 8.333 mm, below B's level.
  const cases: readonly (readonly [string, string, readonly [number, number], Partial<MarkRecord>])[] = [
    [
      "in its place",
      "B.foot",
      [1, 2.5],
      { within: true, depthMm: 0, acrossMm: 0, depthRatio: 1, upstageM: 0, acrossM: 0 },
    ],
    [
      "on the right ray, half as deep",
      "B.foot",
      [4 / 3, 5 / 3],
      { within: false, depthMm: -8.3333, acrossMm: 0, depthRatio: 0.5, upstageM: -5, acrossM: 0 },
    ],
    [
      "at the right depth, 0.3 m of picture to the left: 0.6 m on the stage",
      "B.foot",
      [0.7, 2.5],
      { depthMm: 0, acrossMm: -3, depthRatio: 1, upstageM: 0, acrossM: -0.6 },
    ],
    ["on the horizon: no place", "B.foot", [1, 5], { depthMm: 25, acrossMm: null, depthRatio: null, upstageM: null }],
    // Below the plaster line: a ratio of depths has no logarithm there.
    ["before the plaster line", "B.foot", [2, -0.5], { depthMm: -30, depthRatio: null }],
    // B's top: [1, 4.5]; 0.2 m of picture higher is 0.4 m on the stage at s = 1/2.
    [
      "a top, too high",
      "B.top",
      [1.1, 4.7],
      { heightMm: 2, acrossMm: 1, heightM: 0.4, depthMm: null, depthRatio: null },
    ],
    ["a point on the plaster line has no ratio", "A.foot", [-4, 0.1], { depthRatio: null }],
  ];
  it.each(cases)("%s", (_name, point, at, expected) => {
    const mark = recordOf(point, at);
    for (const [field, value] of Object.entries(expected))
      if (typeof value === "number") expect(mark[field as keyof MarkRecord], field).toBeCloseTo(value, 3);
      else expect(mark[field as keyof MarkRecord], field).toBe(value);
  });

  it("takes a plan mark's error apart in the picture", () => {
    const reading = plainStage({}, { kind: "picture-to-plan", marks: ["B.foot", "B.top"] });
    expect(recordOf("B.foot", [2, 5], reading)).toMatchObject({ depthMm: -8.3333, acrossMm: 0, depthRatio: 0.5 });
    // A top 4 m up under an eye of 5 m: at y = 5, 13/3 instead of 4.5, 1.667 mm.
    expect(recordOf("B.top", [2, 5], reading)).toMatchObject({ depthMm: -1.6667, acrossMm: 0, depthRatio: 0.5 });
  });

  it("follows the scale that the sheet was drawn at", () => {
    const exercise = plainStage();
    const grade = gradeAt(exercise, { ...allTrue(exercise), "B.foot": [4 / 3, 5 / 3] });
    const record = makeRecord(exercise, grade, day(0), { scaleRatio: 50 });
    expect(record.marks[1]?.depthMm).toBeCloseTo(-16.6667, 3);
  });
});

describe("what a mark says of each skill", () => {
  const evidence = (point: string, at: readonly [number, number]) =>
    Object.fromEntries(recordOf(point, at).evidence.map(({ skill, part, right }) => [`${skill} by ${part}`, right]));

  it("blames a wrong depth on the right ray on depth alone; it also lies off the wall's line", () => {
    // The line from A [-4, 0] to B [1, 2.5] passes [4/3, 5/3] at a distance of |5 x 5/3 - 2.5 x 16/3| / 5.590 = 0.894 m.
    expect(evidence("B.foot", [4 / 3, 5 / 3])).toEqual({
      "depth-by-eye by depth": false,
      "diagonals by depth": false,
      "raking-wall by wall": false,
    });
  });

  it("says of a mark on the wall's line at a wrong depth that the wall is right", () => {
    // Four fifths of the way from A to B on paper: [0, 2], 5 mm below B.
    expect(evidence("B.foot", [0, 2])).toMatchObject({
      "depth-by-eye by depth": false,
      "raking-wall by wall": true,
    });
  });

  it("says nothing of the parts that a mark with no place lacks", () => {
    expect(evidence("B.foot", [1, 5.2])).toEqual({
      "depth-by-eye by depth": false,
      "diagonals by depth": false,
      "raking-wall by wall": false,
    });
  });

  it("holds every part right within the tolerance", () => {
    expect(Object.values(evidence("B.foot", [1.05, 2.55]))).toEqual([true, true, true]);
  });
});

describe("makeRecord", () => {
  it("keeps exercise, moment, hints and habits, and comes back whole from JSON", () => {
    const exercise = plainStage();
    const grade = gradeAt(exercise, allTrue(exercise));
    const claim = { id: "plan-depth", odds: 41, marks: ["B.foot"], amount: null };
    const record = makeRecord(exercise, { ...grade, habits: [claim] }, day(3), { hints: { "B.foot": 2 } });
    expect(record).toMatchObject({ exercise: "plain-stage", version: 1, when: day(3), score: 100, habits: [claim] });
    expect(record.marks.map(({ hints }) => hints)).toEqual([0, 2, 0]);
    expect(readRecord(JSON.parse(JSON.stringify(record)))).toEqual({ ok: true, record });
  });

  it("refuses a grade of another exercise, an unready one, and a moment that is none", () => {
    const exercise = plainStage();
    const grade = gradeAt(exercise, allTrue(exercise));
    expect(() => makeRecord(exercise, { ...grade, exercise: "another" }, day(0))).toThrow("plain-stage");
    expect(() => makeRecord(exercise, gradeAt(exercise, {}), day(0))).toThrow("unready");
    expect(() => makeRecord(exercise, grade, "yesterday")).toThrow("yesterday");
  });
});
