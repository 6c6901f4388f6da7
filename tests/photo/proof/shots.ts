import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark } from "@/lib/exercise/marks";
import { revealedHabits } from "@/lib/habits/reveal";
import type { Paper } from "@/lib/sheet/paper-size";
import { SHIPPED } from "@/tests/exercises/shipped";
import { type Conditions, conditionsBySeed } from "../photographer/conditions";
import { type Dice, throwDice } from "../photographer/dice";
import { drawnLines } from "../photographer/drawn-lines";
import { goesOnFromOwn, marksByHabit } from "../photographer/marks-by-habit";
import type { Shot } from "../photographer/take-photograph";
import { canBeTold } from "./can-be-told";

export const KINDS = ["flat, clear pencil", "flat, faint pencil", "curled", "hopeless"] as const;
export type Kind = (typeof KINDS)[number];

export type ProofShot = {
  readonly seed: number;
  readonly kind: Kind;
  readonly habit: string | null;
  readonly shot: Shot;
};

/** Of every ten photographs so many are of a kind. */
const OF_TEN: readonly Kind[] = [
  "flat, clear pencil",
  "flat, faint pencil",
  "curled",
  "flat, clear pencil",
  "flat, faint pencil",
  "hopeless",
  "flat, clear pencil",
  "curled",
  "flat, faint pencil",
  "flat, clear pencil",
];
/** A step through the course that comes to every exercise, and the next time round to another kind of photograph of it. */
const STEP = 17;

/** The photograph of a seed: an exercise of the course, drawn by a student with a habit or without one, as it comes. */
export function shotBySeed(seed: number, size: "small" | "full"): ProofShot {
  const dice = throwDice(seed, "shot");
  const round = Math.floor(seed / SHIPPED.length);
  const exercise = (SHIPPED[(seed * STEP + 3 * round) % SHIPPED.length] as (typeof SHIPPED)[number]).exercise;
  const kind = OF_TEN[seed % OF_TEN.length] as Kind;
  const megapixels = size === "small" ? 4 : dice.pick([8, 12, 12]);
  const usual: Paper = exercise.units === "m" ? "a4" : "letter";
  const large: Paper = exercise.units === "m" ? "a3" : "tabloid";
  const paper = size === "full" && megapixels === 12 && dice.chance(0.25) ? large : usual;
  const conditions = conditionsBySeed(seed, {
    megapixels,
    faint: kind === "flat, faint pencil",
    flat: kind !== "curled",
  });
  const { habit, marks } = drawnBy(exercise, paper, seed, dice);
  const copy = dice.chance(0.3) ? 1 + Math.floor(30 * dice.next()) : null;
  const hopeless = kind === "hopeless" ? spoil(dice) : {};
  return { seed, kind, habit, shot: { exercise, paper, marks, seed, copy, ...conditions, ...hopeless } };
}

/**
 * Half of the students hold a habit. One whose marks would lie past the edge of the picture thinks better of it, and so does
 * one whose drawing would not say which point is which.
 */
function drawnBy(
  exercise: Exercise,
  paper: Paper,
  seed: number,
  dice: Dice,
): { habit: string | null; marks: readonly Mark[] } {
  const habits = revealedHabits(goesOnFromOwn(exercise));
  const habit = dice.chance(0.5) && habits.length > 0 ? dice.pick(habits) : null;
  if (habit !== null) {
    const marks = marksByHabit(exercise, habit, seed);
    if (isInside(exercise, paper, marks) && canBeTold(exercise, marks)) return { habit, marks };
  }
  return { habit: null, marks: marksByHabit(exercise, null, seed) };
}

function isInside(exercise: Exercise, paper: Paper, marks: readonly Mark[]): boolean {
  const sheet = layOutPracticeSheet(exercise, { paper });
  if (!sheet) return false;
  const { boxes } = exercise.task.kind === "picture-to-plan" ? sheet.layout.plan : sheet.layout.picture;
  const [left, right] = [Math.min(...boxes.map((box) => box.left)), Math.max(...boxes.map((box) => box.right))];
  const [top, bottom] = [Math.min(...boxes.map((box) => box.top)), Math.max(...boxes.map((box) => box.bottom))];
  return [...drawnLines(sheet, marks).places.values()].every(
    ([x, y]) => x > left && x < right && y > top && y < bottom,
  );
}

/** What no student should hand in: half the sheet, a black picture, a smear. */
function spoil(dice: Dice): Partial<Conditions> {
  return dice.pick<Partial<Conditions>>([
    { off: [0.5, 0.2] },
    { off: [-0.3, 0.45], fill: 1.3 },
    { exposure: 0.06, evenness: 0.3, noise: 8 },
    { blurPx: 12 },
    { motionPx: 30 },
    { fill: 0.16, tiltDeg: 60 },
  ]);
}
