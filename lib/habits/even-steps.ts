import { between } from "../geometry/vector";
import type { Asked } from "./asked";
import type { Habit } from "./habit";
import { only } from "./sight-lines";

/** Which nosing of how many, and the names of the flight's first and last at the same end. */
function inFlight({ point, exercise }: Asked) {
  const [id = "", step = "", end = ""] = point.name.split(".");
  const steps = exercise.plan.stairs.find((stair) => stair.id === id)?.steps ?? 0;
  return { step: Number(step), steps, first: `${id}.1.${end}`, last: `${id}.${steps}.${end}` };
}

/** Spaces treads evenly in the picture: linear between the first and the last drawn nosing. */
export const evenSteps: Habit = {
  id: "even-steps",
  name: "Treads evenly spaced",
  applies: (asked) => {
    if (asked.point.role !== "nosing") return false;
    const { step, steps } = inFlight(asked);
    return step > 1 && step < steps;
  },
  predict: (asked) => {
    const { step, steps, first, last } = inFlight(asked);
    const place = (name: string) => asked.onSheet(name) ?? asked.points.get(name)?.picture ?? null;
    const [low, high] = [place(first), place(last)];
    if (!low || !high) return [];
    const [X, Z] = between(low, high, (step - 1) / (steps - 1));
    return only([[X, Z]]);
  },
  say: () =>
    "You spaced the treads evenly. They shorten as they go upstage: each is a little narrower in the picture than the one below it.",
};
