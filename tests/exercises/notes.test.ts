import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { HABITS } from "@/lib/habits/all-habits";
import { revealedHabits } from "@/lib/habits/reveal";
import { parseLength } from "@/lib/measure/length";
import { sayPoint } from "@/lib/plan/say-point";
import { SHIPPED } from "./shipped";

/** How the notes name each habit. */
const IN_WORDS: Readonly<Record<string, string>> = {
  "plan-depth": "depth in the plan's proportion",
  "too-shallow": "too little depth",
  "too-deep": "too much depth",
  "from-back-wall": "depth measured from the back wall",
  "full-width": "the plan's offset kept at depth",
  "wrong-side": "the wrong side of the centre line",
  "from-the-jamb": "offsets taken from the edge of the opening",
  "half-scale": "half the size, off the wrong edge of the rule",
  "double-scale": "double the size, off the wrong edge of the rule",
  "square-wall": "a raking wall sent to the CVP",
  "plan-angle": "the plan's angle copied on to the picture",
  "borrowed-vanishing-point": "another wall's vanishing point",
  "flat-floor": "a raked floor drawn flat",
  "even-steps": "treads spaced evenly",
  "behind-instead": "the apron drawn upstage",
  "parallel-top": "a top drawn parallel to its foot",
  "full-height": "full height kept at depth",
  "level-top": "a raking top drawn level",
  "top-to-centre": "a raking top sent to the CVP",
  "even-split": "a drawn wall divided evenly",
};

/** A printed worth is rounded to the inch or to 10 mm; half of either, with room, metres. */
const ROUNDING_M = { "ft-in": 0.5 * 0.0254 + 1e-6, m: 0.005 + 1e-6 } as const;

const WORTH =
  /^At (?<at>[^,]+), the coarsest mark, 1 mm of paper is worth about (?:(?<depth>\S+(?: mm)?) of depth and (?<across>\S+(?: mm)?) across|(?<flat>\S+(?: mm)?) across and in height)\. /;

const CAUTION = "A teaching sketch, not a construction drawing: local codes and licensed practice decide.";

/** The point in the picture of a place, worked out here from the eye: s = D / (D + y), Z = h + (z - h) s. */
function pictureHeight({ viewer }: Exercise, y: number, z: number): number {
  return viewer.eyeHeight + (z - viewer.eyeHeight) * (viewer.distance / (viewer.distance + y));
}

/** What 1 mm of paper is worth at a place, by small steps and not by the engine's formula. */
function worthAt(exercise: Exercise, [, y, z]: readonly [number, number, number]) {
  const { viewer, stage, scaleRatio } = exercise;
  const step = 1e-5;
  const rise = (y > 0 ? stage.rake : 0) * step;
  const perMetre = (pictureHeight(exercise, y + step, z + rise) - pictureHeight(exercise, y, z)) / step;
  const millimetre = scaleRatio / 1000;
  return { across: (millimetre * (viewer.distance + y)) / viewer.distance, depth: millimetre / Math.abs(perMetre) };
}

function metres(written: string | undefined): number {
  const parsed = parseLength(written ?? "", "m");
  if (!parsed.ok) throw new Error(`"${written}" is no length.`);
  return parsed.metres;
}

describe.each(SHIPPED)("the notes of $file", ({ exercise }) => {
  it("say what a millimetre is worth at the coarsest mark", () => {
    const { at, depth, across, flat } = WORTH.exec(exercise.notes)?.groups ?? {};
    const points = exercisePoints(exercise);
    const asked = exercise.task.marks.flatMap((name) => points.get(name) ?? []);
    const onFloor = asked.filter((point) => point.onFloor);
    const worths = (onFloor.length > 0 ? onFloor : asked).map((point) => ({ point, ...worthAt(exercise, point.at) }));
    const key = onFloor.length > 0 ? "depth" : "across";
    const most = Math.max(...worths.map((worth) => worth[key]));
    const named = worths.find(({ point }) => sayPoint(point) === at);
    expect(named, `no asked mark is called ${at}`).toBeDefined();
    expect(named?.[key]).toBeCloseTo(most, 4);
    const rounding = ROUNDING_M[exercise.units];
    expect(Math.abs(metres(onFloor.length > 0 ? across : flat) - (named?.across ?? 0))).toBeLessThan(rounding);
    if (onFloor.length > 0) expect(Math.abs(metres(depth) - (named?.depth ?? 0))).toBeLessThan(rounding);
  });

  it("list the habits it can show, and no others", () => {
    const words = revealedHabits(exercise).map((id) => IN_WORDS[id]);
    expect(exercise.notes.endsWith(`Can show: ${words.join("; ")}.`), `Can show: ${words.join("; ")}.`).toBe(true);
  });

  it("carry the usual caution where people could be hurt", () => {
    const { plan, stage } = exercise;
    const openings = plan.walls.some((wall) => wall.openings.length > 0);
    const dangerous = openings || plan.platforms.length > 0 || plan.stairs.length > 0 || stage.rake > 0;
    expect(exercise.notes.includes(CAUTION)).toBe(dangerous);
  });
});

it("every habit has words in the notes", () => {
  expect(Object.keys(IN_WORDS).sort()).toEqual(HABITS.map(({ id }) => id).sort());
});
