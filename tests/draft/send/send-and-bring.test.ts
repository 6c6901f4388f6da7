import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeBrought } from "@/lib/draft/bring/place/place-brought";
import { readBrought } from "@/lib/draft/bring/read-brought";
import { draftFromExercise } from "@/lib/draft/new-draft";
import { sendPlan } from "@/lib/draft/send/send-plan";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";
import { resolveExercise } from "@/lib/exercise/resolve-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { BLANK_PLAN } from "@/lib/plan/blank-plan";
import { doorHinges } from "@/lib/plan/door-hinges";
import type { Opening, Plan, Wall } from "@/lib/plan/plan";
import { type WallLine, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { broughtOf } from "../bring/brought-lines";

/** Metres: walls and openings that were sent come back this near. */
const NEAR_M = 1e-6;

const COURSE: readonly Exercise[] = readdirSync("exercises", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".json"))
  .toSorted()
  .flatMap((name) => {
    const reading = readExercise(readFileSync(`exercises/${name}`, "utf8"));
    return reading.ok && reading.exercise.plan.walls.length > 0 ? [reading.exercise] : [];
  });

function comesBack(exercise: Exercise): Plan {
  const brought = broughtOf(readBrought(new TextEncoder().encode(sendPlan(exercise))));
  const bare = draftFromExercise({ ...exercise, plan: BLANK_PLAN, task: { ...exercise.task, marks: [], given: [] } });
  const placed = placeBrought(
    brought,
    {
      layerUse: { Walls: "walls", Openings: "openings" },
      centreLine: [
        [0, 0],
        [0, 1],
      ],
      plasterLine: [
        [-1, 0],
        [1, 0],
      ],
      scale: { by: "file" },
    },
    bare,
  );
  if (!placed.ok) throw new Error(placed.say);
  expect(placed.leftOut).toEqual([]);
  return placed.draft.exercise.plan;
}

function near(plan: Plan, corner: string, at: PlanPoint | undefined): boolean {
  const [x, y] = plan.corners.get(corner) ?? [Infinity, Infinity];
  return at !== undefined && Math.hypot(x - at[0], y - at[1]) < NEAR_M;
}

function expectBack(plan: Plan, back: Plan): void {
  expect(back.walls).toHaveLength(plan.walls.length);
  for (const wall of plan.walls) {
    const [from, to] = [plan.corners.get(wall.from), plan.corners.get(wall.to)];
    const again = back.walls.find((each) => near(back, each.from, from) && near(back, each.to, to));
    expect(again, wall.id).toBeDefined();
    if (!again) continue;
    expect(again.thickness).toBeCloseTo(wall.thickness, 6);
    expect(again.onstage).toBe(wall.onstage);
    expectOpenings(plan, wall, again);
  }
}

function expectOpenings(plan: Plan, wall: Wall, again: Wall): void {
  // A plan draws an arch and a passage alike, but for a word.
  const inOrder = ({ openings }: Wall) =>
    openings
      .map((opening) => ({ ...opening, kind: opening.kind === "arch" ? ("passage" as const) : opening.kind }))
      .toSorted((a, b) => a.at - b.at);
  const [was, is] = [inOrder(wall), inOrder(again)];
  expect(is.map(({ kind, leaves }) => [kind, leaves])).toEqual(was.map(({ kind, leaves }) => [kind, leaves]));
  const line = wallLine(plan, wall) as WallLine;
  for (const [i, opening] of was.entries()) {
    const found = is[i] as Opening;
    expect(found.at).toBeCloseTo(opening.at, 6);
    expect(found.width).toBeCloseTo(opening.width, 6);
    expect(found.depth ?? 0).toBeCloseTo(opening.depth ?? 0, 6);
    if (opening.kind !== "door") continue;
    // A door's own hinges, whichever jamb is named or left to be the upstage one.
    expect(doorHinges(line, found)).toEqual(doorHinges(line, opening));
    expect(found.swing).toBe(opening.swing);
  }
}

describe("walls and openings sent as DXF and brought again", () => {
  it.each(COURSE.map((exercise) => [exercise.id, exercise] as const))("are those of %s", (_, exercise) =>
    expectBack(exercise.plan, comesBack(exercise)),
  );

  it("are those of any plan that the generator makes", () => {
    const order = fc.record({
      unit: fc.constantFrom("walls" as const, "openings" as const, "sets" as const),
      level: fc.integer({ min: 1, max: 5 }),
      seed: fc.nat(1e6),
    });
    fc.assert(
      fc.property(order, (each) => {
        const reading = resolveExercise(generateExercise(each));
        if (!reading.ok) throw new Error("The generator wrote what cannot be read.");
        expectBack(reading.exercise.plan, comesBack(reading.exercise));
      }),
      { ...seeded, numRuns: Math.ceil(seeded.numRuns / 5) },
    );
  });
});
