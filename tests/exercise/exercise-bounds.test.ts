import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSense } from "@/lib/exercise/check-sense";
import type { Problem } from "@/lib/exercise/problem";
import { readExercise } from "@/lib/exercise/read-exercise";
import { type Change, readTideOffice, writeTideOffice } from "../fixtures/tide-office";
import { seeded } from "../seeded";

/** Far more than it takes, and far less than a guess for each of thousands of names would. */
const PATIENCE_MS = 20_000;

function problemsOf(...changes: readonly Change[]): readonly Problem[] {
  const reading = readExercise(JSON.stringify(writeTideOffice(...changes)));
  return reading.ok ? [] : reading.problems;
}

describe("the bounds of an exercise", () => {
  const corners = (count: number) =>
    Object.fromEntries(Array.from({ length: count }, (_, i) => [`Q${i}`, [0, i / 200]]));
  const box = (i: number) => ({ id: `f${i}`, kind: "box", at: [0, 1], width: 1, depth: 1, height: 1 });
  const boxes = (count: number) => Array.from({ length: count }, (_, i) => box(i));

  it("are 2,000 elements in all", () => {
    expect(problemsOf(["/plan", { corners: corners(2000) }])).toEqual([]);
    expect(problemsOf(["/plan", { corners: corners(2001) }])).toMatchObject([{ where: "/plan" }]);
    expect(problemsOf(["/plan", { corners: corners(1000), furniture: boxes(1000) }])).toEqual([]);
    expect(problemsOf(["/plan", { corners: corners(1001), furniture: boxes(1000) }])).toMatchObject([
      { where: "/plan", message: expect.stringContaining("2001") },
    ]);
    expect(problemsOf(["/plan/furniture", boxes(2001)])).toMatchObject([
      { where: "/plan/furniture", message: expect.stringContaining("2000") },
    ]);
  });

  it("are 1 MiB", () => {
    const text = JSON.stringify(writeTideOffice(["/notes", "x".repeat(10_000)]));
    expect(readExercise(text).ok).toBe(true);
    expect(readExercise(text + " ".repeat(1024 * 1024 - text.length)).ok).toBe(true);
    expect(readExercise(text + " ".repeat(1024 * 1024 + 1 - text.length))).toMatchObject({
      ok: false,
      problems: [{ where: "", message: expect.stringContaining("1 MiB") }],
    });
  });

  it("keep the checks of a large plan, all of whose marks are wrong, quick", () => {
    const began = performance.now();
    const exercise = readTideOffice(
      ["/plan", { furniture: boxes(200).map((item, i) => ({ ...item, id: `${"long".repeat(12)}${i}` })) }],
      ["/task/marks", Array.from({ length: 2000 }, (_, i) => "xyz".repeat(60) + i)],
    );
    expect(checkSense(exercise).filter(({ where }) => where.startsWith("/task/marks"))).toHaveLength(2000);
    expect(performance.now() - began).toBeLessThan(PATIENCE_MS);
  }, 60_000);
});

describe("reading anything", () => {
  const leaf = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      true,
      "",
      "A",
      "A.foot",
      "x",
      "1:20",
      "-3 m",
      "1e9 m",
      "__proto__",
      [],
      {},
      0,
      -1,
      1e300,
    ),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.jsonValue({ maxDepth: 2 }),
  );

  /** Every pointer of a document, inner ones too. */
  function pointers(value: unknown, here = ""): readonly string[] {
    if (typeof value !== "object" || value === null) return [here];
    return [here, ...Object.entries(value).flatMap(([key, inner]) => pointers(inner, `${here}/${key}`))];
  }
  const places = pointers(writeTideOffice()).slice(1);

  it("never throws, and says where, what and how for everything wrong", () => {
    const changed = fc.array(fc.tuple(fc.constantFrom(...places), fc.option(leaf, { nil: undefined })), {
      minLength: 1,
      maxLength: 3,
    });
    fc.assert(
      fc.property(changed, (changes) => {
        let written: object;
        try {
          written = writeTideOffice(...changes);
        } catch {
          return; // one change took away the place of the next
        }
        const reading = readExercise(JSON.stringify(written));
        const findings = reading.ok ? checkSense(reading.exercise) : reading.problems;
        for (const { where, message, hint } of findings) {
          expect(where).toMatch(/^(?:\/|$)/);
          expect(message).not.toMatch(/^$|undefined|NaN|\bInvalid\b/);
          expect(hint).not.toMatch(/^$|undefined|NaN/);
        }
        if (!reading.ok) expect(findings.length).toBeGreaterThan(0);
      }),
      { ...seeded },
    );
  });
});
