import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readMarks } from "@/lib/exercise/read-marks";
import { type Change, change } from "../fixtures/tide-office";
import { seeded } from "../seeded";

const MARKS = {
  format: "plasterline.marks/1",
  exercise: "tide-office",
  version: 1,
  scale: "1/4in=1ft",
  marks: [{ point: "B.foot", at: [-1.58, 0.64], with: "mouse" }],
  hints: { "B.foot": 1 },
};

function read(...changes: readonly Change[]) {
  return readMarks(JSON.stringify(change(MARKS, ...changes)));
}

describe("reading marks", () => {
  it("reads the format's own example", () => {
    expect(read()).toEqual({ ok: true, marks: MARKS });
  });

  it.each(["1/8in=1ft", "3/32in=1ft", "1/16in=1ft", "1:75", "1:125", "1:200"])("knows a sheet at %s", (scale) => {
    expect(read(["/scale", scale]).ok).toBe(true);
  });

  it.each(["/version", "/scale", "/hints", "/marks/0/with"])("does without %s", (where) => {
    expect(read([where, undefined]).ok).toBe(true);
  });

  it.each(["mouse", "touch", "pen", "keys", "paper"])("takes marks made with %s", (device) => {
    expect(read(["/marks/0/with", device]).ok).toBe(true);
  });

  it("takes an empty set, and two marks for one point", () => {
    expect(read(["/marks", []]).ok).toBe(true);
    expect(read(["/marks/1", { point: "B.foot", at: [0, 0] }]).ok).toBe(true);
  });

  it.each(["/format", "/exercise", "/marks", "/marks/0/point", "/marks/0/at"])("does not do without %s", (where) => {
    expect(read([where, undefined])).toMatchObject({
      ok: false,
      problems: [{ where, message: expect.stringContaining("is missing") }],
    });
  });

  it.each([
    ["/format", "plasterline.exercise/1"],
    ["/version", 0],
    ["/scale", "small"],
    ["/marks", {}],
    ["/marks/0/at", [1]],
    ["/marks/0/at", [1, 2, 3]],
    ["/marks/0/at/1", "0.64 m"],
    ["/marks/0/at/1", 1e300],
    ["/marks/0/at/0", null],
    ["/marks/0/with", "finger"],
    ["/hints/B.foot", -1],
    ["/hints/B.foot", 1.5],
  ])("refuses %s %j", (where, value) => {
    const reading = read([where, value]);
    expect(reading).toMatchObject({ ok: false, problems: [{ where }] });
    if (!reading.ok) expect(reading.problems[0]?.message).not.toMatch(/invalid|expected/i);
  });

  it("refuses numbers that are not finite", () => {
    expect(readMarks(JSON.stringify(MARKS).replace("0.64", "1e999"))).toMatchObject({
      ok: false,
      problems: [{ where: "/marks/0/at/1", message: expect.stringContaining("Infinity") }],
    });
  });

  it("names the known field nearest to an unknown one", () => {
    expect(read(["/marks/0/wiht", "pen"])).toMatchObject({
      ok: false,
      problems: [{ where: "/marks/0/wiht", hint: expect.stringContaining('did you mean "with"?') }],
    });
  });

  it("takes 2,000 marks and no more", () => {
    const marks = (count: number) => Array.from({ length: count }, () => ({ point: "B.foot", at: [0, 0] }));
    expect(read(["/marks", marks(2000)]).ok).toBe(true);
    expect(read(["/marks", marks(2001)])).toMatchObject({ ok: false, problems: [{ where: "/marks" }] });
  });

  it("never throws", () => {
    fc.assert(
      fc.property(fc.record({ format: fc.constant("plasterline.marks/1") }), fc.jsonValue(), (head, value) => {
        const reading = readMarks(JSON.stringify({ ...head, exercise: "x", marks: [value] }));
        if (!reading.ok)
          expect(reading.problems.every(({ where, hint }) => where.startsWith("/") && hint !== "")).toBe(true);
      }),
      seeded,
    );
  });
});
