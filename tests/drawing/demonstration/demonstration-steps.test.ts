import { describe, expect, it } from "vitest";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { readBack } from "@/lib/drawing/demonstration/read-back";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { HABITS } from "@/lib/habits/all-habits";
import { revealedHabits } from "@/lib/habits/reveal";
import { SHIPPED } from "../../exercises/shipped";
import { readTideOffice } from "../../fixtures/tide-office";

/** A construction is exact but for the last digits of a reckoning, metres. */
const EXACT_M = 1e-9;

const COURSE = SHIPPED.map(({ exercise }) => ({ id: exercise.id, exercise }));

describe.each(COURSE)("the demonstration of $id", ({ exercise }) => {
  const steps = demonstrationSteps(exercise);
  const points = exercisePoints(exercise);
  const reading = exercise.task.kind === "picture-to-plan";

  it("numbers its steps from 1 and says something at each", () => {
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    for (const { number, title, sentence, part, note } of steps) {
      for (const words of [title, sentence, part, note.ask])
        expect(words, `step ${number}`).toMatch(/^(?!.*(undefined|NaN|Infinity|null)).*\S/);
      expect(sentence, `step ${number}`).toMatch(/^[A-Z0-9].*[.?]$/);
      expect(sentence.length, `step ${number}`).toBeLessThanOrEqual(240);
    }
  });

  it("begins with the empty sheet, part by part, and ends with everything finished", () => {
    const empty = steps.filter(({ kind }) => kind === "sheet");
    expect(steps.slice(0, empty.length)).toEqual(empty);
    expect(empty.at(-1)?.shown.parts).toEqual(["proscenium", "rule", "horizon", "cvp", "stage"]);
    for (const [i, step] of empty.slice(1).entries())
      expect(step.shown.parts.length - (empty[i]?.shown.parts.length ?? 0)).toBeLessThanOrEqual(1);
    expect(steps.at(-1)?.shown.finished).toBe(true);
    expect(steps.filter(({ shown }) => shown.finished)).toHaveLength(1);
  });

  it("comes to every mark in the exercise's order, with what was set down before and no more", () => {
    expect(steps.filter(({ kind }) => kind === "place").map(({ point }) => point)).toEqual(exercise.task.marks);
    expect(steps.filter(({ kind }) => kind === "set-down").map(({ point }) => point)).toEqual(exercise.task.marks);
    for (const step of steps) {
      if (step.point === null) continue;
      const at = exercise.task.marks.indexOf(step.point);
      const before = [...exercise.task.given, ...exercise.task.marks.slice(0, at)];
      expect(step.shown.placed).toEqual(step.kind === "set-down" ? [...before, step.point] : before);
    }
  });

  it("draws the lines of a mark one at a time and ends at its true place", () => {
    for (const name of exercise.task.marks) {
      const own = steps.filter(({ point }) => point === name);
      const lines = own.filter(({ kind }) => kind === "line");
      expect(lines.length, name).toBeGreaterThan(0);
      expect(lines.map(({ shown }) => shown.drawn)).toEqual(lines.map((_, i) => i + 1));
      for (const { shown, sentence } of lines) expect(shown.lines[shown.drawn - 1]?.say).toBe(sentence);
      const point = points.get(name);
      const last = own.at(-1)?.shown.lines.at(-1);
      if (!point || !last || last.do === "line") throw new Error(`${name} is not found by its last line`);
      const [got, truth] = reading
        ? [readBack(exercise, point)?.place ?? [Number.NaN, Number.NaN], point.at]
        : [last.at, point.picture ?? [Number.NaN, Number.NaN]];
      expect(Math.hypot(got[0] - truth[0], got[1] - truth[1]), name).toBeLessThan(EXACT_M);
    }
  });

  it("gives the true place away nowhere before it is set down", () => {
    for (const { point, kind, shown } of steps)
      if (kind === "place" || kind === "line") {
        expect(shown.placed).not.toContain(point);
        expect(shown.fresh).toBeNull();
        expect(reading ? shown.lit.plan : shown.lit.picture).toBeNull();
      }
  });

  it("tells the teacher what paper is worth at a mark, and only of ideas that this exercise can reveal", () => {
    const names = revealedHabits(exercise).map((id) => HABITS.find((habit) => habit.id === id)?.name);
    for (const { point, note } of steps) {
      if (point === null) continue;
      expect(note.worth).toMatch(/^1 mm of paper here is .+ on the stage\. A hand is allowed \d\.\d mm\.$/);
      for (const { name, where, say } of note.watch) {
        expect(names).toContain(name);
        expect(where).toMatch(/\d mm (high|low|left|right)/);
        expect(say.length).toBeGreaterThan(20);
      }
    }
  });
});

describe("a demonstration's words", () => {
  it("says of the format's own example where B stands, in its plan's figures", () => {
    const [place] = demonstrationSteps(readTideOffice()).filter(({ point }) => point === "B.foot");
    expect(place?.sentence).toBe("7'-0\" stage right of the centre line, 14'-0\" upstage of the plaster line.");
    expect(place?.title).toBe("The foot of B");
  });

  it("warns of depth in the plan's proportion, and says how far off it would put the mark", () => {
    const exercise = SHIPPED.find((one) => one.exercise.id === "points-on-the-floor")?.exercise;
    if (!exercise) throw new Error("The course has points on the floor.");
    const { stage, viewer, plan, scaleRatio } = exercise;
    const warned = demonstrationSteps(exercise).flatMap(({ kind, point, note }) => {
      const watch = note.watch.find(({ name }) => name === "Depth in plan proportion");
      return kind === "place" && point && watch ? [{ corner: point.split(".")[0] ?? "", watch }] : [];
    });
    expect(warned.length).toBeGreaterThan(1);
    for (const { corner, watch } of warned) {
      const [x, y] = plan.corners.get(corner) ?? [Number.NaN, Number.NaN];
      // Similar triangles again: the floor is drawn up to h depth / (D + depth), and the idea takes y / depth of that.
      const up = (depth: number) => (viewer.eyeHeight * depth) / (viewer.distance + depth);
      const wrong = (up(stage.depth) * y) / stage.depth;
      const lowMm = ((up(y) - wrong) * 1000) / scaleRatio;
      const acrossMm = (Math.abs(x) * (up(y) - wrong) * 1000) / viewer.eyeHeight / scaleRatio;
      expect(watch.where).toContain(`${lowMm.toFixed(1)} mm low`);
      if (acrossMm > 0.3) expect(watch.where).toContain(`${acrossMm.toFixed(1)} mm ${x < 0 ? "left" : "right"}`);
    }
  });

  it("has a step for what is given, where something is", () => {
    const given = readTideOffice(["/task", { kind: "plan-to-picture", marks: ["B.foot"], given: ["A.foot", "A.top"] }]);
    const titles = demonstrationSteps(given).map(({ title }) => title);
    expect(titles.filter((title) => title === "What is given")).toHaveLength(1);
    expect(demonstrationSteps(readTideOffice()).map(({ title }) => title)).not.toContain("What is given");
  });

  it("says a rake and an eye off the centre line", () => {
    const changed = readTideOffice(["/stage/rake", "1:20"], ["/viewer/offset", -4]);
    const all = demonstrationSteps(changed).map(({ sentence }) => sentence);
    expect(all.some((sentence) => sentence.includes("1 in 20"))).toBe(true);
    expect(all.some((sentence) => sentence.includes("4'-0\" stage right of the centre line"))).toBe(true);
  });
});
