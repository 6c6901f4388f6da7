import { describe, expect, it } from "vitest";
import { beginMove, commitMark, moveMark, newAttempt } from "@/app/_parts/kept-work/attempt";
import { bringBack, copyProgress, erase } from "@/app/_parts/kept-work/copy-work";
import {
  keepAttempt,
  keepFinished,
  keepMarks,
  keepRecords,
  keptAttempt,
  keptRecords,
  MOST_FINISHED,
} from "@/app/_parts/kept-work/keep";
import { everythingFinished, keptFinished } from "@/app/_parts/kept-work/kept-finished";
import { readAttempt } from "@/app/_parts/kept-work/read-attempt";
import { recordRun } from "@/app/_parts/kept-work/record";
import { FINISHED_KEY, keysOf } from "@/app/_parts/kept-work/shelf";
import { skillStates } from "@/lib/progress/skill-states";
import { aMark, aRecord, day, marksFor } from "../../../progress/records";
import { smallShelf } from "./small-shelf";

const ASKED = ["A.foot", "B.foot"];
const EXERCISE = { id: "trial", version: 3 };

describe("what is kept", () => {
  const attempt = commitMark(moveMark(beginMove(newAttempt(EXERCISE)), [1, 2], "mouse"), ASKED);

  it("comes back the same, at the same version of the exercise only", () => {
    const kept = smallShelf();
    expect(keepAttempt(kept, attempt)).toBe(true);
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
    expect(keptAttempt(kept, { ...EXERCISE, version: 4 })).toBeNull();
  });

  it("says so when the storage is full", () => {
    expect(keepAttempt(smallShelf(10), attempt)).toBe(false);
  });

  it("comes back out of a copy after it was erased", () => {
    const kept = smallShelf();
    keepAttempt(kept, attempt);
    keepRecords(kept, recordRun({}, "trial", 80, "2026-01-01"));
    const copy = JSON.stringify(copyProgress(kept));
    erase(kept);
    expect(copyProgress(kept)).toMatchObject({ records: {}, attempts: [] });
    expect(bringBack(kept, copy)).toEqual({ ok: true, left: 0 });
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
    expect(keptRecords(kept).trial?.best).toBe(80);
  });

  it.each([
    "",
    "[]",
    "null",
    '{"format":"plasterline.progress/1"}',
    '{"format":"plasterline.progress/1","records":{"a":1},"attempts":[]}',
  ])("stays as it is when %j is brought back", (text) => {
    const kept = smallShelf();
    keepAttempt(kept, attempt);
    expect(bringBack(kept, text).ok).toBe(false);
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
  });

  it.each([
    { pending: [1, null] },
    { marks: [{ point: "A.foot", at: [1] }] },
    { correcting: true, marks: [] },
    { lines: [{ id: 1 }] },
    { pendingWith: "foot" },
    { format: "another" },
  ])("is refused with %j in it", (change) => {
    expect(readAttempt({ ...attempt, ...change })).toBeNull();
  });
});

describe("a record", () => {
  it("keeps the best and the last", () => {
    const runs = [60, 90, 70].reduce((records, score) => recordRun(records, "trial", score, "2026-01-01"), {});
    expect(runs).toEqual({ trial: { times: 3, best: 90, last: 70, on: "2026-01-01" } });
  });

  it("passes over a bad score among good ones", () => {
    const kept = smallShelf();
    kept.setItem("plasterline.records", JSON.stringify({ ...recordRun({}, "trial", 80, day(0)), torn: { best: "x" } }));
    expect(Object.keys(keptRecords(kept))).toEqual(["trial"]);
  });
});

