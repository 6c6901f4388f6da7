import type { Exercise, Strictness } from "../../exercise/exercise";
import { demandsOf, LEVELS, marksAsked } from "../../generator/levels";
import { FOOT_M } from "../../measure/length";
import { printLength } from "../../measure/print-length";

/** The app makes eyes of a round height, half a foot or 100 mm: so far beside its bounds they may come to stand. */
const EYE_ROUNDING_M = FOOT_M / 4;

/** How the hands are called in a sentence. */
const HANDS: Readonly<Record<Strictness, string>> = {
  thumbnail: "as a thumbnail",
  sketch: "as a sketch",
  drafted: "as a drafted drawing",
};

/**
 * In what an exercise asks something else than the exercises that the app makes for its unit and level, a sentence each; none
 * where it asks the same. It is for the author to weigh: nothing has to be as those are.
 */
export function besideLevel(exercise: Exercise): readonly string[] {
  const { unit, task, viewer, stage, units } = exercise;
  const level = LEVELS.find((each) => each === exercise.level);
  if (level === undefined) return [];
  const demands = demandsOf(unit, level);
  const [fewest, most] = marksAsked(unit, level);
  const [low, high] = demands.horizon;
  const number = task.marks.length;
  return [
    ...(number < fewest || number > most
      ? [`They ask ${fewest === most ? fewest : `${fewest} to ${most}`} marks; this one asks ${number}.`]
      : []),
    ...(task.strictness === demands.strictness
      ? []
      : [`They are graded ${HANDS[demands.strictness]}; this one ${HANDS[task.strictness]}.`]),
    ...(task.dimensions === demands.dimensions
      ? []
      : [
          demands.dimensions === "rule"
            ? RULE_THERE
            : "Their dimensions are printed; here they are read with the rule.",
        ]),
    ...(task.hints === demands.hints
      ? []
      : [demands.hints === "none" ? "They give no hints; this one does." : "They give hints; this one gives none."]),
    ...(task.goOnFrom === demands.goOnFrom
      ? []
      : [demands.goOnFrom === "own" ? OWN_THERE : "They go on from true points; this one from the student's own."]),
    ...(viewer.eyeHeight < low * FOOT_M - EYE_ROUNDING_M || viewer.eyeHeight > high * FOOT_M + EYE_ROUNDING_M
      ? [
          `Their eye stands ${print(low)} to ${print(high)} high; here it stands at ${printLength(viewer.eyeHeight, units)}.`,
        ]
      : []),
    ...(demands.offCentre === 0 && viewer.offset !== 0 ? ["Their eye is on the centre line; here it is off it."] : []),
    ...(demands.raked === 0 && stage.rake !== 0 ? ["Their stage is level; this one is raked."] : []),
  ];

  function print(feet: number): string {
    return printLength(feet * FOOT_M, units);
  }
}

const RULE_THERE = "Their dimensions are read with the rule; here they are printed.";
const OWN_THERE = "They go on from the student's own points; this one from the true ones.";
