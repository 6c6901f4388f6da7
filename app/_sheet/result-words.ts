import type { Exercise } from "@/lib/exercise/exercise";
import type { GradedMark, ImpliedViewer } from "@/lib/grading/grade";
import type { HabitClaim } from "@/lib/habits/claim";
import { habitName } from "@/lib/habits/habit-name";
import type { LengthUnits } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { inside } from "@/lib/plan/first-letter";
import type { NamedPoint } from "@/lib/plan/named-point";
import { sayPoint } from "@/lib/plan/say-point";
import type { Viewer } from "@/lib/stage/viewer";
import { planeOf } from "./plane-of";

/** Steadier than this an error is said to lean one way, share of its size. */
const LEANS = 0.6;
/** An eye nearer than this to the real one is the real one, share of the distance and metres. */
const SAME_DISTANCE = 0.03;
const SAME_PLACE_M = 0.05;
/** Nothing that the marks say of the eye is worth saying past this, times the real distance. */
const FAR_OFF = 6;

/** The mean size of an error, and its mean with sign, metres; null where no mark has one. */
export type Stray = { readonly size: number; readonly lean: number } | null;

export type Strays = { readonly depth: Stray; readonly across: Stray; readonly height: Stray };

/** The errors on the stage told apart: along the depth, across, and of heights. */
function strays(marks: readonly GradedMark[]): Strays {
  const floor = marks.flatMap(({ plan }) => (plan && "across" in plan ? [plan] : []));
  const heights = marks.flatMap(({ plan }) => (plan && "height" in plan ? [plan.height] : []));
  return {
    depth: stray(floor.map((each) => each.upstage)),
    across: stray(floor.map((each) => each.across)),
    height: stray(heights),
  };
}

function stray(errors: readonly number[]): Stray {
  if (errors.length === 0) return null;
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return { size: mean(errors.map(Math.abs)), lean: mean(errors) };
}

/** The strays as sentences, the largest thing first to be seen: depth, then across, then heights. */
export function strayWords(marks: readonly GradedMark[], units: LengthUnits): readonly string[] {
  const { depth, across, height } = strays(marks);
  return [
    sentence("In depth", depth, units, ["too far upstage", "too far downstage"]),
    sentence("Across", across, units, ["too far stage left", "too far stage right"]),
    sentence("In height", height, units, ["too tall", "too low"]),
  ].filter((words) => words !== "");
}

function sentence(start: string, error: Stray, units: LengthUnits, [more, less]: readonly [string, string]): string {
  if (!error) return "";
  const size = printLength(error.size, units, "near");
  const leaning = error.size > 0 && Math.abs(error.lean) > LEANS * error.size;
  return `${start} you are out by ${size} on average${leaning ? `, mostly ${error.lean > 0 ? more : less}` : ""}.`;
}

/** The habits the marks hold together as, each with the points that show it. */
export function habitWords(claims: readonly HabitClaim[], points: ReadonlyMap<string, NamedPoint>): readonly string[] {
  return claims.map(({ id, marks }) => {
    const shown = marks.flatMap((name) => points.get(name) ?? []).map(sayPoint);
    return `A habit shows: ${inside(habitName(id))} (${shown.join(", ")}).`;
  });
}

/** The eye the drawing implies, against the one it was to be drawn from: "as if sitting 6'-3" nearer". */
export function eyeWords(
  implied: ImpliedViewer | null,
  viewer: Viewer,
  { units, task }: Pick<Exercise, "units" | "task">,
): string {
  if (!implied || implied.distance > viewer.distance * FAR_OFF || implied.distance <= 0) return "";
  const nearer = viewer.distance - implied.distance;
  const higher = implied.eyeHeight - viewer.eyeHeight;
  const right = implied.offset - viewer.offset;
  const length = (metres: number) => printLength(Math.abs(metres), units, "near");
  const parts = [
    Math.abs(nearer) > SAME_DISTANCE * viewer.distance
      ? `${length(nearer)} ${nearer > 0 ? "nearer" : "further away"}`
      : "",
    Math.abs(higher) > SAME_PLACE_M ? `${length(higher)} ${higher > 0 ? "higher" : "lower"}` : "",
    Math.abs(right) > SAME_PLACE_M ? `${length(right)} to the ${right > 0 ? "right" : "left"}` : "",
  ].filter((part) => part !== "");
  const reading = planeOf({ task }) === "plan";
  if (parts.length === 0)
    return reading
      ? "You read the picture from the eye it was drawn from."
      : "Your drawing is seen from the eye it was to be drawn from.";
  const list = parts.length > 1 ? `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}` : parts[0];
  return reading ? `You read it as if it had been drawn from an eye ${list}.` : `You drew as if sitting ${list}.`;
}

/** An error on the stage in two columns of the table: depth or height, and across. */
export function errorCells(mark: GradedMark, units: LengthUnits): readonly [depth: string, across: string] {
  const { plan } = mark;
  const length = (metres: number, more: string, less: string) => {
    const words = printLength(Math.abs(metres), units, "near");
    return /^0/.test(words) && Number.parseFloat(words.replace(/\D/g, "")) === 0
      ? "none"
      : `${words} ${metres > 0 ? more : less}`;
  };
  if (!plan) return ["no such place", ""];
  if ("height" in plan) return [length(plan.height, "too tall", "too low"), ""];
  return [length(plan.upstage, "upstage", "downstage"), length(plan.across, "stage left", "stage right")];
}