describe("a finished exercise", () => {
  const record = aRecord("trial", day(0), [
    ...marksFor("depth-by-eye", "+ud"),
    aMark({ depthMm: null, acrossMm: null, heightMm: -3.5, depthRatio: null, hints: 1 }),
  ]);

  it("comes back the same, with its score beside it", () => {
    const kept = smallShelf();
    expect(keepFinished(kept, record)).toBe(true);
    expect(keptFinished(kept)).toEqual([record]);
    expect(keptRecords(kept).trial).toEqual({ times: 1, best: 80, last: 80, on: day(0) });
  });

  it("keeps every attempt, in the order of time, and each of them once", () => {
    const kept = smallShelf();
    for (const n of [3, 1, 2, 1]) keepMarks(kept, aRecord("trial", day(n), record.marks));
    keepMarks(kept, aRecord("another", day(1)));
    expect(keptFinished(kept).map(({ when }) => when)).toEqual([day(1), day(1), day(2), day(3)]);
  });

  it("lets the oldest go past the number that is kept, and still knows that they were drawn", () => {
    const kept = smallShelf();
    for (let n = 0; n < MOST_FINISHED + 3; n++) keepFinished(kept, aRecord(`sheet-${n}`, day(n), [aMark()]));
    const finished = keptFinished(kept);
    expect(finished).toHaveLength(MOST_FINISHED);
    expect(finished[0]?.exercise).toBe("sheet-3");
    const all = everythingFinished(finished, keptRecords(kept));
    expect(all.filter(({ marks }) => marks.length === 0).map(({ exercise }) => exercise)).toEqual([
      "sheet-0",
      "sheet-1",
      "sheet-2",
    ]);
  });

  it("makes room in a full storage by the oldest finished exercises, for others and for the work on hand", () => {
    const length = JSON.stringify(record).length;
    const kept = smallShelf(4 * length);
    for (let n = 0; n < 9; n++) expect(keepFinished(kept, aRecord("trial", day(n), record.marks))).toBe(true);
    const left = keptFinished(kept).map(({ when }) => when);
    expect(left.length).toBeLessThan(9);
    expect(left).toEqual(Array.from({ length: left.length }, (_, i) => day(9 - left.length + i)));
    const attempt = {
      ...newAttempt(EXERCISE),
      hints: Object.fromEntries(record.marks.map((_, i) => [`P${i}`.padEnd(300), 1])),
    };
    expect(keepAttempt(kept, attempt)).toBe(true);
    expect(keptAttempt(kept, EXERCISE)).toEqual(attempt);
  });

  it("throws nothing away for what would not fit in any case", () => {
    const kept = smallShelf(20_000);
    for (let n = 0; n < 4; n++) keepMarks(kept, aRecord("trial", day(n), record.marks));
    const refusing = {
      ...kept,
      length: kept.length,
      setItem: () => {
        throw new DOMException("full", "QuotaExceededError");
      },
    };
    expect(keepMarks(refusing, aRecord("trial", day(9), []))).toBe(false);
    expect(keptFinished(kept).length).toBeGreaterThan(2);
  });

  it("is in the copy, comes back out of it, and is rubbed out with the rest", () => {
    const kept = smallShelf();
    keepFinished(kept, record);
    keepFinished(kept, aRecord("another", day(1), record.marks));
    const copy = JSON.stringify(copyProgress(kept));
    erase(kept);
    expect(kept.length).toBe(0);
    expect(bringBack(kept, copy)).toEqual({ ok: true, left: 0 });
    expect(keptFinished(kept).map(({ exercise }) => exercise)).toEqual(["trial", "another"]);
    expect(skillStates(keptFinished(kept)).find(({ skill }) => skill.id === "depth-by-eye")?.marks).toHaveLength(6);
  });

  it("is not asked of a copy made before marks were kept: its scores count as drawn", () => {
    const kept = smallShelf();
    const old = { format: "plasterline.progress/1", records: recordRun({}, "trial", 70, day(0)), attempts: [] };
    expect(bringBack(kept, JSON.stringify(old))).toEqual({ ok: true, left: 0 });
    const [only] = everythingFinished(keptFinished(kept), keptRecords(kept));
    expect(only).toMatchObject({ exercise: "trial", score: 70, when: day(0), marks: [] });
  });

  it("is left out of a copy where it cannot be read, and that is said", () => {
    const kept = smallShelf();
    const torn = { ...copyProgress(kept), finished: [record, { exercise: "torn" }, 7] };
    expect(bringBack(kept, JSON.stringify(torn))).toEqual({ ok: true, left: 2 });
    expect(keptFinished(kept)).toEqual([record]);
  });

  it("leaves what was kept as it was when a copy does not fit", () => {
    const kept = smallShelf(600);
    keepRecords(kept, recordRun({}, "trial", 80, day(0)));
    const much = Object.fromEntries(
      Array.from({ length: 20 }, (_, i) => [`sheet-${i}`, { times: 1, best: 1, last: 1, on: day(i) }]),
    );
    const back = bringBack(kept, JSON.stringify({ format: "plasterline.progress/1", records: much, attempts: [] }));
    expect(back).toMatchObject({ ok: false });
    expect(Object.keys(keptRecords(kept))).toEqual(["trial"]);
  });

  it.each(["", "{", "7", "null", "[]", '{"exercise":"trial"}', '{"format":"another/9","exercise":"trial","when":"x"}'])(
    "is passed over when %j stands in its place",
    (text) => {
      const kept = smallShelf();
      keepFinished(kept, record);
      kept.setItem(`${FINISHED_KEY}${day(1)}.trial`, text);
      expect(keysOf(kept, FINISHED_KEY)).toHaveLength(2);
      expect(keptFinished(kept)).toEqual([record]);
    },
  );
});
