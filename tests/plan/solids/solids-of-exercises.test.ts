import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { UNITS } from "@/lib/exercise/exercise";
import { heightOver, planeOf } from "@/lib/geometry/plane";
import { listEdges } from "@/lib/plan/list-edges";
import { namePoints } from "@/lib/plan/name-points";
import type { NamedPoints } from "@/lib/plan/named-point";
import type { Solid } from "@/lib/plan/solids/solid";
import { solidsOfPlan } from "@/lib/plan/solids/solids-of-plan";
import type { StagePoint } from "@/lib/stage/frame";
import { loadFixture } from "../../drawing/fixtures/load-fixture";
import { makeUnit, PATIENCE_MS } from "../../generator/made";

/** Points tried along an edge. */
const TRIES = 23;
const ON_LINE_M = 1e-6;

/** How far a point lies from the nearest line of a solid, metres. */
function gapTo({ lines }: Solid, p: StagePoint): number {
  return Math.min(
    ...lines.map(({ from, to }) => {
      const d = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
      const square = d[0] ** 2 + d[1] ** 2 + d[2] ** 2;
      const dot = (p[0] - from[0]) * d[0] + (p[1] - from[1]) * d[1] + (p[2] - from[2]) * d[2];
      const t = Math.min(1, Math.max(0, dot / square));
      return Math.hypot(from[0] + d[0] * t - p[0], from[1] + d[1] * t - p[1], from[2] + d[2] * t - p[2]);
    }),
  );
}

/** Stretches of foot lines and arches that are open: a doorway has no threshold, an arch no square head. */
function isOpen({ plan }: Pick<Exercise, "plan">, points: NamedPoints, p: StagePoint): boolean {
  return plan.walls.some((wall) =>
    wall.openings.some((opening) => {
      const [start, end] = ["start", "end"].map((side) => points.get(`${wall.id}.${opening.id}.${side}.sill`)?.at);
      if (!start || !end || !(opening.sill === 0 || opening.kind === "arch")) return false;
      const along = Math.hypot(end[0] - start[0], end[1] - start[1]);
      const over = Math.hypot(p[0] - start[0], p[1] - start[1]) + Math.hypot(p[0] - end[0], p[1] - end[1]) - along;
      const isFoot = Math.abs(p[2] - (start[2] + end[2]) / 2) < 0.2;
      return over < 1e-6 && (isFoot || opening.kind === "arch");
    }),
  );
}

function expectPlanar(name: string, { faces, lines }: Solid) {
  for (const face of faces) {
    const plane = planeOf(face.outline);
    expect(plane, `${name} ${face.id}`).not.toBeNull();
    for (const point of [face.outline, ...face.holes].flat())
      expect(Math.abs(plane ? heightOver(plane, point) : 1), `${name} ${face.id}`).toBeLessThan(1e-9);
  }
  expect(new Set(faces.map(({ id }) => id)).size, `${name}: face ids`).toBe(faces.length);
  expect(new Set(lines.map(({ id }) => id)).size, `${name}: line ids`).toBe(lines.length);
  for (const { id, faces: of, from, to } of lines) {
    expect([1, 2], `${name} ${id}`).toContain(of.length);
    for (const place of of) {
      const plane = planeOf(faces[place]?.outline ?? []);
      for (const p of [from, to])
        expect(Math.abs(plane ? heightOver(plane, p) : 1), `${name} ${id}`).toBeLessThan(1e-6);
    }
  }
}

function expectEdges(name: string, exercise: Exercise, solid: Solid) {
  const points = namePoints(exercise.plan, exercise.stage);
  for (const { id, kind, from, to } of listEdges(exercise.plan, points)) {
    // A column is drawn by its outline, furniture from masses within its box.
    if (kind === "column" || kind === "furniture") continue;
    const [a, b] = [points.get(from)?.at, points.get(to)?.at];
    if (!a || !b || Math.sign(a[1]) * Math.sign(b[1]) < 0) continue;
    for (let i = 0; i <= TRIES; i++) {
      const at = (k: 0 | 1 | 2) => a[k] + ((b[k] - a[k]) * i) / TRIES;
      const p: StagePoint = [at(0), at(1), at(2)];
      if (!isOpen(exercise, points, p)) expect(gapTo(solid, p), `${name} ${id}`).toBeLessThan(ON_LINE_M);
    }
  }
}

describe("the solids of exercises", () => {
  for (const name of ["tide-mill", "rope-walk"] as const)
    it(`are flat and have every edge of the set: ${name}`, () => {
      const exercise = loadFixture(name);
      const solid = solidsOfPlan(exercise.plan, exercise.stage);
      expectPlanar(name, solid);
      expectEdges(name, exercise, solid);
    });

  for (const unit of UNITS)
    it(
      `are flat and have every edge of the set: generated ${unit}`,
      () => {
        for (const { name, exercise } of makeUnit(unit)) {
          const solid = solidsOfPlan(exercise.plan, exercise.stage);
          expectPlanar(name, solid);
          expectEdges(name, exercise, solid);
        }
      },
      PATIENCE_MS,
    );
});
