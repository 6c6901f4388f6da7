import fc from "fast-check";
import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import { mean, sampleCorrelation, sampleCovariance, sampleVariance } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { itemAnalysis } from "@/lib/classroom/teach-again/item-analysis";
import { chiSquare2, ellipseAxes, spreadOf } from "@/lib/classroom/teach-again/spread-ellipse";
import { seeded } from "../../seeded";

const SCORE = fc.integer({ min: 0, max: 100 });

describe("difficulty and discrimination", () => {
  it("are worked by hand", () => {
    // The first, 20 to 80 by 20, against the mean of its rests, 30 to 90 by 20: one line, so r = 1.
    const [a, b, c] = itemAnalysis([
      [20, 30, 30],
      [40, 50, 50],
      [60, 70, 70],
      [80, 90, 90],
    ]);
    expect(a).toEqual({ n: 4, difficulty: 0.5, discrimination: { kind: "found", r: expect.closeTo(1, 12), pairs: 4 } });
    expect(b?.difficulty).toBeCloseTo(0.6, 12);
    expect(c?.discrimination).toMatchObject({ kind: "found", r: expect.closeTo(1, 12) });
    // x = 0, 50, 100 and y = 50, 100, 0: cov = -1250, both variances 2500, so r = -0.5.
    const [x] = itemAnalysis([
      [0, 50],
      [50, 100],
      [100, 0],
    ]);
    expect(x?.discrimination).toMatchObject({ kind: "found", r: expect.closeTo(-0.5, 12) });
  });
  it.each([
    ["nobody", [], undefined],
    [
      "two students",
      [
        [10, 20],
        [30, 60],
      ],
      { n: 2, difficulty: 0.2, discrimination: { kind: "none", why: "few" } },
    ],
    [
      "all alike",
      [
        [50, 1],
        [50, 2],
        [50, 3],
      ],
      { n: 3, difficulty: 0.5, discrimination: { kind: "none", why: "alike" } },
    ],
    ["no other exercise", [[50], [60], [70]], { n: 3, difficulty: 0.6, discrimination: { kind: "none", why: "few" } }],
    [
      "no scores",
      [
        [null, 1],
        [null, 2],
      ],
      { n: 0, difficulty: null, discrimination: { kind: "none", why: "few" } },
    ],
  ])("%s", (_, scores, figures) => expect(itemAnalysis(scores)[0]).toEqual(figures));

  it("agree with simple-statistics, the total being the sum of the others", () => {
    const whole = fc.array(fc.tuple(SCORE, SCORE, SCORE, SCORE), { minLength: 3, maxLength: 30 });
    fc.assert(
      fc.property(whole, (scores) => {
        for (const [i, { difficulty, discrimination }] of itemAnalysis(scores).entries()) {
          const own = scores.map((row) => row[i] ?? 0);
          const rest = scores.map((row) => row.reduce((sum, each) => sum + each, 0) - (row[i] ?? 0));
          expect(difficulty).toBeCloseTo(mean(own) / 100, 9);
          if (discrimination.kind === "found") expect(discrimination.r).toBeCloseTo(sampleCorrelation(own, rest), 8);
          else expect(Math.min(sampleVariance(own), sampleVariance(rest))).toBeLessThan(1e-6);
        }
      }),
      seeded,
    );
  });
});

