import type { Place } from "@/app/_parts/kept-work/attempt";
import type { Exercise } from "@/lib/exercise/exercise";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import type { LengthUnits } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { paperWorth } from "@/lib/perspective/foreshortening";
import { capital } from "@/lib/plan/first-letter";
import type { NamedPoint } from "@/lib/plan/named-point";
import { ON_LINE_M, sayAcross, sayDepth } from "@/lib/plan/say-place";
import { sayPoint } from "@/lib/plan/say-point";
import { floorHeight } from "@/lib/stage/stage";

/** "The foot of B". */
export function stepTitle(point: NamedPoint): string {
  return capital(sayPoint(point));
}

/** Where the plan has the point: offset from the centre line, distance from the plaster line; exact. */
export function planWords(point: NamedPoint, units: LengthUnits): string {
  const [x, y] = point.at;
  return `${sayAcross(x, units)}, ${sayDepth(y, units)}`;
}

/** How high the point is above what it stands on; null for a point on the floor. */
function heightOf(point: NamedPoint, exercise: Pick<Exercise, "stage">): number | null {
  const height = point.at[2] - floorHeight(exercise.stage, point.at[1]);
  return point.onFloor && point.base === 0 ? null : height;
}

/** The sentence for a point above the floor; empty for one on it. */
export function heightWords(point: NamedPoint, exercise: Exercise): string {
  const height = heightOf(point, exercise);
  return height === null ? "" : `${printLength(height, exercise.units)} above the floor.`;
}

/** What a millimetre of paper means at a point of the stage. */
export function worthWords(point: NamedPoint, exercise: Exercise): string {
  const worth = paperWorth(exercise.viewer, exercise.stage, point.at, exercise.scaleRatio);
  if (!worth) return "";
  const across = printLength(worth.across, exercise.units, "near");
  if (point.role === "top" || point.role === "head") {
    return `1 mm of paper here is ${across} of height on the stage.`;
  }
  if (worth.depth === null) return `1 mm of paper here is ${across} across on the stage.`;
  return `1 mm of paper here is ${across} across and ${printLength(worth.depth, exercise.units, "near")} of depth on the stage.`;
}

/** "Read the foot of B back on to the plan". */
export function readBackWords(point: NamedPoint): string {
  return `Read ${sayPoint(point)} back on to the plan`;
}

/** Where a mark stands on the plan, for reading aloud. */
export function planPlaceWords([x, y]: Place, units: LengthUnits): string {
  return `Mark ${sayAcross(x, units)}, ${sayDepth(y, units)}.`;
}

/** Where the picture shows a point, for those who do not see it lit. */
export function seenWords(point: ProjectedPoint, units: LengthUnits): string {
  return point.picture ? `The picture shows it ${ruledPlace(point.picture, units)}, by the rule.` : "";
}

/** Where a mark stands in the picture, read off the true-size rule and the frame, for reading aloud. */
export function picturePlaceWords(at: Place, units: LengthUnits): string {
  return `Mark ${ruledPlace(at, units)}, by the rule.`;
}

function ruledPlace([X, Z]: Place, units: LengthUnits): string {
  const across =
    Math.abs(X) < ON_LINE_M
      ? "on the centre line"
      : `${printLength(Math.abs(X), units)} ${X > 0 ? "right" : "left"} of the centre line`;
  const up =
    Math.abs(Z) < ON_LINE_M
      ? "on the plaster line"
      : `${printLength(Math.abs(Z), units)} ${Z > 0 ? "above" : "below"} the plaster line`;
  return `${across}, ${up}`;
}

/** The correction's sentences, in the order they are said. */
export function correctionWords({ words: { where, means, why, how } }: GradedMark): readonly string[] {
  return [where, means, why, how].filter((sentence) => sentence !== "");
}
