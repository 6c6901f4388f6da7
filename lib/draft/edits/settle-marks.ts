import { orderMarks } from "../../exercise/order-marks";
import { namePoints } from "../../plan/name-points";
import type { NamedPoints } from "../../plan/named-point";
import type { Draft } from "../draft";
import type { Renaming } from "./changed";

/**
 * The draft with its marks and given points brought after its plan: they follow what was renamed, those whose point is gone
 * go, and marks that are worked out are worked out anew.
 */
export function settleMarks(draft: Draft, renaming: Renaming = (name) => name): Draft {
  const { exercise, marksBy } = draft;
  const { plan, stage, viewer, task } = exercise;
  // Nothing to bring after: the names of hundreds of walls need not be worked out at every step of a drag.
  if (marksBy === "author" && task.marks.length === 0 && task.given.length === 0) return draft;
  const points = namePoints(plan, stage);
  const given = follow(task.given, renaming, points);
  const marks =
    marksBy === "order"
      ? orderMarks(points, { stage, viewer, given, kind: task.kind })
      : follow(task.marks, renaming, points);
  return { ...draft, exercise: { ...exercise, task: { ...task, given, marks } } };
}

function follow(names: readonly string[], renaming: Renaming, points: NamedPoints): readonly string[] {
  const after = names.map(renaming).flatMap((name) => (points.has(name) ? [name] : standIns(name, points)));
  return [...new Set(after)];
}

/**
 * The top of a corner is one point where its walls are of one height, `B.top`, and one for each wall, `B.top.W1`, where they
 * are not: as walls rise and fall the one stands in for the others.
 */
function standIns(name: string, points: NamedPoints): readonly string[] {
  const [corner, part, wall] = name.split(".");
  if (part !== "top") return [];
  const whole = `${corner}.top`;
  if (wall !== undefined) return points.has(whole) ? [whole] : [];
  return [...points.keys()].filter((other) => other.startsWith(`${whole}.`));
}
