import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { freezeExercise, thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { guestOf, makeGuestToken } from "@/lib/classroom/live/guest-token";
import { MOST_GUESSES_A_SECOND, makePace } from "@/lib/classroom/live/pace";
import { placeStep } from "@/lib/classroom/live/place-step";
import { GuessRequest, MOST_GUESS_BYTES } from "@/lib/classroom/live/requests";
import { startDemonstrationDrawing } from "@/lib/drawing/demonstration/draw-demonstration";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { findVariant } from "@/lib/generator/find-variant";
import { liveExercise } from "./live-exercise";

const FOLDER = join(process.cwd(), "exercises");

describe("guests", () => {
  it("are known by a token that only this server makes", () => {
    const token = makeGuestToken("secret");
    const person = guestOf(token, "secret");
    expect(person).toMatch(/^guest-/);
    expect(guestOf(token, "secret")).toBe(person);
    expect(person).not.toContain(token.split(".")[0]);
    expect(guestOf(makeGuestToken("secret"), "secret")).not.toBe(person);
    for (const bad of [undefined, "", ".", "x.y", token.slice(0, -1), `x${token}`])
      expect(guestOf(bad, "secret")).toBeNull();
    expect(guestOf(token, "another secret")).toBeNull();
  });

  it("send no faster than anybody sets marks down", () => {
    const pace = makePace();
    const taken = Array.from({ length: MOST_GUESSES_A_SECOND + 3 }, () => pace.take("a", 1000));
    expect(taken.filter(Boolean)).toHaveLength(MOST_GUESSES_A_SECOND);
    expect(pace.take("b", 1000)).toBe(true);
    expect(pace.take("a", 1999)).toBe(false);
    expect(pace.take("a", 2001)).toBe(true);
  });

  it("send places and nothing else", () => {
    const guess = { voteId: "v", round: 1, at: [1, 2] };
    expect(GuessRequest.safeParse(guess).success).toBe(true);
    for (const bad of [
      { ...guess, person: "wim" },
      { ...guess, at: [1] },
      { ...guess, at: [1, 2, 3] },
      { ...guess, at: [1, null] },
      { ...guess, at: [1e9, 0] },
      { ...guess, round: 0 },
      { ...guess, round: 1.5 },
    ])
      expect(GuessRequest.safeParse(bad).success).toBe(false);
    expect(JSON.stringify(guess).length).toBeLessThan(MOST_GUESS_BYTES);
  });
});

describe("the exercise of a vote", () => {
  it("is kept to the last digit, whatever the course or the generator has", async () => {
    const course = (await loadExercises(FOLDER)).flatMap((entry) => (entry.ok ? [entry.exercise] : []));
    const made = ["walls-2-48213", "levels-3-7", "reading-2-11"].flatMap((id) => findVariant(id)?.exercise ?? []);
    expect(course.length).toBeGreaterThan(10);
    expect(made).toHaveLength(3);
    for (const exercise of [...course, ...made]) expect(thawExercise(freezeExercise(exercise))).toEqual(exercise);
  });

  it("shows what was asked before at its true place, and of the point only where it is read", async () => {
    const course = (await loadExercises(FOLDER)).flatMap((entry) => (entry.ok ? [entry.exercise] : []));
    for (const exercise of course) {
      const [first = "", second] = exercise.task.marks;
      const step = placeStep(exercise, second ?? first);
      if (!step) throw new Error(`${exercise.id} asks for points that are seen.`);
      const reading = exercise.task.kind === "picture-to-plan";
      expect(step.shown.placed).toEqual([...exercise.task.given, ...(second ? [first] : [])]);
      expect(step.shown.lit[reading ? "plan" : "picture"]).toBeNull();
      expect(step.shown.lit[reading ? "picture" : "plan"]).not.toBeNull();
      expect(step.shown.placed).not.toContain(step.point);
    }
    expect(placeStep(course[0] as (typeof course)[number], "no such point")).toBeNull();
  });

  it("has no line of the drawing end at the point that is asked", () => {
    const exercise = liveExercise();
    const layout = { scaleRatio: exercise.scaleRatio, window: [-10, -2, 10, 8] as const };
    const draw = startDemonstrationDrawing(exercise, { picture: layout, plan: layout });
    const nearest = (name: string) => {
      const step = placeStep(exercise, name);
      const truth = exercisePoints(exercise).get(name)?.picture;
      if (!step || !truth) throw new Error(`${name} is asked and seen.`);
      const { picture } = draw(step);
      expect(picture.lit).toBeNull();
      const ends = [...picture.sheet, ...picture.set, ...picture.construction].flatMap((item) =>
        item.kind === "stroke" ? item.points : [],
      );
      return Math.min(...ends.map(([X, Z]) => Math.hypot(X - truth[0], Z - truth[1])));
    };
    // A hand's breadth on the stage: C stands clear of everything else, and B's top over its foot.
    for (const name of ["B.foot", "C.foot", "B.top"]) expect(nearest(name)).toBeGreaterThan(0.1);
  });
});
