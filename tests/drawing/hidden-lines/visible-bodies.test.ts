import { describe, expect, it } from "vitest";
import { visibleLines } from "@/lib/drawing/hidden-lines/visible-lines";
import type { Viewer } from "@/lib/stage/viewer";
import { box, face, join, type Scene } from "./scene";

const viewer: Viewer = { distance: 10, eyeHeight: 2, offset: 0 };

const tidy = (value: number) => Math.round(value * 1e9) / 1e9;

/** The ids of the lines of which something is seen, and of those of which all is. */
function names(scene: Scene) {
  const pieces = visibleLines(scene, viewer);
  const name = (i: number) => scene.lines[i]?.id as string;
  return {
    whole: pieces.filter(({ start, end }) => start === 0 && end === 1).map((piece) => name(piece.line)),
    parts: pieces.filter(({ start, end }) => !(start === 0 && end === 1)).map((piece) => name(piece.line)),
  };
}

describe("what is seen of bodies", () => {
  it("a box below the eye shows three faces and nine edges", () => {
    const { whole, parts } = names(box("A", [1, 2], [2, 3], [0, 1]));
    expect(whole.sort()).toEqual(
      [
        "A.foot0",
        "A.upright0",
        "A.upright1",
        "A.head0",
        "A.head1",
        "A.head2",
        "A.head3",
        "A.upright3",
        "A.foot3",
      ].sort(),
    );
    expect(parts).toEqual([]);
  });

  it("a box above the eye and to the left shows its bottom and its right", () => {
    const { whole, parts } = names(box("A", [-2, -1], [2, 3], [3, 4]));
    expect(whole).not.toContain("A.head2");
    expect(whole).toContain("A.foot2");
    expect(whole).toHaveLength(9);
    expect(parts).toEqual([]);
  });

  it("a box before a box cuts its edges at the outline", () => {
    const front = box("front", [-1, 1], [0, 1], [0, 1]);
    const back = box("back", [-1.5, 1.5], [10, 11], [0, 1.5]);
    const pieces = visibleLines(join(front, back), viewer);
    const foot = pieces.filter(({ line: i }) => i === 12);
    // The upstage foot, drawn at half size, Z = 1, from -0.75 to 0.75, is covered by the front box's face up to Z = 1.
    expect(join(front, back).lines[12]?.id).toBe("back.foot0");
    expect(foot).toEqual([]);
    // Its uprights at X = +-0.75 come out over the front box's upstage top edge, drawn at Z = 2 - 1 / 1.1.
    const upright = pieces.filter(({ line: i }) => join(front, back).lines[i]?.id === "back.upright0");
    expect(upright).toHaveLength(1);
    expect(upright[0]?.from).toEqual([expect.closeTo(-0.75, 12), expect.closeTo(2 - 1 / 1.1, 12)]);
    expect(upright[0]?.to).toEqual([-0.75, 1.75]);
  });

  it("a leg stands on a platform: its foot's near edges are seen, its far ones are its own to hide", () => {
    const platform = box("P", [-2, 2], [2, 4], [0, 0.5]);
    const leg = box("L", [0.5, 0.6], [3, 3.1], [0.5, 1.2]);
    const { whole, parts } = names(join(platform, leg));
    expect(whole).toEqual(expect.arrayContaining(["L.foot0", "L.foot3", "L.upright0"]));
    expect([...whole, ...parts]).not.toContain("L.foot1");
    expect([...whole, ...parts]).not.toContain("L.foot2");
    expect(parts).toEqual(["P.head2", "P.head2"]);
  });

  it("a box below a single sheet does not show through it, flush or not", () => {
    const sheet = {
      faces: [
        face("sheet", [
          [-2, 2, 1],
          [2, 2, 1],
          [2, 4, 1],
          [-2, 4, 1],
        ]),
      ],
      lines: [],
    };
    for (const top of [1, 0.99]) {
      const { whole, parts } = names(join(sheet, box("B", [0.5, 1], [2.8, 3.2], [0, top])));
      expect([...whole, ...parts].filter((id) => id.startsWith("B.head"))).toEqual([]);
    }
  });

  it("platforms of one height side by side show the joint", () => {
    const pieces = names(join(box("A", [-2, 0.5], [2, 4], [0, 0.5]), box("B", [0.5, 2], [2, 4], [0, 0.5])));
    expect(pieces.whole).toEqual(expect.arrayContaining(["A.head1", "B.head3", "A.head0", "B.head0"]));
    expect(pieces.parts).toEqual([]);
  });

  it("a T of walls: what butts stops at the face, and the face's foot is cut where the end covers it", () => {
    const long = box("long", [-3, 3], [5, 5.2], [0, 3]);
    const stub = box("stub", [-0.1, 0.1], [3, 5], [0, 3]);
    const pieces = visibleLines(join(long, stub), viewer);
    const foot = pieces.filter(({ line: i }) => i === 0);
    // The stub's downstage end covers X from -1/13 to 1/13 at scale 10/13; the long wall is drawn at 10/15.
    const covered = (0.1 * 10) / 13 / ((6 * 10) / 15);
    expect(foot.map(({ start, end }) => [tidy(start), tidy(end)])).toEqual([
      [0, tidy(0.5 - covered)],
      [tidy(0.5 + covered), 1],
    ]);
  });
});
