import { symmetricEigen3 } from "../../geometry/eigen3";
import type { Matrix3, Vector3 } from "../../geometry/matrix3";
import { dot3 } from "../../geometry/vector3";
import { type DrawnLine, missInSigmas, missSlope } from "../../perspective/whose-eye/drawn-line";
import type { StageDirection } from "../../stage/frame";
import type { Viewer } from "../../stage/viewer";
import { placeOf } from "./judge-line";
import type { EyeOfLines, Told } from "./judgement";
import { mostMisfit } from "./line-precision";

/** A drawn line that runs away from the viewer, and its direction on the stage. */
export type Receding = { readonly line: DrawnLine; readonly direction: StageDirection };

/** A figure is not told when its standard deviation is above this share of the exercise's own distance or height. */
const CANNOT_TELL = 0.25;

/** The search is all but linear; it settles in a few steps. */
const STEPS = 25;
const SETTLED = 1e-12;

/** Below this share of the largest, an eigenvalue is rounding: the lines say nothing that way. */
const NOTHING = 1e-12;

/** An eye farther than this many times the exercise's distance is no eye. */
const FARTHEST = 20;

/**
 * The eye (D, h, e) whose vanishing points e + D dx/dy, h + D dz/dy the lines miss least, in sigmas of a hand. Their ends'
 * places do not enter, only where the lines run: lines square to the plaster line tell e and h, those of a second
 * direction D as well, and lines of one raking direction h alone.
 */
export function eyeOfLines(
  lines: readonly Receding[],
  own: Viewer,
): Omit<EyeOfLines, "say"> & {
  /** That eye, for figures that the lines leave open as near to the exercise's own as they allow; null unless told. */
  readonly fitted: Viewer | null;
} {
  const scale = own.distance;
  let eye: Vector3 = [own.distance, own.eyeHeight, own.offset];
  for (let step = 0; step < STEPS; step++) {
    const { change } = normalStep(lines, eye, scale);
    eye = [eye[0] + change[0], eye[1] + change[1], eye[2] + change[2]];
    if (Math.hypot(...change) < SETTLED * scale) break;
  }
  const { variances, rank } = normalStep(lines, eye, scale);
  const tell = (i: 0 | 1 | 2, most: number): Told | null => {
    const give = Math.sqrt(variances[i]);
    return give <= CANNOT_TELL * most ? { metres: eye[i], give } : null;
  };
  const figures = { distance: tell(0, own.distance), eyeHeight: tell(1, own.eyeHeight), offset: tell(2, own.distance) };
  const nothing = { distance: null, eyeHeight: null, offset: null };
  const known = Object.values(figures).filter((figure) => figure !== null).length;
  if (known === 0) return { kind: "cannot tell", ...nothing, misfit: null, fitted: null };
  const free = lines.length - rank;
  const left = lines.reduce((sum, { line, direction }) => sum + missAt(line, direction, eye) ** 2, 0);
  const misfit = free > 0 ? Math.sqrt(left / free) : null;
  const possible = !figures.distance || (eye[0] > 0 && eye[0] < FARTHEST * own.distance);
  if (!possible || (misfit !== null && misfit > mostMisfit(free))) {
    return { kind: "disagree", ...nothing, misfit, fitted: null };
  }
  return { kind: "told", ...figures, misfit, fitted: asViewer(eye) };
}

function asViewer([distance, eyeHeight, offset]: Vector3): Viewer {
  return { distance, eyeHeight, offset };
}

function missAt(line: DrawnLine, direction: StageDirection, eye: Vector3): number {
  return missInSigmas(line, placeOf({ viewer: asViewer(eye) }, direction));
}

/**
 * The step of least squares from an eye over what the lines tell of it, the variance of each figure (infinite where they
 * tell nothing), and how many figures, or sums of figures, they settle.
 */
function normalStep(
  lines: readonly Receding[],
  eye: Vector3,
  scale: number,
): { readonly change: Vector3; readonly variances: Vector3; readonly rank: number } {
  const m = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  const pull = [0, 0, 0];
  for (const { line, direction } of lines) {
    const [dx, dy, dz] = direction;
    const place = placeOf({ viewer: asViewer(eye) }, direction);
    const slope = missSlope(line, place);
    const miss = missInSigmas(line, place);
    const row: Vector3 = [slope[0] * dx + slope[1] * dz, slope[1] * dy, slope[0] * dy];
    for (let i = 0; i < 3; i++) {
      pull[i] = (pull[i] as number) - (row[i] as number) * miss;
      for (let j = 0; j < 3; j++) m[3 * i + j] = (m[3 * i + j] as number) + (row[i] as number) * (row[j] as number);
    }
  }
  const at = (i: number): Vector3 => [m[i] as number, m[i + 1] as number, m[i + 2] as number];
  const matrix: Matrix3 = [at(0), at(3), at(6)];
  const pairs = symmetricEigen3(matrix);
  const least = Math.max(NOTHING * pairs[2].value, 1 / (FARTHEST * scale) ** 2);
  const toward = [pull[0], pull[1], pull[2]] as unknown as Vector3;
  let change: Vector3 = [0, 0, 0];
  let variances: Vector3 = [0, 0, 0];
  for (const { value, vector } of pairs) {
    if (value < least) {
      variances = add(variances, vector, (v) => (v * v > NOTHING ? Number.POSITIVE_INFINITY : 0));
      continue;
    }
    const share = dot3(toward, vector) / value;
    change = add(change, vector, (v) => share * v);
    variances = add(variances, vector, (v) => (v * v) / value);
  }
  return { change, variances, rank: pairs.filter(({ value }) => value >= least).length };
}

function add(sum: Vector3, vector: Vector3, part: (v: number) => number): Vector3 {
  return [sum[0] + part(vector[0]), sum[1] + part(vector[1]), sum[2] + part(vector[2])];
}
