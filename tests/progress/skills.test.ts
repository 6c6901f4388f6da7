import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { UNITS } from "@/lib/exercise/exercise";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { HABITS } from "@/lib/habits/all-habits";
import { habitName } from "@/lib/habits/habit-name";
import { makeRecord } from "@/lib/progress/make-record";
import { nameInside, skillOf } from "@/lib/progress/skill-of";
import { SKILLS } from "@/lib/progress/skills";
import { allTrue, gradeAt } from "./plain-stage";
import { day } from "./records";

const exercises = (await loadExercises(join(process.cwd(), "exercises"))).flatMap((entry) =>
  entry.ok ? [entry.exercise] : [],
);

describe("SKILLS", () => {
  it("names each once, in the order of the units, in a sentence", () => {
    expect(new Set(SKILLS.map(({ id }) => id)).size).toBe(SKILLS.length);
    const units = SKILLS.map(({ unit }) => UNITS.indexOf(unit));
    expect(units).toEqual([...units].sort((a, b) => a - b));
    for (const { meaning } of SKILLS) expect(meaning).toMatch(/^[A-Z].*\.$/);
  });

  it.each(exercises.map((exercise) => [exercise.id, exercise] as const))(
    "%s lists skills of the course, and each is judged by one of its marks",
    (_id, exercise) => {
      const ids = SKILLS.map(({ id }) => id);
      expect(exercise.skills.filter((id) => !ids.includes(id))).toEqual([]);
      const record = makeRecord(exercise, gradeAt(exercise, allTrue(exercise)), day(0));
      const evidence = record.marks.flatMap((mark) => mark.evidence);
      expect([...new Set(evidence.map(({ skill }) => skill))].sort()).toEqual([...exercise.skills].sort());
      expect(evidence.every(({ right }) => right)).toBe(true);
    },
  );
});

describe("skillOf", () => {
  it("finds a skill of the course, and makes words of a teacher's own", () => {
    expect(skillOf("height").name).toBe("Heights");
    expect(skillOf("spike-marks")).toMatchObject({ id: "spike-marks", name: "Spike marks" });
    expect(nameInside(skillOf("ray-to-cvp"))).toBe("rays to the CVP");
  });
});

describe("habitName", () => {
  it("names every habit by more than its id", () => {
    for (const { id } of HABITS) expect(habitName(id).toLowerCase(), id).not.toBe(id.replaceAll("-", " "));
  });

  it.each([
    ["some-new-idea", "Some new idea"],
    ["constructor", "Constructor"],
  ])("makes words of %s", (id, name) => {
    expect(habitName(id)).toBe(name);
  });
});
