import { describe, expect, it } from "vitest";
import { outlineLines } from "@/lib/drawing/hidden-lines/outline-lines";
import type { Face, SolidLine } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";
import { face } from "./scene";

const SIDES = 12;
const RADIUS = 1;

/** An upright column of twelve facets with its axis over (0, 5); facet i lies between seams i and i + 1, counted from stage left. */
function column(): { readonly faces: readonly Face[]; readonly lines: readonly SolidLine[] } {
  const at = (i: number, z: number): StagePoint => {
    const turn = (2 * Math.PI * i) / SIDES;
    return [RADIUS * Math.cos(turn), 5 + RADIUS * Math.sin(turn), z];
  };
  const places = Array.from({ length: SIDES }, (_, i) => i);
  return {
    faces: places.map((i) => face(`facet${i}`, [at(i, 0), at(i + 1, 0), at(i + 1, 3), at(i, 3)])),
    lines: places.flatMap((i): SolidLine[] => [
      {
        id: `seam${i}`,
        element: "C",
        from: at(i, 0),
        to: at(i, 3),
        faces: [i, (i + SIDES - 1) % SIDES],
        kind: "smooth",
      },
      { id: `foot${i}`, element: "C", from: at(i, 0), to: at(i + 1, 0), faces: [i], kind: "edge" },
    ]),
  };
}

const seams = (lines: readonly SolidLine[]) => lines.filter(({ kind }) => kind === "smooth").map(({ id }) => id);

describe("lines worth drawing of a curved surface", () => {
  // A facet looks to the eye when the eye is beyond its plane: (e - c) . n > r cos 15, n at 15, 45, 75 ... degrees.
  it.each<[string, { distance: number; offset: number }, string[]]>([
    // The eye is 15 m off, straight downstage: n . e = 15 cos(angle from downstage) > 0.97: facets up to 75 degrees off.
    ["from afar, straight on", { distance: 10, offset: 0 }, ["seam0", "seam6"]],
    // 2 m off: 2 cos 45 > 0.97 > 2 cos 75: only the four nearest facets, from seam 7 (210 degrees) to seam 11.
    ["from near", { distance: -3, offset: 0 }, ["seam7", "seam11"]],
    // From 45 degrees to the right, 15 root 2 m off: seen are those less than 87.4 degrees from 315: seams 8 (240) to 1 (30).
    ["from the right", { distance: 10, offset: 15 }, ["seam1", "seam8"]],
  ])("%s", (_, { distance, offset }, outline) => {
    const kept = outlineLines(column(), { distance, offset, eyeHeight: 1.6 });
    expect(seams(kept).sort()).toEqual([...outline].sort());
    expect(kept.filter(({ kind }) => kind === "edge")).toHaveLength(SIDES);
  });

  it("keeps the open end of a surface, and details", () => {
    const { faces } = column();
    const end: SolidLine = { id: "end", element: "C", from: [1, 5, 0], to: [1, 5, 3], faces: [0], kind: "smooth" };
    const detail: SolidLine = { ...end, id: "detail", kind: "detail", faces: [3] };
    const lines = [end, detail];
    expect(outlineLines({ faces, lines }, { distance: 10, offset: 0, eyeHeight: 1.6 })).toEqual(lines);
  });

  it("takes a facet seen edge-on not to look: its far seam, not its near one, is inner", () => {
    // The eye in the plane x = 1: the facet along it, on the right, is edge-on; the one before it looks, the one after does not.
    const at = (x: number, y: number, z: number): StagePoint => [x, y, z];
    const faces = [
      face("front", [at(0, 1, 0), at(1, 2, 0), at(1, 2, 1), at(0, 1, 1)]),
      face("side", [at(1, 2, 0), at(1, 3, 0), at(1, 3, 1), at(1, 2, 1)]),
      face("back", [at(1, 3, 0), at(0, 4, 0), at(0, 4, 1), at(1, 3, 1)]),
    ];
    const seam = (id: string, y: number, pair: number[]): SolidLine => ({
      id,
      element: "C",
      from: [1, y, 0],
      to: [1, y, 1],
      faces: pair,
      kind: "smooth",
    });
    const kept = outlineLines(
      { faces, lines: [seam("near", 2, [0, 1]), seam("far", 3, [1, 2])] },
      { distance: 10, offset: 1, eyeHeight: 2 },
    );
    expect(kept.map(({ id }) => id)).toEqual(["near"]);
  });
});