describe("the spread of marks", () => {
  it("is worked by hand", () => {
    // A cross of four marks: variances 8/3 and 2/3.
    const spread = spreadOf([
      [-2, 5],
      [2, 5],
      [0, 4],
      [0, 6],
    ]);
    expect(spread).toMatchObject({ kind: "spread", mean: [0, 5], turn: 0 });
    if (spread.kind !== "spread") throw new Error("They spread.");
    expect(spread.long).toBeCloseTo(Math.sqrt(8 / 3), 12);
    expect(spread.short).toBeCloseTo(Math.sqrt(2 / 3), 12);
  });
  it.each([
    [
      "two",
      [
        [0, 0],
        [1, 1],
      ],
      { kind: "few", n: 2 },
    ],
    [
      "three at one place",
      [
        [1, 2],
        [1, 2],
        [1, 2],
      ],
      { kind: "one-place", n: 3, mean: [1, 2] },
    ],
  ] as const)("%s", (_, marks, spread) => expect(spreadOf(marks)).toEqual(spread));
  it("has no width along a line", () => {
    const spread = spreadOf([
      [0, 0],
      [1, 1],
      [2, 2],
    ]);
    expect(spread).toMatchObject({
      kind: "spread",
      short: expect.closeTo(0, 7),
      turn: expect.closeTo(Math.PI / 4, 12),
    });
  });
  it("agrees with simple-statistics' covariance and ml-matrix's eigenvalues", () => {
    const place = fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 }));
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 40 }), (hundredths) => {
        const marks = hundredths.map(([x, y]) => [x / 100, y / 100] as const);
        const spread = spreadOf(marks);
        const [xs, ys] = [marks.map(([x]) => x), marks.map(([, y]) => y)];
        if (spread.kind !== "spread") {
          expect(Math.max(sampleVariance(xs), sampleVariance(ys))).toBeLessThan(1e-12);
          return;
        }
        const { across, up, both } = spread.covariance;
        expect(across).toBeCloseTo(sampleVariance(xs), 8);
        expect(up).toBeCloseTo(sampleVariance(ys), 8);
        expect(both).toBeCloseTo(sampleCovariance(xs, ys), 8);
        const { realEigenvalues } = new EigenvalueDecomposition(
          new Matrix([
            [across, both],
            [both, up],
          ]),
        );
        const [least = 0, most = 0] = [...realEigenvalues].sort((a, b) => a - b);
        expect(spread.long ** 2).toBeCloseTo(most, 7);
        expect(spread.short ** 2).toBeCloseTo(Math.max(0, least), 7);
        // The variance along the long axis is the largest there is.
        const along = marks.map(([x, y]) => x * Math.cos(spread.turn) + y * Math.sin(spread.turn));
        expect(sampleVariance(along)).toBeCloseTo(most, 7);
      }),
      seeded,
    );
  });

  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper critical values of chi-square, 2 degrees of freedom:
  // 4.605, 5.991, 7.378, 9.210 (from memory).
  it.each([
    [0.9, 4.605],
    [0.95, 5.991],
    [0.975, 7.378],
    [0.99, 9.21],
  ])("the quantile of %f", (share, quantile) => expect(chiSquare2(share)).toBeCloseTo(quantile, 3));

  it("holds the share it says of marks spread normally", () => {
    // Seeded normal marks by the polar method of Box and Muller, turned and stretched.
    let state = 12345;
    const next = () => {
      state = (state * 48271) % 2147483647;
      return state / 2147483647;
    };
    const marks = Array.from({ length: 4000 }, () => {
      const [r, a] = [Math.sqrt(-2 * Math.log(next())), 2 * Math.PI * next()];
      const [u, v] = [3 * r * Math.cos(a), r * Math.sin(a)];
      return [0.8 * u - 0.6 * v, 0.6 * u + 0.8 * v] as const;
    });
    const spread = spreadOf(marks);
    if (spread.kind !== "spread") throw new Error("They spread.");
    for (const share of [0.5, 0.95]) {
      const [long, short] = ellipseAxes(spread, share);
      const inside = marks.filter(([x, y]) => {
        const [dx, dy] = [x - spread.mean[0], y - spread.mean[1]];
        const along = dx * Math.cos(spread.turn) + dy * Math.sin(spread.turn);
        const beside = dy * Math.cos(spread.turn) - dx * Math.sin(spread.turn);
        return (along / long) ** 2 + (beside / short) ** 2 <= 1;
      });
      // Three standard errors of a share of 4000.
      expect(Math.abs(inside.length / 4000 - share)).toBeLessThan(3 * Math.sqrt((share * (1 - share)) / 4000));
    }
  });
});
