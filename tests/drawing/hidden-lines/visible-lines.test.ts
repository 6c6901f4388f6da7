import { describe, expect, it } from "vitest";
import { NEAR_M } from "@/lib/drawing/hidden-lines/near-plane";
import { type SceneLine, visibleLines } from "@/lib/drawing/hidden-lines/visible-lines";
import { project } from "@/lib/perspective/project";
import type { Face } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";
import { face, facing, line } from "./scene";

const viewer: Viewer = { distance: 10, eyeHeight: 2, offset: 0 };

/** The parameters of what is seen of one line, to nine digits. */
function seenOf(faces: readonly Face[], one: SceneLine, eye = viewer): readonly (readonly [number, number])[] {
  return visibleLines({ faces, lines: [one] }, eye).map(({ start, end }) => [tidy(start), tidy(end)]);
}

const tidy = (value: number) => Math.round(value * 1e9) / 1e9;

// At y = 10 everything is drawn at half size, so a screen at y = 0 covers twice its size of a wall there.
const screen = face("screen", facing(0, [-1, 1], [1, 3]));
const across = line("across", [-8, 10, 2], [8, 10, 2]);

describe("one line and one face", () => {
  it.each<[string, readonly Face[], SceneLine, [number, number][]]>([
    ["alone", [], across, [[0, 1]]],
    [
      "behind a screen",
      [screen],
      across,
      [
        [0, 0.375],
        [0.625, 1],
      ],
    ],
    ["before it", [screen], line("before", [-1, -2, 2], [1, -2, 2]), [[0, 1]]],
    ["covered by it", [screen], line("covered", [-1, 10, 2], [1, 10, 2]), []],
    ["beside it", [screen], line("beside", [3, 10, 0], [3, 10, 4]), [[0, 1]]],
    ["on it, not named", [screen], line("on", [-0.5, 0, 1.5], [0.5, 0, 2.5]), [[0, 1]]],
    ["on it, with rounding", [screen], line("on", [-0.5, 1e-9, 1.5], [0.5, -1e-9, 2.5]), [[0, 1]]],
    ["named by it, though behind", [screen], line("own", [-8, 10, 2], [8, 10, 2], [0]), [[0, 1]]],
    ["along its edge", [screen], line("edge", [-1, 0, 1], [-1, 0, 3]), [[0, 1]]],
    ["behind its edge, in line with it", [screen], line("in line", [-2, 10, 0], [-2, 10, 4]), []],
    [
      "in line with its edge and longer",
      [screen],
      line("longer", [-2, 10, -2], [-2, 10, 6]),
      [
        [0, 0.25],
        [0.75, 1],
      ],
    ],
    // From (0.5, -5) to (0.5, 5): drawn from X = 1 to X = 1/3; it goes through the screen where X = 0.5, three quarters on.
    ["through it", [screen], line("through", [0.5, -5, 2], [0.5, 5, 2]), [[0, 0.75]]],
    ["through it, the other way", [screen], line("through", [0.5, 5, 2], [0.5, -5, 2]), [[0.25, 1]]],
    ["from it towards the eye", [screen], line("peg", [0.5, 0, 2], [0.5, -1, 2]), [[0, 1]]],
    ["from it away", [screen], line("peg", [0.5, 0, 2], [0.5, 1, 2]), []],
    ["ending at its edge in the picture", [screen], line("up to", [-8, 10, 2], [-2, 10, 2]), [[0, 1]]],
    ["touching a corner in the picture", [screen], line("corner", [-4, 10, 2], [0, 10, 6]), [[0, 1]]],
  ])("%s", (_, faces, one, seen) => {
    expect(seenOf(faces, one)).toEqual(seen);
  });

  it("is the same from both sides of the face", () => {
    const turned = face("turned", [...facing(0, [-1, 1], [1, 3])].reverse());
    expect(seenOf([turned], across)).toEqual(seenOf([screen], across));
  });

  it("gives the ends in picture metres", () => {
    const [first, second] = visibleLines({ faces: [screen], lines: [across] }, viewer);
    expect([first?.from, first?.to, second?.from, second?.to]).toEqual([
      [-4, 2],
      [-1, 2],
      [1, 2],
      [4, 2],
    ]);
  });
});

