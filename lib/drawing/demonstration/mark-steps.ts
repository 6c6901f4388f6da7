import { constructPoint } from "../../construction/construct-point";
import type { Step } from "../../construction/step";
import type { Exercise } from "../../exercise/exercise";
import { boardOf } from "../../exercise/exercise-board";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { printLength } from "../../measure/print-length";
import { capital } from "../../plan/first-letter";
import { sayAcross, sayDepth } from "../../plan/say-place";
import { sayPoint } from "../../plan/say-point";
import { floorHeight } from "../../stage/stage";
import { NOTHING_LIT, SHEET_PARTS, type Shown, type TeacherNote, type UnnumberedStep } from "./demonstration-step";
import { readBack } from "./read-back";

/** A point of the exercise with what is on the sheet when its turn comes. */
export type Turn = {
  readonly point: ProjectedPoint;
  readonly before: readonly string[];
  readonly note: TeacherNote;
};

/** One mark of a demonstration: where it is, line by line how it is found, and the point set down. */
export function markSteps(exercise: Exercise, turn: Turn): readonly UnnumberedStep[] {
  const { point, before, note } = turn;
  const reading = exercise.task.kind === "picture-to-plan";
  const found = reading ? readLines(exercise, point) : drawLines(exercise, point, before);
  const title = capital(sayPoint(point));
  const whole: Shown = {
    parts: SHEET_PARTS,
    placed: before,
    lines: found.steps,
    drawn: 0,
    lit: NOTHING_LIT,
    fresh: null,
    toRead: reading,
    finished: false,
  };
  const asked: Shown["lit"] = reading
    ? { picture: point.picture, plan: null }
    : { picture: null, plan: [point.at[0], point.at[1]] };
  const step = (
    kind: UnnumberedStep["kind"],
    part: string,
    sentence: string,
    shown: Partial<Shown>,
  ): UnnumberedStep => ({
    kind,
    point: point.name,
    title,
    part,
    sentence,
    note,
    shown: { ...whole, lit: asked, ...shown },
  });
  const { steps, method } = found;
  return [
    step("place", reading ? "Where the picture shows it" : "Where the plan has it", sayWhere(exercise, point), {}),
    ...steps.map(({ say }, i) => step("line", `Line ${i + 1} of ${steps.length}: ${method}`, say, { drawn: i + 1 })),
    step("set-down", "Set it down", saySetDown(exercise, point), {
      placed: [...before, point.name],
      drawn: steps.length,
      lit: { picture: point.picture, plan: [point.at[0], point.at[1]] },
      fresh: point.name,
    }),
  ];
}

type Lines = { readonly steps: readonly Step[]; readonly method: string };

/** The ruler construction from what is on the sheet; none where no pair of lines was found, and the point is then set down by the plan. */
function drawLines(exercise: Exercise, { name }: ProjectedPoint, before: readonly string[]): Lines {
  const result = constructPoint(boardOf(exercise, before), name);
  return result.found ? result.construction : { steps: [], method: "" };
}

function readLines(exercise: Exercise, point: ProjectedPoint): Lines {
  return { steps: readBack(exercise, point)?.steps ?? [], method: "read back" };
}

function sayWhere({ task, stage, units }: Exercise, point: ProjectedPoint): string {
  if (task.kind === "picture-to-plan")
    return `The picture shows ${sayPoint(point)} here. Where does it stand on the plan?`;
  const [x, y, z] = point.at;
  const place = capital(`${sayAcross(x, units)}, ${sayDepth(y, units)}`);
  const height = z - floorHeight(stage, y);
  if (point.onFloor && point.base === 0) return `${place}.`;
  return `${place}; ${printLength(height, units)} above the floor.`;
}

function saySetDown({ task, units }: Exercise, point: ProjectedPoint): string {
  const who = sayPoint(point);
  const [x, y] = point.at;
  if (task.kind === "picture-to-plan")
    return `Set ${who} down on the plan: ${sayAcross(x, units)}, ${sayDepth(y, units)}.`;
  return `Set ${who} down where the lines cross, and draw what it completes.`;
}
