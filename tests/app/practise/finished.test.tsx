import { readFileSync } from "node:fs";
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { compareLists } from "@/app/_sheet/compare-lists";
import { Finished } from "@/app/_sheet/finished";
import { setRoom } from "@/app/_sheet/set-room";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";

vi.mock("@/app/_sheet/compare-lists", async (original) => {
  const real = await original<typeof import("@/app/_sheet/compare-lists")>();
  return { compareLists: vi.fn(real.compareLists) };
});

function exercise(change: Record<string, unknown> = {}): Exercise {
  const file = JSON.parse(readFileSync("tests/fixtures/tide-office.json", "utf8"));
  const reading = readExercise(JSON.stringify({ ...file, ...change }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

/** The grade of two corners set down a little off. */
function gradeOf(sheet: Exercise): Grade {
  const marks = sheet.task.marks.map((point, i) => ({ point, at: [i - 1, 0.4] as const }));
  return gradeMarks(sheet, {
    format: "plasterline.marks/1",
    exercise: sheet.id,
    version: sheet.version,
    scale: sheet.scale,
    marks,
  });
}

function show(sheet: Exercise) {
  render(<Finished paper={setRoom(sheet)} grade={gradeOf(sheet)} />);
}

beforeEach(() => {
  vi.stubGlobal("matchMedia", () => ({ matches: false }));
});

describe("the end of a result", () => {
  it("says that it is drawing, then shows the student's drawing and the finished picture", async () => {
    show(exercise({ task: { kind: "plan-to-picture", marks: ["A.foot", "B.foot"] } }));
    expect(screen.getByRole("status")).toHaveTextContent("Drawing it...");
    const end = within(screen.getByRole("region", { name: "The set, finished" }));
    expect(await end.findByRole("img", { name: "Your drawing." })).toBeVisible();
    expect(end.getByRole("img", { name: "The finished picture." })).toBeVisible();
    expect(end.queryByRole("status")).toBeNull();
    expect(end.getByText(/^A teaching sketch is not a construction drawing/)).toBeVisible();
  });

  it("shows the finished plan beside the plan as read", async () => {
    show(exercise({ task: { kind: "picture-to-plan", marks: ["A.foot", "B.foot"] } }));
    const end = within(screen.getByRole("region", { name: "The plan as it was" }));
    const finished = await end.findByRole("img", { name: "The finished plan." });
    expect(finished.querySelector("[data-stroke='plan.wall.W2.1.face']")).not.toBeNull();
    const own = end.getByRole("img", { name: "The plan as you read it." });
    expect(own.querySelector("[data-stroke='own.A.foot~B.foot']")).not.toBeNull();
    expect(own.querySelector("[data-stroke^='plan.wall']")).toBeNull();
  });

  it("says in plain words that it could not be drawn, and tries again", async () => {
    vi.mocked(compareLists).mockImplementationOnce(() => {
      throw new Error("Out of pencils.");
    });
    show(exercise({ task: { kind: "plan-to-picture", marks: ["A.foot", "B.foot"] } }));
    expect(await screen.findByText(/^The finished picture could not be drawn/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Try again" }));
    expect(await screen.findByRole("slider")).toBeVisible();
  });

  it("gives no caution for a set that nobody can fall from or through", async () => {
    const { plan } = JSON.parse(readFileSync("tests/fixtures/tide-office.json", "utf8"));
    const walls = plan.walls.map((wall: object) => ({ ...wall, openings: [] }));
    show(
      exercise({
        plan: { corners: plan.corners, walls },
        task: { kind: "plan-to-picture", marks: ["A.foot", "B.foot"] },
      }),
    );
    await screen.findByRole("slider");
    expect(screen.queryByText(/^A teaching sketch/)).toBeNull();
  });
});

describe("the two drawings", () => {
  const grade = (sheet: Exercise) => compareLists(setRoom(sheet), gradeOf(sheet));

  it("both lie within the bounds they are shown in", () => {
    for (const kind of ["plan-to-picture", "picture-to-plan"]) {
      const { own, finished, bounds } = grade(exercise({ task: { kind, marks: ["A.foot", "B.foot"] } }));
      for (const item of [...own, ...finished]) {
        for (const [x, y] of item.kind === "stroke" ? item.points : [item.at]) {
          expect(x).toBeGreaterThan(bounds.left);
          expect(x).toBeLessThan(bounds.right);
          expect(y).toBeGreaterThan(bounds.bottom);
          expect(y).toBeLessThan(bounds.top);
        }
      }
    }
  });

  it("stand in the same proscenium, drawn by the same hand, and the finished one has the set besides", () => {
    const { own, finished } = grade(exercise({ task: { kind: "plan-to-picture", marks: ["A.foot", "B.foot"] } }));
    const frame = own.filter(({ id }) => id.startsWith("finished.") && id.includes("proscenium"));
    expect(frame.length).toBeGreaterThan(3);
    for (const stroke of frame) expect(finished).toContainEqual(stroke);
    expect(finished.length).toBeGreaterThan(own.length);
  });

  it("draw the student's lines through the student's marks, and no line twice", () => {
    const { own } = grade(exercise({ task: { kind: "plan-to-picture", marks: ["A.foot", "B.foot"] } }));
    const line = own.find(({ id }) => id === "own.A.foot~B.foot");
    expect(line?.kind === "stroke" && line.points).toEqual([
      [-1, 0.4],
      [0, 0.4],
    ]);
    expect(new Set(own.map(({ id }) => id)).size).toBe(own.length);
  });
});
