import type { SceneLine } from "@/lib/drawing/hidden-lines/visible-lines";
import type { Face } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";

export type Scene = { readonly faces: readonly Face[]; readonly lines: readonly SceneLine[] };

export function face(id: string, outline: readonly StagePoint[], holes: readonly StagePoint[][] = []): Face {
  return { id, element: id, kind: "wall", outline, holes };
}

export function line(id: string, from: StagePoint, to: StagePoint, faces: readonly number[] = []): SceneLine {
  return { id, from, to, faces };
}

/** A rectangle facing the audience, at one depth. */
export function facing(
  y: number,
  [left, right]: readonly [number, number],
  [bottom, top]: readonly [number, number],
): readonly StagePoint[] {
  return [
    [left, y, bottom],
    [right, y, bottom],
    [right, y, top],
    [left, y, top],
  ];
}

export function join(...scenes: readonly Scene[]): Scene {
  const faces: Face[] = [];
  const lines: SceneLine[] = [];
  for (const scene of scenes) {
    const first = faces.length;
    faces.push(...scene.faces);
    lines.push(...scene.lines.map((each) => ({ ...each, faces: each.faces.map((i) => i + first) })));
  }
  return { faces, lines };
}

/** A ring moved along a vector: six faces of a box for a rectangle, and every edge with its two faces. */
export function pushed(id: string, bottom: readonly StagePoint[], [dx, dy, dz]: StagePoint): Scene {
  const top = bottom.map(([x, y, z]): StagePoint => [x + dx, y + dy, z + dz]);
  const n = bottom.length;
  const at = (ring: readonly StagePoint[], i: number) => ring[i % n] as StagePoint;
  const sides = bottom.map((_, i) =>
    face(`${id}.side${i}`, [at(bottom, i), at(bottom, i + 1), at(top, i + 1), at(top, i)]),
  );
  return {
    faces: [...sides, face(`${id}.bottom`, [...bottom].reverse()), face(`${id}.top`, top)],
    lines: bottom.flatMap((_, i) => [
      line(`${id}.foot${i}`, at(bottom, i), at(bottom, i + 1), [i, n]),
      line(`${id}.head${i}`, at(top, i), at(top, i + 1), [i, n + 1]),
      line(`${id}.upright${i}`, at(bottom, i), at(top, i), [i, (i + n - 1) % n]),
    ]),
  };
}

/**
 * A box with upright sides: side0 downstage, side1 on the right, side2 upstage, side3 on the left. Edge i begins at corner i,
 * counted from downstage left, counter-clockwise from above.
 */
export function box(
  id: string,
  [left, right]: readonly [number, number],
  [down, up]: readonly [number, number],
  [bottom, top]: readonly [number, number],
): Scene {
  const ring: readonly StagePoint[] = [
    [left, down, bottom],
    [right, down, bottom],
    [right, up, bottom],
    [left, up, bottom],
  ];
  return pushed(id, ring, [0, 0, top - bottom]);
}
