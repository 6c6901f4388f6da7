import { readFileSync } from "node:fs";
import { render, screen } from "@testing-library/react";
import { expect, it } from "vitest";
import { PlanDrawings } from "@/app/class/plan-drawings";
import { readExercise } from "@/lib/exercise/read-exercise";

type File = {
  readonly viewer: object;
  readonly stage: object;
  readonly plan: { readonly corners: object; readonly walls: readonly object[] };
};
const FILE = JSON.parse(readFileSync("exercises/walls/01-square-and-parallel.json", "utf8")) as File;

function exerciseOf(file: object) {
  const reading = readExercise(JSON.stringify(file));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

it.each([
  ["a set", FILE],
  ["an empty stage", { ...FILE, plan: { corners: {}, walls: [] }, task: { kind: "plan-to-picture" } }],
  [
    "a wall from a corner that is not there",
    {
      ...FILE,
      plan: { ...FILE.plan, walls: [...FILE.plan.walls, { id: "W99", from: "NOT", to: "THERE", height: 8 }] },
    },
  ],
  ["an eye inside the set", { ...FILE, viewer: { distance: 0.001, eyeHeight: 8 } }],
  ["corners behind the eye", { ...FILE, plan: { ...FILE.plan, corners: { ...FILE.plan.corners, Z: [0, -200] } } }],
  ["a stage without depth", { ...FILE, stage: { opening: { width: 0, height: 0 }, depth: 0 } }],
])("draws %s, whatever sense it makes", (_, file) => {
  render(<PlanDrawings exercise={exerciseOf(file)} />);
  expect(screen.getAllByRole("img").length).toBeGreaterThan(0);
  expect(document.body.innerHTML).not.toContain("NaN");
});
