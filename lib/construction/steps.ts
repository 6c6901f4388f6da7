import { type Line, meet } from "../geometry/meet";
import { distance } from "../geometry/vector";
import type { PicturePoint } from "../stage/frame";
import { onPaper, type Sheet, samePlace } from "./board";
import type { LineStep, MeasureStep, Step } from "./step";

/** Lines that cross under a smaller angle than this cross badly: a pencil's width there is worth many. */
const POOR_CROSSING = Math.sin((5 * Math.PI) / 180);

/** Under a tenth of a degree no ruler finds the crossing at all, and reckoning loses digits that a proof needs. */
const NO_CROSSING = Math.sin((0.1 * Math.PI) / 180);

/** Through points nearer than this, metres on the picture plane, no ruler finds a line, and reckoning loses digits as well. */
const NO_LINE_M = 1e-3;

/** How good a run of steps is by what it draws. */
export type Quality = { readonly offPaper: number; readonly poor: number; readonly steps: number };

/** The same with what a teacher would say of it: whether it is the method the lesson is about, and which is usual. */
export type RankedQuality = Quality & { readonly rank: number; readonly favoured: boolean };

/**
 * Steps as they are put down. A measure or a line that is there already is used again, not drawn twice. `null` marks a
 * crossing that does not exist, and spoils the run.
 */
export type Steps = {
  measure(step: Omit<MeasureStep, "do" | "at">): number;
  /** Null through points too near to one another. */
  line(step: Omit<LineStep, "do">): number | null;
  /** `where` ends the sentence "Lines 2 and 4 cross ...". */
  meet(one: number | null, other: number | null, where: string): number | null;
  mark(at: PicturePoint, say: string): number;
  /** Where a measure, a meet or a mark put its point. */
  at(number: number): PicturePoint;
  list(): readonly Step[];
  quality(): Quality;
};

export function startSteps(board: Sheet): Steps {
  const steps: Step[] = [];
  let poor = 0;
  const add = (step: Step): number => steps.push(step);
  const step = (number: number): Step => {
    const found = steps[number - 1];
    if (!found) throw new Error(`A construction has no step ${number}.`);
    return found;
  };
  const at = (number: number): PicturePoint => {
    const found = step(number);
    if (found.do === "line") throw new Error(`Step ${number} of a construction is a line, not a point.`);
    return found.at;
  };
  const lineOf = (number: number): Line => {
    const found = step(number);
    if (found.do !== "line") throw new Error(`Step ${number} of a construction is not a line.`);
    return found.through;
  };
  return {
    measure: ({ on, from, length, say }) => {
      const origin: PicturePoint = from === "centre line" ? [0, 0] : at(from);
      const place: PicturePoint = on === "upright" ? [origin[0], origin[1] + length] : [origin[0] + length, origin[1]];
      const known = steps.findIndex((s) => s.do === "measure" && s.on === on && samePlace(s.at, place));
      return known >= 0 ? known + 1 : add({ do: "measure", on, from, length, at: place, say });
    },
    line: ({ through, toward, say }) => {
      if (distance(through[0], through[1]) < NO_LINE_M) return null;
      const known = steps.findIndex(
        (s) => s.do === "line" && samePlace(s.through[0], through[0]) && samePlace(s.through[1], through[1]),
      );
      return known >= 0 ? known + 1 : add({ do: "line", through, toward, say });
    },
    meet: (one, other, where) => {
      if (one === null || other === null) return null;
      const [first, second] = [lineOf(one), lineOf(other)];
      const place = meet(first, second);
      if (!place) return null;
      const sine = sineBetween(first, second);
      if (sine < NO_CROSSING) return null;
      if (sine < POOR_CROSSING) poor += 1;
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      const say = `Lines ${low} and ${high} cross ${where}.`;
      return add({ do: "meet", lines: [one, other], at: [place[0], place[1]], say });
    },
    mark: (place, say) => add({ do: "mark", at: place, say }),
    at,
    list: () => steps,
    quality: () => ({
      offPaper: steps.flatMap(pointsOf).filter((point) => !onPaper(board, point)).length,
      poor,
      steps: steps.length,
    }),
  };
}

/** The points a step needs on the paper; an upright's or a level line's second point only gives a direction. */
function pointsOf(step: Step): readonly PicturePoint[] {
  if (step.do !== "line") return [step.at];
  return step.toward === "upright" || step.toward === "level" ? [step.through[0]] : step.through;
}

function sineBetween([a, b]: Line, [c, d]: Line): number {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const [vx, vy] = [d[0] - c[0], d[1] - c[1]];
  return Math.abs(ux * vy - uy * vx) / (Math.hypot(ux, uy) * Math.hypot(vx, vy));
}

/** Fewer points off the paper first, then the lesson's own method, fewer poor crossings, fewer steps, the usual method. */
export function isBetter(a: RankedQuality, b: RankedQuality): boolean {
  if (a.offPaper !== b.offPaper) return a.offPaper < b.offPaper;
  if (a.favoured !== b.favoured) return a.favoured;
  if (a.poor !== b.poor) return a.poor < b.poor;
  if (a.steps !== b.steps) return a.steps < b.steps;
  return a.rank < b.rank;
}
