import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawOnce, SAME_LINE_M } from "@/lib/drawing/hidden-lines/draw-once";
import { type VisibleLine, visibleLines } from "@/lib/drawing/hidden-lines/visible-lines";
import { distanceToSegment } from "@/lib/geometry/segments-cross";
import { between } from "@/lib/geometry/vector";
import type { PicturePoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { box, join } from "./scene";

function piece(line: number, from: PicturePoint, to: PicturePoint): VisibleLine {
  return { line, from, to, start: 0, end: 1 };
}

const long = piece(0, [0, 0], [4, 0]);
const HAIR = SAME_LINE_M / 2;

describe("each line of the picture once", () => {
  it.each<[string, VisibleLine[], VisibleLine[]]>([
    ["nothing", [], []],
    ["one", [long], [long]],
    ["the same twice", [long, { ...long, line: 1 }], [long]],
    ["the same the other way", [long, piece(1, [4, 0], [0, 0])], [long]],
    ["a part of it, given first", [piece(1, [1, 0], [2, 0]), long], [long]],
    ["a hair beside it", [long, piece(1, [1, HAIR], [2, HAIR])], [long]],
    ["farther beside it", [long, piece(1, [1, 0.01], [2, 0.01])], [long, piece(1, [1, 0.01], [2, 0.01])]],
    ["end to end", [long, piece(1, [4, 0], [5, 0])], [long, piece(1, [4, 0], [5, 0])]],
    ["crossing", [long, piece(1, [2, -1], [2, 1])], [long, piece(1, [2, -1], [2, 1])]],
    ["beginning alike and parting", [long, piece(1, [0, 0], [2, 0.1])], [long, piece(1, [0, 0], [2, 0.1])]],
    [
      "overlapping at one end",
      [long, piece(1, [3, 0], [5, 0])],
      [long, { line: 1, from: [4, 0], to: [5, 0], start: 0.5, end: 1 }],
    ],
    [
      "longer at both ends, but of a higher rank",
      [long, piece(9, [-2, 0], [6, 0])],
      [
        long,
        { line: 9, from: [-2, 0], to: [0, 0], start: 0, end: 0.25 },
        { line: 9, from: [4, 0], to: [6, 0], start: 0.75, end: 1 },
      ],
    ],
  ])("%s", (_, given, left) => {
    expect(drawOnce(given, (one) => (one.line === 9 ? 1 : 0))).toEqual(left);
  });

  it("does not wipe out a fan of lines, each a hair from the next", () => {
    const fan = Array.from({ length: 9 }, (_, i) => piece(i, [0, i * HAIR * 1.5], [1, i * HAIR * 1.5]));
    expect(drawOnce(fan).map(({ line }) => line)).toEqual([0, 2, 4, 6, 8]);
  });

  it("keeps the places of a piece along its line", () => {
    const cut: VisibleLine = { line: 1, from: [3, 0], to: [5, 0], start: 0.2, end: 0.6 };
    expect(drawOnce([long, cut])[1]).toMatchObject({ start: expect.closeTo(0.4, 12), end: 0.6 });
  });

  it("draws the joint of two platforms once", () => {
    const scene = join(box("A", [-2, 0.5], [2, 4], [0, 0.5]), box("B", [0.5, 2], [2, 4], [0, 0.5]));
    const seen = visibleLines(scene, { distance: 10, eyeHeight: 2, offset: 0 });
    const ids = drawOnce(seen).map(({ line }) => scene.lines[line]?.id);
    expect(seen.map(({ line }) => scene.lines[line]?.id)).toEqual(expect.arrayContaining(["A.head1", "B.head3"]));
    expect(ids).toContain("A.head1");
    expect(ids).not.toContain("B.head3");
  });

  it("leaves every point drawn, and nothing drawn twice", () => {
    // Few places, so that many pieces run over one another.
    const place = fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 }));
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { maxLength: 20 }), (ends) => {
        const given = ends.map(([from, to], i) => piece(i, from, to)).filter(({ from, to }) => `${from}` !== `${to}`);
        const left = drawOnce(given);
        for (const one of given) {
          for (const t of [0.013, 0.29, 0.5, 0.77, 0.987]) {
            const point = between(one.from, one.to, t);
            const near = left.filter((each) => distanceToSegment(point, [each.from, each.to]) < 2 * SAME_LINE_M);
            expect(near.length).toBeGreaterThan(0);
          }
        }
        for (const one of left) {
          const middle = between(one.from, one.to, 0.4837);
          const twice = left.filter(
            (each) => each !== one && distanceToSegment(middle, [each.from, each.to]) < 1e-9 && isAlong(one, each),
          );
          expect(twice).toEqual([]);
        }
      }),
      seeded,
    );
  });
});

function isAlong(one: VisibleLine, other: VisibleLine): boolean {
  const [a, b] = [one, other].map(({ from, to }) => [to[0] - from[0], to[1] - from[1]] as const);
  return Math.abs((a?.[0] ?? 0) * (b?.[1] ?? 0) - (a?.[1] ?? 0) * (b?.[0] ?? 0)) < 1e-9;
}
