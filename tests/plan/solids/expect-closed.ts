import { expect } from "vitest";
import type { Face, Solid } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";

/** Points nearer than this are one point, metres. */
const SAME_POINT_M = 1e-7;

/** The body a face belongs to: its id without `.top`, `.bottom.upstage`, `.side.3`. */
export function bodyOf(face: Face): string {
  return face.id.replace(/\.(top|bottom|bottom\.(up|down)stage|(side|end)\.\d+)$/, "");
}

/**
 * Expects each body of a solid to be closed and turned outside out: its faces are flat, every edge of one runs back along
 * another of the same body, and the volume its outlines enclose (the divergence theorem) is positive.
 */
export function expectClosed(solid: Solid) {
  const bodies = new Map<string, readonly Face[]>();
  for (const face of solid.faces) bodies.set(bodyOf(face), [...(bodies.get(bodyOf(face)) ?? []), face]);
  for (const [body, faces] of bodies) {
    for (const face of faces) expect(outOfFlat(face.outline), `${face.id} is flat`).toBeLessThan(1e-9);
    const edges = faces.flatMap(({ outline }) => splitAtCorners(outline, faces));
    const count = new Map<string, number>();
    for (const [a, b] of edges) count.set(`${key(a)}>${key(b)}`, (count.get(`${key(a)}>${key(b)}`) ?? 0) + 1);
    for (const [edge, times] of count) {
      const [a, b] = edge.split(">");
      expect(times, `${body} ${edge}`).toBe(1);
      expect(count.get(`${b}>${a}`), `${body} ${edge} runs back`).toBe(1);
    }
    expect(volume(faces), `${body} holds something`).toBeGreaterThan(0);
  }
}

/** Volume a body's outlines enclose, positive when they run counter-clockwise seen from outside, cubic metres. */
export function volume(faces: readonly Face[]): number {
  const [ox, oy, oz] = faces[0]?.outline[0] ?? [0, 0, 0];
  let six = 0;
  for (const { outline } of faces)
    for (let i = 1; i + 1 < outline.length; i++) {
      const [a, b, c] = [outline[0], outline[i], outline[i + 1]].map((p) => {
        const [x, y, z] = p as StagePoint;
        return [x - ox, y - oy, z - oz] as const;
      });
      if (a && b && c)
        six +=
          a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
  return six / 6;
}

function key(point: StagePoint): string {
  return point.map((length) => Math.round(length / SAME_POINT_M)).join(",");
}

/** Greatest distance of a corner from the plane through the outline (Newell's normal), metres. */
function outOfFlat(outline: readonly StagePoint[]): number {
  const normal = [0, 0, 0] as [number, number, number];
  outline.forEach((p, i) => {
    const q = outline[(i + 1) % outline.length] as StagePoint;
    normal[0] += (p[1] - q[1]) * (p[2] + q[2]);
    normal[1] += (p[2] - q[2]) * (p[0] + q[0]);
    normal[2] += (p[0] - q[0]) * (p[1] + q[1]);
  });
  const size = Math.hypot(...normal);
  const first = outline[0] as StagePoint;
  return Math.max(
    ...outline.map((p) =>
      Math.abs((normal[0] * (p[0] - first[0]) + normal[1] * (p[1] - first[1]) + normal[2] * (p[2] - first[2])) / size),
    ),
  );
}

/** The edges of an outline, cut at corners of the body's other faces that lie on them. */
function splitAtCorners(outline: readonly StagePoint[], faces: readonly Face[]): [StagePoint, StagePoint][] {
  const corners = new Map(faces.flatMap((face) => face.outline.map((p) => [key(p), p] as const)));
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as StagePoint;
    const along = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
    const length = Math.hypot(...along);
    const between = [...corners.values()]
      .map((p) => ({
        p,
        at: (along[0] * (p[0] - a[0]) + along[1] * (p[1] - a[1]) + along[2] * (p[2] - a[2])) / length,
      }))
      .filter(({ p, at }) => {
        const foot = a.map((start, k) => start + ((along[k] as number) * at) / length);
        const off = Math.hypot(...foot.map((value, k) => value - (p[k] as number)));
        return at > SAME_POINT_M && at < length - SAME_POINT_M && off < SAME_POINT_M;
      })
      .sort((one, other) => one.at - other.at)
      .map(({ p }) => p);
    const row = [a, ...between, b];
    return row.slice(0, -1).map((p, k) => [p, row[k + 1] as StagePoint] as [StagePoint, StagePoint]);
  });
}
