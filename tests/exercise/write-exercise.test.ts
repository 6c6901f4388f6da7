import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readExercise } from "@/lib/exercise/read-exercise";
import { writeExercise } from "@/lib/exercise/write-exercise";
import { writeLength } from "@/lib/exercise/write-length";
import { FOOT_M, parseLength } from "@/lib/measure/length";
import { seeded } from "../seeded";

const COURSE = "exercises";
const files = readdirSync(COURSE, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".json"));

describe("writeExercise", () => {
  it.each(files)("%s comes back from its file as it was", (file) => {
    const reading = readExercise(readFileSync(join(COURSE, file), "utf8"));
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const again = readExercise(JSON.stringify(writeExercise(reading.exercise)));
    if (!again.ok) throw new Error(JSON.stringify(again.problems));
    expect(JSON.stringify(writeExercise(again.exercise))).toBe(JSON.stringify(writeExercise(reading.exercise)));
    expect([...again.exercise.plan.corners.keys()]).toEqual([...reading.exercise.plan.corners.keys()]);
    expect(rounded(again.exercise)).toEqual(rounded(reading.exercise));
  });
});

/** Every number to a millionth, for comparing; of the corners their places. */
function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, inner) => {
      if (inner instanceof Map) return [...inner];
      return typeof inner === "number" ? Math.round(inner * 1e6) / 1e6 + 0 : inner;
    }),
  );
}

describe("writeLength", () => {
  it.each([
    [12 * FOOT_M, "ft-in", 12],
    [0, "ft-in", 0],
    [-0, "m", 0],
    [-8.5 * FOOT_M, "ft-in", "-8'-6\""],
    [(9 + 1 / 16) * (FOOT_M / 12), "ft-in", '9 1/16"'],
    [0.1 + 0.2, "m", 0.3],
    [5.4, "m", 5.4],
    [0.75, "m", "750 mm"],
    [-0.005, "m", "-5 mm"],
    [1 / 3, "m", 1 / 3],
    [FOOT_M / 3 + 0.0001, "ft-in", (FOOT_M / 3 + 0.0001) / FOOT_M],
  ] as const)("writes %d as an author does", (metres, units, written) => {
    expect(writeLength(metres, units)).toBe(written);
  });

  it("any length reads back as it was, to a billionth of a metre", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.constantFrom("ft-in" as const, "m" as const),
        (metres, units) => {
          const parsed = parseLength(writeLength(metres, units), units);
          expect(parsed.ok && Math.abs(parsed.metres - metres)).toBeLessThan(1e-9);
        },
      ),
      seeded,
    );
  });
});
