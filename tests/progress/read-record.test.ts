import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readRecord, readRecords } from "@/lib/progress/read-record";
import { type AttemptRecord, MOST_RECORDS, mergeRecords } from "@/lib/progress/record";
import { seeded } from "../seeded";
import { aMark, aRecord, day, evidenceFor, marksFor } from "./records";

const whole = aRecord("points", day(1), marksFor("depth-by-eye", "+ud"), {
  habits: [{ id: "too-shallow", odds: 30, marks: ["A.foot"], amount: 0.8 }],
  tells: ["too-shallow"],
});

describe("readRecord", () => {
  it("reads a record as it was kept, and leaves unknown fields out", () => {
    expect(readRecord(JSON.parse(JSON.stringify(whole)))).toEqual({ ok: true, record: whole });
    const newer = { ...whole, mood: "good", marks: whole.marks.map((mark) => ({ ...mark, pressure: 3 })) };
    expect(readRecord(newer)).toEqual({ ok: true, record: whole });
  });

  it("takes missing and unreadable fields of a mark as having none", () => {
    const reading = readRecord({
      exercise: "points",
      when: day(0),
      score: 70,
      marks: [
        { point: "A.foot", depthMm: "3", depthRatio: -1, hints: -2, evidence: [{ skill: "height" }, null] },
        { depthMm: 3 },
        "B.foot",
      ],
      habits: [{ odds: 3 }, { id: "plan-depth" }],
    });
    const mark = aMark({ within: false, score: 0, offMm: null, toleranceMm: 0, depthMm: null, acrossMm: null });
    expect(reading).toEqual({
      ok: true,
      record: aRecord("points", day(0), [{ ...mark, upstageM: null, acrossM: null, depthRatio: null }], {
        version: 0,
        score: 70,
        tells: null,
        habits: [{ id: "plan-depth", odds: 0, marks: [], amount: null }],
      }),
    });
  });

  it("reads the app's first kind of record, which has no marks", () => {
    expect(readRecord({ times: 3, best: 90, last: 72, on: day(2) }, "points")).toEqual({
      ok: true,
      record: aRecord("points", day(2), [], { version: 0, score: 72, tells: null }),
    });
  });

  it.each([
    [null, "it is not a record"],
    [[], "it is not a record"],
    [{ when: day(0), score: 3 }, "it does not say which exercise it is of"],
    [{ exercise: "points", score: 3 }, "the record of points does not say when it was made"],
    [{ exercise: "points", when: "some day", score: 3 }, "the record of points does not say when it was made"],
    [{ exercise: "points", when: day(0), score: Number.NaN }, "the record of points has no score"],
    [
      { format: "plasterline.record/9", exercise: "points", when: day(0), score: 3 },
      "the record of points is of another kind: plasterline.record/9",
    ],
  ])("says what is wrong with %j", (value, why) => {
    expect(readRecord(value)).toEqual({ ok: false, why });
  });
});

describe("readRecords", () => {
  it("reads a list, oldest first, what is there twice once, and says what was left out", () => {
    const later = aRecord("points", day(4));
    expect(readRecords([later, whole, { exercise: "points" }, later])).toEqual({
      records: [whole, later],
      problems: ["One record was left out: the record of points does not say when it was made."],
    });
  });

  it("reads the app's first kind by exercise", () => {
    const { records, problems } = readRecords({
      walls: { times: 1, best: 50, last: 50, on: day(3) },
      points: { times: 3, best: 90, last: 72, on: day(2) },
    });
    expect(problems).toEqual([]);
    expect(records.map(({ exercise, score }) => [exercise, score])).toEqual([
      ["points", 72],
      ["walls", 50],
    ]);
  });

  it.each([
    [null, []],
    [undefined, []],
    ["nothing", ["There are no records in it."]],
  ])("finds none in %j", (value, problems) => {
    expect(readRecords(value)).toEqual({ records: [], problems });
  });

  it("never throws, and what it returns reads back the same", () => {
    const near = fc.record(
      {
        exercise: fc.anything(),
        when: fc.oneof(fc.constant(day(0)), fc.anything()),
        score: fc.oneof(fc.double(), fc.anything()),
        marks: fc.oneof(
          fc.array(fc.record({ point: fc.string(), depthRatio: fc.double(), evidence: fc.anything() })),
          fc.anything(),
        ),
        habits: fc.anything(),
        tells: fc.anything(),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(fc.anything(), near, fc.array(near), fc.dictionary(fc.string(), near)), (value) => {
        const { records, problems } = readRecords(value);
        expect(problems.every((each) => typeof each === "string")).toBe(true);
        expect(readRecords(JSON.parse(JSON.stringify(records)))).toEqual({ records, problems: [] });
      }),
      seeded,
    );
  });
});

describe("mergeRecords", () => {
  it("keeps the newest", () => {
    const many = Array.from({ length: MOST_RECORDS + 5 }, (_, i): AttemptRecord => aRecord("points", day(i)));
    const merged = mergeRecords(many.slice(3), many.slice(0, 10));
    expect(merged).toHaveLength(MOST_RECORDS);
    expect([merged[0]?.when, merged.at(-1)?.when]).toEqual([day(5), day(MOST_RECORDS + 4)]);
  });

  it("keeps one of what differs by nothing, and both of what differs by a mark", () => {
    const other = aRecord("points", day(1), [aMark({ evidence: [evidenceFor("height", true)] })]);
    expect(mergeRecords([whole], [whole, other])).toHaveLength(2);
  });
});
