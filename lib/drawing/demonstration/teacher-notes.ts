import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { tolerances } from "../../exercise/tolerance";
import { meansPlace } from "../../grading/judge-mark";
import { HABITS } from "../../habits/all-habits";
import { askedPoints } from "../../habits/asked";
import type { Hypothesis } from "../../habits/hypothesis";
import { perfectMarks, revealedWays } from "../../habits/reveal";
import { printLength } from "../../measure/print-length";
import { toPaperMm } from "../../measure/scale";
import { paperWorth } from "../../perspective/foreshortening";
import { sayPoint } from "../../plan/say-point";
import type { PicturePoint } from "../../stage/frame";
import type { TeacherNote, Watch } from "./demonstration-step";

/** More ideas than this nobody can look for while talking to a class. */
const MOST_WATCHED = 3;
/** Shifts smaller than this along one axis are not worth a word, mm. */
const WORTH_SAYING_MM = 0.25;

/** The note of each asked point, by its name: what paper is worth there, which ideas to look for, what to ask. */
export function teacherNotes(exercise: Exercise): ReadonlyMap<string, TeacherNote> {
  const points = exercisePoints(exercise);
  const allowed = tolerances(exercise, points);
  const perfect = perfectMarks(exercise, points);
  const asked = askedPoints(exercise, points, perfect);
  const ways = revealedWays(exercise);
  return new Map(
    perfect.map(({ point }, i) => {
      const one = asked[i];
      const watch = one
        ? middleWays(ways, i).flatMap((way) => watchAt(way, way.places[i] ?? null, point, exercise, one))
        : [];
      return [
        point.name,
        {
          worth: sayWorth(exercise, point, allowed.get(point.name) ?? null),
          watch: watch.slice(0, MOST_WATCHED),
          ask: sayAsk(exercise, point),
        },
      ] as const;
    }),
  );

  function watchAt(
    { id, amount }: Hypothesis,
    place: PicturePoint | null,
    point: ProjectedPoint,
    { scaleRatio }: Exercise,
    one: (typeof asked)[number],
  ): Watch[] {
    const habit = HABITS.find((each) => each.id === id);
    if (!habit || !place || !point.picture) return [];
    return [{ name: habit.name, where: sayShift(place, point.picture, scaleRatio), say: habit.say(one, amount) }];
  }
}

/** One way of each habit that puts this mark somewhere else; of one that errs by an amount, neither the least nor the most. */
function middleWays(ways: readonly Hypothesis[], i: number): readonly Hypothesis[] {
  const here = ways.filter(({ places }) => places[i]);
  return [...new Set(here.map(({ id }) => id))].flatMap((id) => {
    const own = here.filter((way) => way.id === id);
    return own.slice(Math.floor(own.length / 2)).slice(0, 1);
  });
}

/** "the mark would be 3.6 mm low". */
function sayShift(place: PicturePoint, truth: PicturePoint, scaleRatio: number): string {
  const right = toPaperMm(place[0] - truth[0], scaleRatio);
  const up = toPaperMm(place[1] - truth[1], scaleRatio);
  const parts = [
    { size: Math.abs(up), words: `${Math.abs(up).toFixed(1)} mm ${up > 0 ? "high" : "low"}` },
    { size: Math.abs(right), words: `${Math.abs(right).toFixed(1)} mm ${right > 0 ? "right" : "left"}` },
  ]
    .filter(({ size }) => size >= WORTH_SAYING_MM)
    .sort((a, b) => b.size - a.size)
    .map(({ words }) => words);
  return parts.length === 0 ? "the mark would hardly move" : `the mark would be ${parts.join(" and ")}`;
}

/** What a millimetre of paper means at a point, and how much a hand is allowed there. */
function sayWorth(exercise: Exercise, point: ProjectedPoint, toleranceMm: number | null): string {
  const { viewer, stage, scaleRatio, units } = exercise;
  const worth = paperWorth(viewer, stage, point.at, scaleRatio);
  if (!worth) return "";
  const across = printLength(worth.across, units, "near");
  const allowed = toleranceMm === null ? "" : ` A hand is allowed ${toleranceMm.toFixed(1)} mm.`;
  if (!meansPlace(point)) return `1 mm of paper here is ${across} of height on the stage.${allowed}`;
  if (worth.depth === null) return `1 mm of paper here is ${across} across on the stage.${allowed}`;
  const depth = printLength(worth.depth, units, "near");
  return `1 mm of paper here is ${across} across and ${depth} of depth on the stage.${allowed}`;
}

/** A question for the class before the point is found. */
function sayAsk({ task, viewer }: Exercise, point: ProjectedPoint): string {
  const who = sayPoint(point);
  const [x, y, z] = point.at;
  if (task.kind === "picture-to-plan")
    return `How far upstage does ${who} stand, and how far from the centre line? Take guesses before you rule anything.`;
  if (point.role === "nosing") return `Is this tread drawn as wide as the one below it, wider or narrower?`;
  if (!meansPlace(point)) {
    return z > viewer.eyeHeight
      ? `It is higher than the eye: does its edge come down or go up towards the vanishing point?`
      : `It is lower than the eye: does its edge come down or go up towards the vanishing point?`;
  }
  if (y === 0) return `Why can ${who} be laid off with the rule alone?`;
  if (y < 0) return `Is ${who} drawn nearer to the centre line than its offset on the plan, or farther out? Why?`;
  const side = x === 0 ? "" : " And how much nearer to the centre line than on the plan?";
  return `How far up the drawn floor does ${who} come: more than its share of the depth, or less?${side}`;
}
