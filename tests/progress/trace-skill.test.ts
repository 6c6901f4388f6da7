import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  LEAST_DOUBT,
  LEAST_GUESS,
  LEAST_SLIP,
  MASTERED_AT,
  MOST_GUESS,
  MOST_SLIP,
  type Observation,
  traceSkill,
  USUAL_TRACE,
} from "@/lib/progress/trace-skill";
import { seeded } from "../seeded";

/** `+` right, `-` wrong, `o` shown. */
function marks(written: string): readonly Observation[] {
  return [...written].map((sign) => ({ kind: sign === "+" ? "right" : sign === "-" ? "wrong" : "shown" }));
}

describe("traceSkill", () => {
  // The rule of Corbett and Anderson (1995) with L0 .3, T .1, G .2, S .1, worked by hand to three digits.
  // The rule of Corbett and Anderson (1995) with L0 .3, T .1, G .2, S .1, worked by hand to three digits; in per cent.
  it.each([
    ["", 30],
    ["+", 69.3], // .27 / (.27 + .14) = .659; + .1 x .341
    ["++", 91.9], // .623 / (.623 + .061) = .910; + .1 x .090
    ["+++", 98.3], // .827 / (.827 + .016) = .981; + .1 x .019
    ["-", 14.6], // .03 / (.03 + .56) = .051; + .1 x .949
    ["--", 11.9], // .0146 / (.0146 + .6836) = .021; + .1 x .979
    ["+-", 29.8], // .0693 / (.0693 + .2459) = .220; + .1 x .780
    ["-+", 49.1], // .1312 / (.1312 + .1709) = .434; + .1 x .566
    ["+++-", 88.9], // .0983 / (.0983 + .0138) = .877; + .1 x .123
    ["o", 30], // passed over
    ["+o+", 91.9], // as ++
  ])("after %j the skill is known with %f per cent", (written, percent) => {
    expect(100 * traceSkill(marks(written)).probability).toBeCloseTo(percent, 1);
  });

  it("takes three right in a row to master, and keeps each step", () => {
    const { history } = traceSkill(marks("+++"));
    expect(history.map((each) => each >= MASTERED_AT)).toEqual([false, false, true]);
    expect(history.map((each) => (100 * each).toFixed(1))).toEqual(["69.3", "91.9", "98.3"]);
  });

  it("takes the guess of the mark where it has one", () => {
    // .27 / (.27 + .7 x .3) = .5625; + .1 x .4375
    expect(traceSkill([{ kind: "right", guess: 0.3 }]).probability).toBeCloseTo(0.60625, 10);
    // .27 / (.27 + .7 x .25) = .6067; + .1 x .3933
    expect(traceSkill([{ kind: "right", guess: 0.25 }]).probability).toBeCloseTo(0.64607, 5);
  });

  it.each([
    [LEAST_GUESS, 3],
    [MOST_GUESS, 4],
  ])("with a guess of %f the fewest right in a row that master are %i", (guess, fewest) => {
    const { history } = traceSkill(Array.from({ length: 6 }, () => ({ kind: "right" as const, guess })));
    expect(history.findIndex((each) => each >= MASTERED_AT) + 1).toBe(fewest);
  });

  it.each([
    ["guess", 0.9, MOST_GUESS],
    ["guess", 0, LEAST_GUESS],
    ["slip", 0.8, MOST_SLIP],
    ["slip", 0, LEAST_SLIP],
  ])("holds a %s of %f to %f", (name, asked, held) => {
    const trace = (value: number) => traceSkill(marks("+-+"), { ...USUAL_TRACE, [name]: value }).history;
    expect(trace(asked)).toEqual(trace(held));
  });

  it("can be lost however long it was mastered, and learnt again", () => {
    const long = "+".repeat(400);
    expect(traceSkill(marks(long)).probability).toBe(1 - LEAST_DOUBT);
    // Each wrong mark divides the odds by about eight; from a million to one, six bring them under nineteen.
    expect(traceSkill(marks(`${long}------`)).probability).toBeLessThan(MASTERED_AT);
    expect(traceSkill(marks(`${long}${"-".repeat(400)}+++++`)).probability).toBeGreaterThan(MASTERED_AT);
  });
});

describe("traceSkill over any marks", () => {
  const anyMark: fc.Arbitrary<Observation> = fc.record(
    { kind: fc.constantFrom("right", "wrong", "shown"), guess: fc.double({ min: -1, max: 2, noNaN: true }) },
    { requiredKeys: ["kind"] },
  );
  const anyMarks = fc.array(anyMark, { maxLength: 60 });
  const anyTrace = fc.record({
    known: fc.double({ min: 0, max: 1, noNaN: true }),
    learn: fc.double({ min: 0, max: 1, noNaN: true }),
    guess: fc.double({ min: 0, max: 1, noNaN: true }),
    slip: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  it("stays between 0 and 1, and takes one step a mark", () => {
    fc.assert(
      fc.property(anyMarks, anyTrace, (observations, parameters) => {
        const { probability, history } = traceSkill(observations, parameters);
        expect(history).toHaveLength(observations.length);
        for (const each of [probability, ...history]) {
          expect(each).toBeGreaterThan(0);
          expect(each).toBeLessThan(1);
        }
      }),
      seeded,
    );
  });

  it("is never lowered by one more right mark", () => {
    fc.assert(
      fc.property(anyMarks, anyMark, anyTrace, (observations, { guess }, parameters) => {
        const right: Observation = guess === undefined ? { kind: "right" } : { kind: "right", guess };
        const before = traceSkill(observations, parameters).probability;
        expect(traceSkill([...observations, right], parameters).probability).toBeGreaterThanOrEqual(before - 1e-12);
      }),
      seeded,
    );
  });

  it("is never lowered where a wrong mark had been right, or where a hint had not been needed", () => {
    fc.assert(
      fc.property(anyMarks, fc.nat(), anyTrace, (observations, seed, parameters) => {
        fc.pre(observations.length > 0);
        const at = seed % observations.length;
        const better = observations.map((each, i): Observation => (i === at ? { ...each, kind: "right" } : each));
        const [before, after] = [observations, better].map((each) => traceSkill(each, parameters).probability);
        expect(after).toBeGreaterThanOrEqual((before as number) - 1e-12);
      }),
      seeded,
    );
  });
});
