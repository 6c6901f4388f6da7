import { beforeAll, describe, expect, it, vi } from "vitest";
import { loadSheetTools } from "@/lib/cli/photo/load-sheet-tools";
import type { Kind } from "./shots";
import { shotBySeed } from "./shots";
import { quantile, shareOf } from "./sum-up";
import { isRightSheet, type Outcome, type PointOutcome, tryShot } from "./try-shot";

/** Photographs in full, when `SEEDS` asks for long runs, and so many small ones when nothing is said. */
const FULL = 200;
const FEW = 24;
const LONG_RUN = 1000;
const full = Number(process.env.SEEDS ?? 0) >= LONG_RUN;
const photographs = full ? FULL : FEW;
/** Time allowed for taking and reading one, milliseconds. */
const PHOTOGRAPH_MS = 20_000;

/** The bars, millimetres on the page. */
const CLEAR = { median: 0.3, p95: 1 };
const FAINT = { median: 0.5, p95: 1.5 };
/** One sheet's points can be all that lies beyond a few photographs' 95th percentile, so of these so many may lie beyond it. */
const BEYOND_IN_FEW = 0.1;
const MOST_MISSED = 0.05;
const MOST_FALSE = 0.02;
/** A point read farther from where it was drawn than this was read from something else. */
const FALSE_MM = 3;
/** Flat paper seen straight is off by no more anywhere in the drawing. */
const PAGE_MM = 0.15;
/** Of sheets photographed well enough, so many may be sent back all the same. */
const MOST_REFUSED = 0.02;

vi.setConfig({ hookTimeout: photographs * PHOTOGRAPH_MS });

let outcomes: readonly Outcome[] = [];
beforeAll(async () => {
  const tools = await loadSheetTools();
  const all: Outcome[] = [];
  for (let seed = 0; seed < photographs; seed++)
    all.push(await tryShot(tools, shotBySeed(seed, full ? "full" : "small")));
  outcomes = all;
});

const ordinary = () => outcomes.filter(({ kind }) => kind !== "hopeless");
const pointsOf = (...kinds: readonly Kind[]) =>
  outcomes.flatMap(({ kind, points }) => (kinds.includes(kind) ? points : []));
const offs = (points: readonly PointOutcome[]) => points.flatMap(({ offMm }) => (offMm === null ? [] : [offMm]));
/** An outcome to be found again by who reads of it. */
const named = ({ seed, kind, habit, shot }: Outcome) => ({ seed, kind, habit, exercise: shot.exercise.id });

describe(`over ${photographs} photographs of the course's sheets`, () => {
  it("there are some of each kind, and hundreds of points", () => {
    expect(outcomes).toHaveLength(photographs);
    expect(new Set(outcomes.map(({ kind }) => kind)).size).toBe(4);
    expect(ordinary().flatMap(({ truth }) => [...truth.places.keys()]).length).toBeGreaterThan(7 * photographs);
  });

  it("none is read as another exercise's, or another paper's", () => {
    const wrong = outcomes.filter(({ sheet, truth }) => sheet.kind === "straight" && !isRightSheet(sheet, truth));
    expect(wrong.map(named)).toEqual([]);
  });

  it("the markers in view are found, or what is left out is said, and none is found where there is none", () => {
    const silent = outcomes.filter(({ sheet, truth }) => {
      if (sheet.kind === "refused") return false;
      if (!sheet.markers.every((id) => truth.markersAtMost.includes(id))) return true;
      return !truth.markers.every((id) => sheet.markers.includes(id)) && sheet.doubts.length === 0;
    });
    expect(silent.map(named)).toEqual([]);
  });

  it("what is refused is told why and what to do, and hardly any that can be read is", () => {
    for (const { sheet } of outcomes)
      if (sheet.kind === "refused") expect([sheet.say, sheet.remedy]).toEqual([sentence, sentence]);
    const refused = ordinary().filter(({ sheet }) => sheet.kind === "refused");
    expect(refused.length / ordinary().length, JSON.stringify(refused.map(named))).toBeLessThanOrEqual(MOST_REFUSED);
  });

  it("flat paper lies where it is said to lie", () => {
    const points = pointsOf("flat, clear pencil", "flat, faint pencil");
    expect(Math.max(...points.map(({ pageMm }) => pageMm))).toBeLessThan(PAGE_MM);
  });

  it("curled paper lies nearly so, once its print is looked at", () => {
    const off = pointsOf("curled").map(({ pageMm }) => pageMm);
    expect(off.length).toBeGreaterThan(photographs);
    expect(quantile(off, 0.95)).toBeLessThan(PAGE_MM);
  });

  it("curled paper that is off by more than a drawing allows is said not to lie flat", () => {
    const silent = outcomes.filter(
      ({ points, doubts }) => points.some(({ pageMm }) => pageMm > CLEAR.p95) && doubts.length === 0,
    );
    expect(silent.map(named)).toEqual([]);
  });

  it.each([
    ["flat, clear pencil", CLEAR],
    ["flat, faint pencil", FAINT],
  ] as const)("corners on paper that is %s are read within the bars", (kind, bar) => {
    const off = offs(pointsOf(kind));
    expect(off.length).toBeGreaterThan(2 * photographs);
    expect(quantile(off, 0.5)).toBeLessThanOrEqual(bar.median);
    if (full) expect(quantile(off, 0.95)).toBeLessThanOrEqual(bar.p95);
    else expect(shareOf(off, (mm) => mm > bar.p95)).toBeLessThanOrEqual(BEYOND_IN_FEW);
  });

  it("few corners are missed", () => {
    const points = ordinary().flatMap((each) => each.points);
    expect(shareOf(points, ({ offMm }) => offMm === null)).toBeLessThanOrEqual(MOST_MISSED);
  });

  it("fewer are read from something else", () => {
    const points = ordinary().flatMap((each) => each.points);
    expect(shareOf(points, ({ offMm }) => offMm !== null && offMm > FALSE_MM)).toBeLessThanOrEqual(MOST_FALSE);
  });
});

/** A whole sentence. */
const sentence = expect.stringMatching(/^[A-Z].*\.$/);
