import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { meet } from "@/lib/geometry/meet";
import type { Vector2 } from "@/lib/geometry/vector";
import { type DrawnLine, missInSigmas } from "@/lib/perspective/whose-eye/drawn-line";
import { fitMeeting } from "@/lib/perspective/whose-eye/fit-meeting";
import { handSlips } from "../../hand-slips";
import { seeded } from "../../seeded";
import { real } from "../arbitraries";

const SIGMA = 0.5;

function line(p: Vector2, q: Vector2, sigma = SIGMA): DrawnLine {
  return { ends: [p, q], sigma };
}

/** From each of five places part of the way to one place. */
function linesTo([x, y]: Vector2, share: number): readonly DrawnLine[] {
  const feet: readonly Vector2[] = [
    [-80, -20],
    [-80, 90],
    [-60, 0],
    [-80, 70],
    [-20, -30],
  ];
  return feet.map((foot) => line(foot, [foot[0] + (x - foot[0]) * share, foot[1] + (y - foot[1]) * share]));
}

/** The same lines with every end moved by a hand. */
function slipped(lines: readonly DrawnLine[], slips: () => Vector2): readonly DrawnLine[] {
  const moved = ([x, y]: Vector2): Vector2 => {
    const [right, up] = slips();
    return [x + right, y + up];
  };
  return lines.map(({ ends: [p, q], sigma }) => line(moved(p), moved(q), sigma));
}

function sumOfSquares(lines: readonly DrawnLine[], [x, y]: Vector2): number {
  return lines.reduce((sum, one) => sum + missInSigmas(one, [x, y, 1]) ** 2, 0);
}

describe("where lines meet", () => {
  it("is of two lines where they cross", () => {
    const [a, b] = [line([0, 0], [10, 1]), line([0, 9], [10, 7])];
    const found = fitMeeting([a, b]);
    if (found.kind !== "point") throw new Error(found.kind);
    const crossing = meet(a.ends, b.ends) as Vector2;
    expect(found.at[0]).toBeCloseTo(crossing[0], 9);
    expect(found.at[1]).toBeCloseTo(crossing[1], 9);
    expect(found.misfit).toBeNull();
  });

  it.each<{ name: string; lines: readonly DrawnLine[]; kind: string }>([
    { name: "no line", lines: [], kind: "unknown" },
    { name: "one line", lines: [line([0, 0], [10, 0])], kind: "unknown" },
    { name: "one line and a dot", lines: [line([0, 0], [10, 0]), line([3, 3], [3, 3])], kind: "unknown" },
    { name: "one line twice", lines: [line([0, 0], [10, 0]), line([20, 0], [30, 0])], kind: "unknown" },
    { name: "two parallels", lines: [line([0, 0], [50, 0]), line([0, 20], [50, 20])], kind: "parallel" },
    { name: "two that all but are", lines: [line([0, 0], [50, 0]), line([0, 20], [50, 20.8])], kind: "parallel" },
    { name: "two that surely meet", lines: [line([0, 0], [50, 0]), line([0, 20], [50, 15])], kind: "point" },
  ])("of $name is told as $kind", ({ lines, kind }) => {
    expect(fitMeeting(lines).kind).toBe(kind);
  });

  it("is the place itself of lines drawn to it exactly, wherever that is", () => {
    fc.assert(
      fc.property(real(-70, 400), real(-200, 200), real(0.2, 0.8), (x, y, share) => {
        const found = fitMeeting(linesTo([x, y], share).map(({ ends }) => line(ends[0], ends[1], 1e-3)));
        if (found.kind !== "point") return fc.pre(false);
        const reach = Math.hypot(x, y) + 100;
        expect(Math.hypot(found.at[0] - x, found.at[1] - y)).toBeLessThan(1e-7 * reach);
        expect(found.misfit).toBeLessThan(1e-4);
      }),
      seeded,
    );
  });

  it("is of slipped lines the place they miss least: no neighbour is missed less", () => {
    fc.assert(
      fc.property(real(20, 300), real(-100, 150), fc.nat(), (x, y, seed) => {
        const lines = slipped(linesTo([x, y], 0.4), handSlips(seed, SIGMA));
        const found = fitMeeting(lines);
        if (found.kind !== "point") return fc.pre(false);
        const least = sumOfSquares(lines, found.at);
        const { xx, yy } = found.spread;
        for (const turn of [0, 1, 2, 3, 4, 5, 6, 7]) {
          const [c, s] = [Math.cos((turn * Math.PI) / 4), Math.sin((turn * Math.PI) / 4)];
          const aside: Vector2 = [found.at[0] + 0.1 * Math.sqrt(xx) * c, found.at[1] + 0.1 * Math.sqrt(yy) * s];
          expect(sumOfSquares(lines, aside)).toBeGreaterThan(least - 1e-9);
        }
      }),
      seeded,
    );
  });

  it.each([
    { name: "near", place: [0, 50] as const, share: 0.5 },
    { name: "far", place: [300, 40] as const, share: 0.16 },
  ])("is told with an honest spread, and no side is favoured: $name", ({ place, share }) => {
    const slips = handSlips(1435, SIGMA);
    const trials = Array.from({ length: 1500 }, () => fitMeeting(slipped(linesTo(place, share), slips)));
    const points = trials.flatMap((trial) => (trial.kind === "point" ? [trial] : []));
    expect(points).toHaveLength(trials.length);
    const mean = (of: (trial: (typeof points)[number]) => number) =>
      points.reduce((sum, trial) => sum + of(trial), 0) / points.length;
    const squareX = mean(({ at, spread }) => (at[0] - place[0]) ** 2 / spread.xx);
    const squareY = mean(({ at, spread }) => (at[1] - place[1]) ** 2 / spread.yy);
    const misfit = mean((trial) => (trial.misfit as number) ** 2);
    // A mean of 1500 squares of one sigma strays from 1 by 0.037; four of them, and a little for what is not linear.
    for (const square of [squareX, squareY, misfit]) expect(Math.abs(square - 1)).toBeLessThan(0.2);
    expect(Math.abs(mean(({ at, spread }) => (at[0] - place[0]) / Math.sqrt(spread.xx)))).toBeLessThan(0.15);
    expect(Math.abs(mean(({ at, spread }) => (at[1] - place[1]) / Math.sqrt(spread.yy)))).toBeLessThan(0.15);
  });
});
