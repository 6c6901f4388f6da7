import { checkSense } from "../exercise/check-sense";
import { type Exercise, UNITS, type Unit } from "../exercise/exercise";
import type { WrittenExercise } from "../exercise/exercise-schema";
import { resolveExercise } from "../exercise/resolve-exercise";
import { writeExercise } from "../exercise/write-exercise";
import { revealedHabits } from "../habits/reveal";
import { chooseFrame } from "./choose-frame";
import { chooseMarks } from "./choose-marks";
import { isPlayable } from "./clear-stage";
import { type Dice, rollDice } from "./dice";
import { thinkOutFloor } from "./generate-floor";
import { thinkOutFurniture } from "./generate-furniture";
import { thinkOutLevels } from "./generate-levels";
import { thinkOutOpenings } from "./generate-openings";
import { thinkOutReading } from "./generate-reading";
import { thinkOutSets } from "./generate-sets";
import { thinkOutStage } from "./generate-stage";
import { thinkOutWalls } from "./generate-walls";
import type { ThinkOut } from "./idea";
import { demandsOf, LEVELS, type Level, marksAsked } from "./levels";
import { chooseWords } from "./words";
import { writeNotes } from "./write-notes";

const THINK_OUT: Readonly<Record<Unit, ThinkOut>> = {
  floor: thinkOutFloor,
  walls: thinkOutWalls,
  openings: thinkOutOpenings,
  furniture: thinkOutFurniture,
  levels: thinkOutLevels,
  stage: thinkOutStage,
  reading: thinkOutReading,
  sets: thinkOutSets,
};

/** What to make: a unit, a level from 1 to 5, and a seed from 0 to 2^53 - 1. */
export type Order = { readonly unit: Unit; readonly level: number; readonly seed: number };

/** Sets thrown away before the generator owns to a fault of its own. */
const MOST_TRIES = 2000;
/** Every exercise tells at least so many wrong ideas from the truth and from one another. */
export const FEWEST_HABITS = 2;

/**
 * A new exercise as its file writes it, the same for the same order on every platform: sets are drawn from the seed one
 * after another, and the first that can be played on and fairly graded is taken. Throws for an order that cannot be read.
 */
export function generateExercise({ unit, level, seed }: Order): WrittenExercise {
  const known = LEVELS.find((one) => one === level);
  if (!known || !UNITS.includes(unit)) throw new Error(`There is no level ${level} of unit ${unit}.`);
  if (!(Number.isSafeInteger(seed) && seed >= 0)) throw new Error(`A seed is a whole number from 0 up, not ${seed}.`);
  const dice = rollDice(seed, `${unit} ${level}`);
  for (let i = 0; i < MOST_TRIES; i += 1) {
    const written = drawOne(dice, unit, known, `${unit}-${level}-${seed}`);
    if (written) return written;
  }
  throw new Error(`No fair exercise came of ${MOST_TRIES} sets for ${unit}, level ${level}, seed ${seed}.`);
}

function drawOne(dice: Dice, unit: Unit, level: Level, id: string): WrittenExercise | null {
  const demands = demandsOf(unit, level);
  const frame = chooseFrame(dice, unit, demands);
  const { stage, viewer, ruler } = frame;
  const [fewest, mostOfAll] = marksAsked(unit, level);
  const most = dice.whole(fewest, mostOfAll);
  const deepest = Math.floor(ruler.feet(stage.depth) * demands.reach);
  const idea = THINK_OUT[unit]({ dice, level, demands, frame, most, deepest });
  if (!idea || !isPlayable(idea.plan, frame)) return null;
  const { kind, given, plan, skills } = idea;
  const unasked: Exercise = {
    id,
    version: 1,
    ...chooseWords(dice, idea.place),
    brief: "",
    notes: "",
    unit,
    level,
    skills,
    units: ruler.units,
    scale: frame.scale,
    scaleRatio: frame.scaleRatio,
    stage,
    viewer,
    plan,
    task: {
      kind,
      marks: [],
      given,
      goOnFrom: demands.goOnFrom,
      dimensions: demands.dimensions,
      tools: ["straightedge"],
      hints: demands.hints,
      strictness: demands.strictness,
    },
  };
  const marks = chooseMarks(unasked, idea.wanted, most);
  if (marks.length < fewest) return null;
  const asked: Exercise = { ...unasked, brief: idea.brief(marks), task: { ...unasked.task, marks } };
  const written = writeExercise({ ...asked, notes: writeNotes(asked) });
  return isFair(written, idea.mustTell ?? []) ? written : null;
}

/** What no exercise is handed out with, whatever its author says is fine. */
const HARD = "is hard to grade";

/** Judged as the file will be read: sound, no mark hard to grade, and wrong ideas can be told by it. */
function isFair(written: WrittenExercise, mustTell: readonly string[]): boolean {
  const reading = resolveExercise(written);
  if (!reading.ok) return false;
  const findings = checkSense(reading.exercise);
  const gradable = findings.every(({ weight, message }) => weight !== "fault" && !message.includes(HARD));
  if (!gradable) return false;
  const told = revealedHabits(reading.exercise);
  return told.length >= FEWEST_HABITS && mustTell.every((id) => told.includes(id));
}
