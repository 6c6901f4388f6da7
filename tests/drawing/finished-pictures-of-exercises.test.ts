import { describe, expect, it } from "vitest";
import type { Stroke } from "@/lib/drawing/display-list";
import { drawFinishedPicture } from "@/lib/drawing/draw-finished-picture";
import { type Exercise, UNITS } from "@/lib/exercise/exercise";
import { apronDrop } from "@/lib/exercise/inside-frame";
import { makeUnit, PATIENCE_MS } from "../generator/made";
import { loadFixture } from "./fixtures/load-fixture";

describe("finished pictures of exercises", () => {
  function expectSound(name: string, exercise: Exercise) {
    const { stage, viewer } = exercise;
    const list = drawFinishedPicture(exercise);
    const low = apronDrop(stage, viewer);
    for (const stroke of list.filter((item): item is Stroke => item.kind === "stroke")) {
      expect(stroke.points.length, `${name} ${stroke.id}`).toBeGreaterThan(1);
      const isFree = /\.(picture|blank|stage\.apron)/.test(stroke.id);
      for (const [X, Z] of stroke.points) {
        expect(Number.isFinite(X) && Number.isFinite(Z), `${name} ${stroke.id}`).toBe(true);
        if (isFree || Z < 0) continue;
        expect(Math.abs(X), `${name} ${stroke.id}`).toBeLessThan(stage.opening.width / 2 + 1e-6);
        expect(Z, `${name} ${stroke.id}`).toBeLessThan(stage.opening.height + 1e-6);
      }
      expect(Math.min(...stroke.points.map(([, Z]) => Z)), `${name} ${stroke.id}`).toBeGreaterThan(low - 1);
    }
    expect(new Set(list.map(({ id }) => id)).size, `${name}: ids`).toBe(list.length);
  }

  for (const name of ["tide-mill", "rope-walk"] as const)
    it(`are finite and inside the frame: ${name}`, () => expectSound(name, loadFixture(name)));

  for (const unit of UNITS)
    it(
      `are finite and inside the frame: generated ${unit}`,
      () => {
        for (const { name, exercise } of makeUnit(unit)) expectSound(name, exercise);
      },
      PATIENCE_MS,
    );
});
