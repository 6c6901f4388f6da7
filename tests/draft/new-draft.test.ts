import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { draftFromExercise, newDraft } from "@/lib/draft/new-draft";
import { readDraft } from "@/lib/draft/read-draft";
import { writeDraft } from "@/lib/draft/write-draft";
import { checkSense } from "@/lib/exercise/check-sense";
import { UNITS } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { edited, fiveWalls } from "./edits/five-walls";
import { expectSameDraft } from "./same-draft";

const COURSE = "exercises";
const files = readdirSync(COURSE, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".json"));

/** A draft as it comes back from its file. */
function again(draft: ReturnType<typeof newDraft>) {
  const reading = readDraft(JSON.stringify(writeDraft(draft)));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.draft;
}

describe("newDraft", () => {
  it.each(["ft-in", "m"] as const)("in %s lacks nothing but a plan and its marks", (units) => {
    const draft = newDraft(units);
    expect(checkSense(draft.exercise).map(({ where }) => where)).toEqual(["/plan", "/task/marks"]);
    const walled = applyEdit(draft, {
      edit: "add-walls",
      corners: [
        [-3, 1],
        [-2, 4],
        [2, 4],
        [3, 1],
      ],
      closed: false,
      height: 4,
      thickness: 0,
    });
    expect(walled.ok && checkSense(walled.draft.exercise).filter(({ weight }) => weight === "fault")).toEqual([]);
    expectSameDraft(again(draft), draft);
  });
});

describe("draftFromExercise", () => {
  it.each(files)("%s keeps its author's marks, and is the same from its file", (file) => {
    const reading = readExercise(readFileSync(join(COURSE, file), "utf8"));
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const draft = draftFromExercise(reading.exercise);
    expect(draft.exercise).toBe(reading.exercise);
    expectSameDraft(again(draft), draft);
  });

  it.each(UNITS)("a generated exercise of %s is the same from its file", (unit) => {
    for (const level of [1, 3, 5] as const) {
      const reading = readExercise(JSON.stringify(generateExercise({ unit, level, seed: 7 })));
      if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
      const draft = draftFromExercise(reading.exercise);
      expectSameDraft(again(draft), draft);
    }
  });

  it("goes on working marks out that stand as they would be worked out", () => {
    const worked = fiveWalls();
    expect(draftFromExercise(worked.exercise).marksBy).toBe("order");
    const chosen = edited(worked, { edit: "set-task", task: { marks: ["C.foot"] } });
    expect(draftFromExercise(chosen.exercise).marksBy).toBe("author");
  });
});

describe("readDraft", () => {
  it("knows from the file whether the marks and the eye are the author's", () => {
    const risen = edited(fiveWalls(), { edit: "set-back-wall-rise", rise: 0.75 });
    expect(writeDraft(risen)).toMatchObject({ viewer: { backWallRise: "750 mm", eyeHeight: 2.4 } });
    expect(writeDraft(risen).viewer).not.toHaveProperty("distance");
    expect(writeDraft(risen).task).not.toHaveProperty("marks");
    expect(again(risen)).toMatchObject({ backWallRise: 0.75, marksBy: "order" });
    const chosen = edited(risen, { edit: "set-task", task: { marks: ["C.foot"] } });
    expect(again(chosen)).toMatchObject({ marksBy: "author", exercise: { task: { marks: ["C.foot"] } } });
  });

  it("says where a file is wrong, and how to mend it", () => {
    expect(readDraft("{")).toMatchObject({ ok: false, problems: [{ where: "" }] });
    const written = { ...writeDraft(fiveWalls()), level: 9 };
    expect(readDraft(JSON.stringify(written))).toMatchObject({
      ok: false,
      problems: [{ where: "/level", hint: "write 1 to 5" }],
    });
  });
});
