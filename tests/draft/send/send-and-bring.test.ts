import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { placeBrought } from "@/lib/draft/bring/place/place-brought";
import { readBrought } from "@/lib/draft/bring/read-brought";
import { draftFromExercise } from "@/lib/draft/new-draft";
import { sendPlan } from "@/lib/draft/send/send-plan";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";
import { BLANK_PLAN } from "@/lib/generator/blank-plan";
import { doorHinges } from "@/lib/plan/door-hinges";
import type { Plan, Wall } from "@/lib/plan/plan";
import { type WallLine, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
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

describe.each(COURSE.map((exercise) => [exercise.id, exercise] as const))("the walls of %s", (_, exercise) => {
  const back = comesBack(exercise);
  const { plan } = exercise;
  const ends = ({ from, to }: Wall) => [plan.corners.get(from), plan.corners.get(to)] as const;

  it.each(plan.walls.map((wall) => [wall.id, wall] as const))("%s comes back, with its openings", (__, wall) => {
    const [from, to] = ends(wall);
    const again = back.walls.find((each) => near(back, each.from, from) && near(back, each.to, to));
    expect(again).toBeDefined();
    expect(again?.thickness).toBeCloseTo(wall.thickness, 6);
    expect(again?.onstage).toBe(wall.onstage);
    // A plan draws an arch and a passage alike, but for a word.
    const drawn = ({ openings }: Wall) =>
      openings
        .map(({ kind, at, width, depth, leaves }) => ({
          kind: kind === "arch" ? "passage" : kind,
          at,
          width,
          depth,
          leaves,
        }))
        .toSorted((a, b) => a.at - b.at);
    const [was, is] = [drawn(wall), again ? drawn(again) : []];
    expect(is.map(({ kind, leaves }) => [kind, leaves])).toEqual(was.map(({ kind, leaves }) => [kind, leaves]));
    for (const [i, opening] of was.entries()) {
      expect(is[i]?.at).toBeCloseTo(opening.at, 6);
      expect(is[i]?.width).toBeCloseTo(opening.width, 6);
      expect(is[i]?.depth ?? 0).toBeCloseTo(opening.depth ?? 0, 6);
    }
    // Leaves hang where they hung: a door's own hinges, whichever jamb is named or left to be the upstage one.
    for (const door of wall.openings.filter(({ kind }) => kind === "door")) {
      const hung = again?.openings.find(({ at }) => Math.abs(at - door.at) < NEAR_M);
      const line = wallLine(plan, wall) as WallLine;
      expect(hung && doorHinges(line, hung)).toEqual(doorHinges(line, door));
      expect(hung?.swing).toBe(door.swing);
    }
  });

  it("are all there is", () => expect(back.walls).toHaveLength(plan.walls.length));
});
