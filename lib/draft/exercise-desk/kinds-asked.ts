import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { orderMarks } from "../../exercise/order-marks";
import { namePoints } from "../../plan/name-points";
import type { PointGroup } from "../../plan/named-point";
import type { EditOf } from "../edits/changed";
import { type AskablePoint, askablePoints } from "./askable-points";

const GROUPS: readonly PointGroup[] = ["corner", "opening", "platform", "stair", "column", "furniture", "masking"];

const WORDS: Readonly<Record<PointGroup, readonly [low: string, high: string]>> = {
  corner: ["feet of corners", "tops of corners"],
  opening: ["feet and sills of openings", "heads of openings"],
  platform: ["feet of platforms", "tops of platforms"],
  stair: ["nosings of stairs", "nosings of stairs"],
  column: ["feet of columns", "tops of columns"],
  furniture: ["feet of furniture", "tops of furniture"],
  masking: ["feet of masking", "tops and trims of masking"],
};

/** Points are at one place when they are no farther apart than this, metres: a platform's corner in a corner of the walls. */
const SAME_PLACE_M = 1e-6;

/**
 * Points of one kind: what they are, in the plural; at how many places there is one to ask for; and how many are asked or given. A
 * place where a point of another kind is asked or given already is none of them.
 */
export type KindAsked = {
  readonly key: string;
  readonly words: string;
  readonly places: number;
  readonly used: number;
};

/** The kinds of points that the picture shows, in the order they are drawn: walls, openings, what stands on the stage; low before high. */
export function kindsAsked(exercise: Exercise): readonly KindAsked[] {
  const all = askablePoints(exercise).flatMap(({ points }) => points);
  return GROUPS.flatMap((group) =>
    [0, 1].flatMap((high): KindAsked[] => {
      const key = `${group}.${high}`;
      const { free, used } = ofKind(all, key);
      if (free.length + used.length === 0) return [];
      return [{ key, words: WORDS[group][high] as string, places: free.length + used.length, used: used.length }];
    }),
  );
}

/**
 * The edit that asks for all points of a kind, or for none of them. Where several stand at one place, or something is asked or
 * given there already, it is asked once. Marks that stand in the order that is worked out stay in it; others get these at the end.
 * What is given stays given.
 */
export function askKind(exercise: Exercise, key: string, ask: boolean): EditOf<"set-task"> {
  const { plan, stage, viewer, task } = exercise;
  const { free, used } = ofKind(
    askablePoints(exercise).flatMap(({ points }) => points),
    key,
  );
  const by = (marks: readonly string[]) => ({ edit: "set-task", task: { marks }, marksBy: "author" }) as const;
  if (!ask) {
    const names = new Set(used.map(({ name }) => name));
    return by(task.marks.filter((name) => !names.has(name)));
  }
  const more = free.map(({ name }) => name);
  const order = orderMarks(namePoints(plan, stage), { stage, viewer, given: [], kind: task.kind });
  const place = new Map(order.map((name, i) => [name, i]));
  const byOrder = (a: string, b: string) => (place.get(a) ?? order.length) - (place.get(b) ?? order.length);
  const inOrder = task.marks.every((name, i) => i === 0 || byOrder(task.marks[i - 1] as string, name) <= 0);
  return by(inOrder ? [...task.marks, ...more].sort(byOrder) : [...task.marks, ...more.sort(byOrder)]);
}

/** A kind's points that are asked or given, and one for each place where nothing is. */
function ofKind(all: readonly AskablePoint[], key: string) {
  const taken = all.filter(({ use }) => use !== "free").map(({ point }) => point);
  const used = taken.filter((point) => keyOf(point) === key);
  const free: ProjectedPoint[] = [];
  for (const { point, use } of all)
    if (use === "free" && keyOf(point) === key && ![...taken, ...free].some((other) => isSamePlace(other, point)))
      free.push(point);
  return { free, used };
}

function keyOf({ group, role }: ProjectedPoint): string {
  return `${group}.${role === "top" || role === "head" || role === "trim" ? 1 : 0}`;
}

function isSamePlace(a: ProjectedPoint, b: ProjectedPoint): boolean {
  return Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1], a.at[2] - b.at[2]) <= SAME_PLACE_M;
}
