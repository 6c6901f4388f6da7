import { printLength } from "../measure/print-length";
import { paperWorth } from "../perspective/foreshortening";
import type { Exercise } from "./exercise";
import type { ProjectedPoint } from "./exercise-points";
import { type Finding, fault, note } from "./finding";
import { insideFrame } from "./inside-frame";
import { MOST_GUESSES, nearestName } from "./nearest-name";
import { tolerances } from "./tolerance";

/** A floor mark is hard to grade when its tolerance on paper spans more of the depth than this, metres. */
export const HARD_TO_GRADE_M = 1.2;

type Points = ReadonlyMap<string, ProjectedPoint>;

/** Marks that name points, once each, and can be graded. */
export function checkMarks(exercise: Exercise, points: Points): readonly Finding[] {
  const { marks, given, kind } = exercise.task;
  const findings: Finding[] = [
    ...checkNames(given, "/task/given", points),
    ...checkNames(marks, "/task/marks", points),
  ];
  if (marks.length === 0) findings.push(fault("/task/marks", "the task asks for no marks", "list the points to place"));
  const taken = new Set(given);
  marks.forEach((name, i) => {
    const where = `/task/marks/${i}`;
    if (taken.has(name))
      findings.push(
        fault(
          where,
          given.includes(name) ? `${name} is given already` : `${name} is asked twice`,
          "take one of them out",
        ),
      );
    taken.add(name);
    const point = points.get(name);
    if (point && kind === "picture-to-plan" && !point.onFloor)
      findings.push(
        note(
          where,
          `${name} is not on the floor: the plan shows it in the place of what is under it`,
          "ask for feet, each place once",
        ),
      );
    if (point?.picture && !insideFrame(exercise.stage, exercise.viewer, point.picture))
      findings.push(note(where, `${name} falls outside the frame of the picture`, "ask for a point inside it"));
  });
  return [...findings, ...hardMarks(exercise, points)];
}

function checkNames(names: readonly string[], where: string, points: Points): readonly Finding[] {
  return names
    .map((name, i) => ({ name, where: `${where}/${i}` }))
    .filter(({ name }) => !points.has(name))
    .map(({ name, where }, i) => {
      const near = i < MOST_GUESSES ? nearestName(name, points.keys()) : null;
      const hint = near ? `did you mean ${near}?` : "name a point of the plan, like B.foot";
      return fault(where, `${name} names no point of the plan`, hint);
    });
}

function hardMarks(exercise: Exercise, points: Points): readonly Finding[] {
  const allowed = tolerances(exercise, points);
  return exercise.task.marks.flatMap((name, i) => {
    const point = points.get(name);
    const toleranceMm = allowed.get(name);
    if (!point?.onFloor || toleranceMm === undefined) return [];
    const depth = paperWorth(exercise.viewer, exercise.stage, point.at, exercise.scaleRatio)?.depth ?? null;
    if (depth !== null && depth * toleranceMm <= HARD_TO_GRADE_M) return [];
    const worth = depth === null ? "any depth" : `${printLength(depth, exercise.units, "near")} of depth`;
    return [
      note(
        `/task/marks/${i}`,
        `${name} is hard to grade: 1 mm of paper is worth ${worth} there`,
        "raise the eye, or draw at a larger scale",
      ),
    ];
  });
}