describe("holes", () => {
  const wall = face("wall", facing(0, [-3, 3], [0, 4]), [
    [...facing(0, [-2, -1], [1, 3])].reverse(),
    [...facing(0, [0.5, 1], [1, 3])].reverse(),
  ]);

  it.each<[string, SceneLine, [number, number][]]>([
    [
      "beyond both windows",
      across,
      [
        [0, 0.125],
        [0.25, 0.375],
        [0.5625, 0.625],
        [0.875, 1],
      ],
    ],
    ["in line with the sill", line("sill", [-4, 10, 0], [4, 10, 0]), []],
    ["the window's own edge", line("jamb", [-1, 0, 1], [-1, 0, 3]), [[0, 1]]],
    ["in line with the window's edge", line("in line", [-2, 10, 0], [-2, 10, 4]), []],
    ["a bar in the window", line("bar", [-2, 0, 2], [-1, 0, 2]), [[0, 1]]],
    ["through the window", line("pole", [-1.5, -2, 2], [-1.5, 2, 2]), [[0, 1]]],
  ])("%s", (_, one, seen) => {
    expect(seenOf([wall], one)).toEqual(seen);
  });

  it("count the same whichever way they run", () => {
    const other = { ...wall, holes: wall.holes.map((hole) => [...hole].reverse()) };
    expect(seenOf([other], across)).toEqual(seenOf([wall], across));
  });
});

describe("the eye", () => {
  it("to one side sees round the screen", () => {
    // Similar triangles: from x = 2 the screen's edges at -1 and 1 fall on the wall twice as deep at -4 and 0.
    expect(seenOf([screen], across, { ...viewer, offset: 2 })).toEqual([
      [0, 0.25],
      [0.5, 1],
    ]);
  });

  it("in the plane of a face has nothing hidden by it", () => {
    const flat = face("flat", [
      [0, 1, 0],
      [0, 4, 0],
      [0, 4, 3],
      [0, 1, 3],
    ]);
    expect(seenOf([flat], across)).toEqual([[0, 1]]);
    expect(seenOf([flat], across, { ...viewer, offset: 1 })).toHaveLength(2);
  });

  it("sees a line along its sight as a point, which is left out", () => {
    expect(seenOf([], line("sight", [1, 0, 3], [2, 10, 4]))).toEqual([]);
    expect(seenOf([], line("none", [1, 0, 3], [1, 0, 3]))).toEqual([]);
  });

  it("has lines from behind it cut before it", () => {
    const [piece] = visibleLines({ faces: [], lines: [line("rail", [1, -20, 2], [1, 0, 2])] }, viewer);
    expect(piece).toMatchObject({ start: 0, end: 1, to: [1, 2] });
    expect(piece?.from[0]).toBeCloseTo(viewer.distance / NEAR_M, 9);
    expect(seenOf([], line("behind", [1, -20, 2], [1, -10.5, 2]))).toEqual([]);
    expect(seenOf([], line("level", [1, -10, 2], [1, -10, 3]))).toEqual([]);
  });

  it("looks over a floor that reaches behind it, under which all is hidden", () => {
    const floor = face("floor", [
      [-50, -30, 0],
      [50, -30, 0],
      [50, 60, 0],
      [-50, 60, 0],
    ]);
    expect(seenOf([floor], line("pit", [1, 3, -1], [1, 3, 1]))).toEqual([[0.5, 1]]);
    const ceiling = face("ceiling", [
      [-50, -30, 5],
      [50, -30, 5],
      [50, 60, 5],
      [-50, 60, 5],
    ]);
    expect(seenOf([ceiling], line("pole", [1, 3, 4], [1, 3, 8]))).toEqual([[0, 0.25]]);
  });

  it("is not hindered by what is behind it", () => {
    expect(seenOf([face("behind", facing(-12, [-9, 9], [-9, 9]))], across)).toEqual([[0, 1]]);
  });
});

describe("what is no shape hides nothing and gives no number that is none", () => {
  const NONE = Number.NaN;
  it.each<[string, Face]>([
    ["no corners", face("f", [])],
    [
      "a line",
      face("f", [
        [-1, 0, 1],
        [0, 0, 2],
        [1, 0, 3],
      ]),
    ],
    [
      "a corner that is no number",
      face("f", [
        [-1, 0, 1],
        [1, NONE, 1],
        [1, 0, 3],
      ]),
    ],
    [
      "a hole that is no number",
      face("f", facing(0, [-1, 1], [1, 3]), [
        [
          [NONE, 0, 1],
          [0, 0, 1],
          [0, 0, 2],
        ],
      ]),
    ],
  ])("%s", (_, shape) => {
    expect(seenOf([shape], across)).toEqual([[0, 1]]);
  });

  it("leaves out a line that is no line", () => {
    const bad: StagePoint = [0, NONE, 1];
    expect(seenOf([screen], line("bad", bad, [1, 1, 1]))).toEqual([]);
    expect(seenOf([screen], line("bad", [1, 1, 1], [Number.POSITIVE_INFINITY, 0, 0]))).toEqual([]);
  });

  it("sees nothing without an eye before the plane", () => {
    expect(seenOf([screen], across, { ...viewer, distance: 0 })).toEqual([]);
    expect(project({ ...viewer, distance: 0 }, [0, 1, 0]).seen).toBe(false);
  });
});
