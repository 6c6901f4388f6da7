import type { Exercise, TaskKind } from "../exercise/exercise";
import { printLength } from "../measure/print-length";
import { downstageHalfShare } from "../perspective/foreshortening";
import { project } from "../perspective/project";
import { floorHeight } from "../stage/stage";
import { type Judged, meansPlace } from "./judge-mark";

/** Along the depth, an error this many times the one across is an error of depth. */
const MOSTLY_DEPTH = 1;

/** Depths nearer to the plaster line than this stand on it, metres. */
const ON_PLASTER_LINE_M = 1e-6;

/** The fact of foreshortening behind an error, with this exercise's own numbers; for a good mark, the rule it kept. */
export function sayWhy(judged: Judged, within: boolean, exercise: Exercise): string {
  if (within) return sayRuleKept(judged, exercise.task.kind);
  if (!judged.seen) return "";
  if (judged.plan && "height" in judged.plan) return sayWhyHeight(judged, judged.plan.height, exercise);
  const up = Math.abs(judged.seen[1] - judged.target[1]);
  const across = Math.abs(judged.seen[0] - judged.target[0]);
  const y = judged.point.at[1];
  if (Math.abs(y) < ON_PLASTER_LINE_M)
    return "On the plaster line everything is true size: nothing is foreshortened there.";
  if (y < 0)
    return "Before the plaster line the picture goes on towards you: its ray runs on downward and things grow larger than true size.";
  return up >= MOSTLY_DEPTH * across ? sayWhyDepth(judged, exercise) : sayWhyAcross(judged, exercise);
}

function sayRuleKept({ point }: Judged, kind: TaskKind): string {
  const y = point.at[1];
  if (!meansPlace(point)) {
    return Math.abs(y) < ON_PLASTER_LINE_M
      ? "On the plaster line a height is its true size."
      : "The height shrank as much as everything else at that depth: foot and top keep to the same vanishing point.";
  }
  if (Math.abs(y) < ON_PLASTER_LINE_M) return "On the plaster line everything is true size.";
  if (y < 0) return "Before the plaster line things are drawn larger than true size, and you let the ray run forward.";
  if (kind === "picture-to-plan")
    return "You let the floor lengthen again as it goes upstage, and carried the offset out along its ray to the true size.";
  return "You let the floor shorten as it goes upstage, and drew the offset in by the same amount.";
}

function sayWhyDepth(judged: Judged, exercise: Exercise): string {
  const { stage, viewer } = exercise;
  const share = downstageHalfShare(viewer, stage);
  const back = project(viewer, [viewer.offset, stage.depth, floorHeight(stage, stage.depth)]);
  const [mark, truth] = [judged.seen?.[1] ?? 0, judged.target[1]];
  const direction = mark > truth ? "too far upstage" : "too near the plaster line";
  const fact =
    share === null ? "" : ` In the picture the downstage half of this floor takes ${percent(share)} of its height.`;
  const whole = back.seen ? back.at[1] : 0;
  const y = judged.point.at[1];
  if (!(whole > 0) || judged.point.base !== 0 || judged.point.role === "nosing" || y > stage.depth)
    return `You placed it ${direction}.${fact}`;
  return (
    `You placed it ${direction}.${fact} ${percent(y / stage.depth)} of the way to the back wall on the plan is ` +
    `${percent(truth / whole)} of the way up the drawn floor; yours is ${percent(mark / whole)}.`
  );
}

function sayWhyAcross(judged: Judged, { viewer, units }: Exercise): string {
  const true0 = judged.point.at[0] - viewer.offset;
  const drawn = judged.target[0] - viewer.offset;
  const line = viewer.offset === 0 ? "the centre line" : "the line under the CVP";
  const mark = (judged.seen?.[0] ?? 0) - viewer.offset;
  const how = Math.abs(mark) > Math.abs(drawn) ? "too wide" : "too narrow";
  return (
    `The offset is ${how}. At this depth sizes are drawn at ${percent(judged.s)} of true: ${printLength(Math.abs(true0), units, "near")} ` +
    `from ${line} measures ${printLength(Math.abs(drawn), units, "near")} on the plaster line's rule.`
  );
}

function sayWhyHeight(judged: Judged, error: number, exercise: Exercise): string {
  const { viewer, units } = exercise;
  const above = judged.point.at[2] - viewer.eyeHeight;
  const horizon =
    Math.abs(above) < ON_PLASTER_LINE_M
      ? "It lies at eye height, so it is on the horizon at any depth."
      : `The horizon cuts every upright at eye height, ${printLength(viewer.eyeHeight, units, "near")}: this point lies ` +
        `${printLength(Math.abs(above), units, "near")} ${above > 0 ? "above" : "below"} it, drawn ` +
        `${printLength(Math.abs(above) * judged.s, units, "near")} by the plaster line's rule.`;
  const up = Math.abs((judged.seen?.[1] ?? 0) - judged.target[1]);
  const across = Math.abs((judged.seen?.[0] ?? 0) - judged.target[0]);
  if (across > up) return "An upright stays upright: it belongs straight above its foot.";
  return `It is too ${error > 0 ? "tall" : "short"}. At this depth heights are drawn at ${percent(judged.s)} of true. ${horizon}`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
