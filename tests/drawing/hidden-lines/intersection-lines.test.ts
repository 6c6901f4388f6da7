import { describe, expect, it } from "vitest";
import { intersectionLines } from "@/lib/drawing/hidden-lines/intersection-lines";
import { type VisibleLine, visibleLines } from "@/lib/drawing/hidden-lines/visible-lines";
import type { Face } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";
import { box, face, facing, join, pushed } from "./scene";

/** Ends of the lines found, the lesser first, to nine digits. */
function endsOf(faces: readonly Face[]) {
  const tidy = (point: StagePoint) => point.map((value) => Math.round(value * 1e9) / 1e9 + 0);
  const before = (a: number[], b: number[]) => a.map((value, i) => value - (b[i] ?? 0)).find((gap) => gap !== 0) ?? 0;
  return intersectionLines(faces).map(({ from, to }) => [tidy(from), tidy(to)].sort(before));
}

const wall = face("wall", facing(2, [-3, 3], [0, 4]));

describe("lines in which faces pass through one another", () => {
  it("a level board through an upright wall, as wide as the narrower", () => {
    const board = face("board", [
      [-1, 1, 1],
      [1, 1, 1],
      [1, 5, 1],
      [-1, 5, 1],
    ]);
    expect(endsOf([wall, board])).toEqual([
      [
        [-1, 2, 1],
        [1, 2, 1],
      ],
    ]);
    expect(intersectionLines([wall, board])[0]).toMatchObject({ id: "wall~board", faces: [0, 1] });
  });

  it("in pieces where a hole is, numbered", () => {
    const board = face("board", [
      [-9, 1, 1],
      [9, 1, 1],
      [9, 5, 1],
      [-9, 5, 1],
    ]);
    const open = { ...wall, holes: [[...facing(2, [-1, 1], [0.5, 2])].reverse()] };
    expect(endsOf([open, board]).sort()).toEqual([
      [
        [-3, 2, 1],
        [-1, 2, 1],
      ],
      [
        [1, 2, 1],
        [3, 2, 1],
      ],
    ]);
    expect(intersectionLines([open, board]).map(({ id }) => id)).toEqual(["wall~board.1", "wall~board.2"]);
  });

  it("a platform pushed through a raking wall shows where it enters", () => {
    // The wall x = y, from (0, 0) to (4, 4); the platform's top runs from x = 0 to x = 3, between y = 1 and y = 2.
    const raking = face("raking", [
      [0, 0, 0],
      [4, 4, 0],
      [4, 4, 3],
      [0, 0, 3],
    ]);
    const platform = box("P", [0, 3], [1, 2], [0, 0.5]);
    const faces = [raking, ...platform.faces];
    // The bottom runs along the wall's own foot, so it only touches: the ends and the top are left.
    expect(endsOf(faces)).toEqual([
      [
        [1, 1, 0],
        [1, 1, 0.5],
      ],
      [
        [2, 2, 0],
        [2, 2, 0.5],
      ],
      [
        [1, 1, 0.5],
        [2, 2, 0.5],
      ],
    ]);
    const lines = intersectionLines(faces);
    const seen = visibleLines({ faces, lines }, { distance: 10, eyeHeight: 2, offset: 0 });
    const whole = (piece: VisibleLine) => piece.start === 0 && piece.end === 1;
    // From the left the platform stands before the wall: its downstage side and its top go in; the far side is hidden.
    expect(seen.filter(whole).map((piece) => lines[piece.line]?.id)).toEqual(["raking~P.side0", "raking~P.top"]);
    expect(seen).toHaveLength(2);
  });

  it.each<[string, readonly Face[]]>([
    ["a box alone", box("A", [0, 1], [0, 1], [0, 1]).faces],
    ["boxes side by side", join(box("A", [0, 1], [0, 1], [0, 1]), box("B", [1, 2], [0, 2], [0, 2])).faces],
    ["a box on a box", join(box("A", [0, 3], [0, 3], [0, 1]), box("B", [1, 2], [1, 2], [1, 2])).faces],
    ["a box on a slope", slopeWithBox()],
    ["a stub butted against a wall", [wall, ...box("S", [0, 0.1], [0, 2], [0, 3]).faces]],
    ["a stub a hair short", [wall, ...box("S", [0, 0.1], [0, 2 - 1e-9], [0, 3]).faces]],
    ["a stub a hair too long", [wall, ...box("S", [0, 0.1], [0, 2 + 1e-9], [0, 3]).faces]],
    ["faces in one plane", [wall, face("other", facing(2, [-1, 1], [1, 2]))]],
    ["faces side by side, parallel", [wall, face("other", facing(2.5, [-1, 1], [1, 2]))]],
    [
      "planes that meet beyond the faces",
      [
        wall,
        face("far", [
          [9, 0, 0],
          [9, 4, 0],
          [9, 4, 2],
          [9, 0, 2],
        ]),
      ],
    ],
    ["no faces", []],
    [
      "a face that is a line",
      [
        wall,
        face("none", [
          [0, 0, 1],
          [0, 4, 1],
          [0, 2, 1],
        ]),
      ],
    ],
    [
      "a face that is not finite",
      [
        wall,
        face("none", [
          [0, 0, 1],
          [1, 4, 1],
          [Number.NaN, 2, 1],
        ]),
      ],
    ],
  ])("%s: none", (_, faces) => {
    expect(intersectionLines(faces)).toEqual([]);
  });
});

function slopeWithBox(): readonly Face[] {
  const rise = (y: number) => y / 12;
  const at = (x: number, y: number): StagePoint => [x, y, rise(y)];
  const slope = face("slope", [at(-9, 0), at(9, 0), at(9, 20), at(-9, 20)]);
  return [slope, ...pushed("B", [at(1, 3), at(2, 3), at(2, 4), at(1, 4)], [0, 0, 1]).faces];
}
