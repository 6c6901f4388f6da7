import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type VisibleLine, visibleLines } from "@/lib/drawing/hidden-lines/visible-lines";
import type { StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";
import { seeded } from "../../seeded";
import { anyEye, anySceneOf } from "./arbitrary-scenes";
import { AT_EYE_M, castRay, rayFace, type Verdict } from "./ray-check";
import type { Scene } from "./scene";

/** Points tried along every line, at shares without a pattern. */
const TRIED = [0.031, 0.137, 0.263, 0.381, 0.524, 0.647, 0.772, 0.893, 0.977];

/** How far to either side of an end of a piece the answer is looked up, metres over the stage. */
const BESIDE_M = 0.01;

/** A line that passes the eye closer than this shows as a point, whose pieces are not judged, metres. */
const IN_LINE_M = 1e-3;

/** Rounding in a place along a line, as a share of it. */
const ROUNDING = 1e-9;

type Tally = { seen: number; hidden: number; "too near to call": number };

describe("what is seen agrees with a ray cast to every point tried", () => {
  for (const [kind, anyScene] of Object.entries(anySceneOf)) {
    it(kind, () => {
      const along: Tally = { seen: 0, hidden: 0, "too near to call": 0 };
      const atEnds: Tally = { ...along };
      fc.assert(
        fc.property(anyScene, anyEye, (scene, viewer) => {
          checkScene(scene, viewer, along, atEnds);
        }),
        seeded,
      );
      // Most points are judged, and both answers are had in plenty; so are the ends of pieces within lines.
      const judged = along.seen + along.hidden;
      expect(judged).toBeGreaterThan(100 * seeded.numRuns);
      expect(judged).toBeGreaterThan(4 * along["too near to call"]);
      expect(Math.min(along.seen, along.hidden)).toBeGreaterThan(20 * seeded.numRuns);
      expect(atEnds.seen).toBeGreaterThan(2 * seeded.numRuns);
      expect(atEnds.hidden).toBeGreaterThan(2 * seeded.numRuns);
    });
  }
});

function checkScene(scene: Scene, viewer: Viewer, along: Tally, atEnds: Tally): void {
  const pieces = visibleLines(scene, viewer);
  const faces = scene.faces.map(rayFace);
  const eye: StagePoint = [viewer.offset, -viewer.distance, viewer.eyeHeight];
  scene.lines.forEach((line, i) => {
    const others = faces.filter((_, face) => !line.faces.includes(face));
    const corners = line.faces.flatMap((face) => scene.faces[face]?.outline ?? []);
    const drawn = pieces.filter((piece) => piece.line === i);
    const length = Math.hypot(...line.to.map((value, axis) => value - (line.from[axis] ?? 0)));
    if (length < BESIDE_M || isInLineWith(eye, line.from, line.to)) return;
    const at = (share: number): StagePoint => [
      line.from[0] + (line.to[0] - line.from[0]) * share,
      line.from[1] + (line.to[1] - line.from[1]) * share,
      line.from[2] + (line.to[2] - line.from[2]) * share,
    ];
    const judge = (share: number, tally: Tally) => {
      const point = at(share);
      if (viewer.distance + point[1] < AT_EYE_M) return;
      const verdict = castRay(eye, point, others, corners);
      tally[verdict]++;
      if (verdict === "too near to call") return;
      const answer: Verdict = drawn.some((piece) => holds(piece, inPicture(viewer, point))) ? "seen" : "hidden";
      if (answer !== verdict) throw new Error(`${line.id} (${i}) at ${share}: ${answer}, but by the ray ${verdict}.`);
    };
    for (const share of TRIED) judge(share, along);
    for (const piece of drawn) {
      for (const end of [piece.start > 0 ? piece.from : null, piece.end < 1 ? piece.to : null]) {
        const share = end && shareAt(viewer, line.from, line.to, end);
        if (share === null) continue;
        for (const beside of [share - BESIDE_M / length, share + BESIDE_M / length]) {
          if (beside > 0 && beside < 1) judge(beside, atEnds);
        }
      }
    }
  });
}

/** Whether a line, drawn on, passes through the eye. */
function isInLineWith(eye: StagePoint, from: StagePoint, to: StagePoint): boolean {
  const [u, v, w] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const [p, q, r] = [eye[0] - from[0], eye[1] - from[1], eye[2] - from[2]];
  return Math.hypot(v * r - w * q, w * p - u * r, u * q - v * p) < IN_LINE_M * Math.hypot(u, v, w);
}

/** The picture of a point, by similar triangles. */
function inPicture({ distance, eyeHeight, offset }: Viewer, [x, y, z]: StagePoint): readonly [number, number] {
  const shrink = distance / (distance + y);
  return [offset + (x - offset) * shrink, eyeHeight + (z - eyeHeight) * shrink];
}

/** The share of a line over the stage at which it shows as a place of its picture: where it meets the sight line, in the wider of the two views. */
function shareAt(
  { distance, eyeHeight, offset }: Viewer,
  from: StagePoint,
  to: StagePoint,
  [X, Z]: readonly [number, number],
): number | null {
  // A point is on the sight line when its offset from the eye sideways is (X - ex) / D of its depth, and so for its height.
  const off = (point: StagePoint, axis: 0 | 2, eye: number, place: number) =>
    point[axis] - eye - ((place - eye) / distance) * (distance + point[1]);
  const [a, b] = [off(from, 0, offset, X), off(to, 0, offset, X)];
  const [c, d] = [off(from, 2, eyeHeight, Z), off(to, 2, eyeHeight, Z)];
  const [first, second] = Math.abs(a - b) > Math.abs(c - d) ? [a, b] : [c, d];
  return Math.abs(first - second) > 1e-6 ? first / (first - second) : null;
}

function holds({ from, to }: VisibleLine, [X, Z]: readonly [number, number]): boolean {
  const reach = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const detour = Math.hypot(X - from[0], Z - from[1]) + Math.hypot(X - to[0], Z - to[1]) - reach;
  return detour <= ROUNDING * (1 + reach);
}
