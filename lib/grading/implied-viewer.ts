import { PENCIL_MM } from "../exercise/tolerance";
import { invert3, type Matrix3, multiply3, type Vector3 } from "../geometry/matrix3";
import { toPaperMm } from "../measure/scale";
import type { PicturePoint, StagePoint } from "../stage/frame";
import type { Viewer } from "../stage/viewer";
import type { ImpliedViewer } from "./grade";

/** A point of the stage and where it was drawn. */
export type Sighting = { readonly stage: StagePoint; readonly picture: PicturePoint };

/** Eyes tried at first: these many, from nearest to farthest, as multiples of the exercise's own distance. */
const TRIALS = 160;
const NEAREST = 1 / 20;
const FARTHEST = 20;

/** Steps of refinement, and the relative change under which they stop. */
const MAX_STEPS = 50;
const SETTLED = 1e-15;

/** The eye cannot be told when a pencil's width leaves it uncertain (one sigma) by more than this share of itself. */
const CANNOT_TELL = 0.5;

/**
 * The eye (distance D, height h, offset e) that best explains drawn points, by least squares on paper:
 * X = e + (x - e) D/(D+y), Z = h + (z - h) D/(D+y). For a given D the best e and h follow in closed form, so D is first
 * searched over its whole range and then all three are refined together (Gauss-Newton).
 * Null where the marks cannot tell: too few, all on the plaster line, or an eye left open by a pencil's width.
 */
export function fitViewer(sightings: readonly Sighting[], near: Viewer, scaleRatio: number): ImpliedViewer | null {
  if (sightings.length < 2) return null;
  const start = searchDistance(sightings, near.distance);
  if (!start) return null;
  const eye = refine(sightings, start);
  if (!eye || !(eye.distance > near.distance * NEAREST && eye.distance < near.distance * FARTHEST)) return null;
  const residual = Math.sqrt(sumOfSquares(sightings, eye) / sightings.length);
  const residualMm = toPaperMm(residual, scaleRatio);
  if (!canTell(sightings, eye, Math.max(residual, (PENCIL_MM * scaleRatio) / 1000))) return null;
  return { ...eye, residualMm };
}

function searchDistance(sightings: readonly Sighting[], near: number): Viewer | null {
  let best: { eye: Viewer; squares: number } | null = null;
  for (let i = 0; i <= TRIALS; i++) {
    const eye = bestEyeAt(near * NEAREST * (FARTHEST / NEAREST) ** (i / TRIALS), sightings);
    if (!eye) continue;
    const squares = sumOfSquares(sightings, eye);
    if (!best || squares < best.squares) best = { eye, squares };
  }
  return best?.eye ?? null;
}

/** Best height and offset for an eye at a distance: X - x s = e (1 - s), Z - z s = h (1 - s), by linear least squares. */
function bestEyeAt(distance: number, sightings: readonly Sighting[]): Viewer | null {
  let [weight, across, up] = [0, 0, 0];
  for (const { stage, picture } of sightings) {
    const depth = distance + stage[1];
    if (!(depth > 0)) return null;
    const drawnIn = stage[1] / depth;
    weight += drawnIn * drawnIn;
    across += drawnIn * (picture[0] - stage[0] * (1 - drawnIn));
    up += drawnIn * (picture[1] - stage[2] * (1 - drawnIn));
  }
  return weight > 0 ? { distance, offset: across / weight, eyeHeight: up / weight } : null;
}

function sumOfSquares(sightings: readonly Sighting[], eye: Viewer): number {
  return sightings.reduce((sum, sighting) => sum + residuals(sighting, eye).reduce((s, r) => s + r * r, 0), 0);
}

function residuals({ stage: [x, y, z], picture }: Sighting, eye: Viewer): readonly [number, number] {
  const drawnIn = y / (eye.distance + y);
  return [picture[0] - (x + (eye.offset - x) * drawnIn), picture[1] - (z + (eye.eyeHeight - z) * drawnIn)];
}

/** Normal equations of the fit at an eye, over (D, h, e). */
function normalEquations(
  sightings: readonly Sighting[],
  eye: Viewer,
): { readonly matrix: Matrix3; readonly right: Vector3 } {
  const m = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  const right: [number, number, number] = [0, 0, 0];
  for (const sighting of sightings) {
    const [x, y, z] = sighting.stage;
    const depth = eye.distance + y;
    const drawnIn = y / depth;
    const [rx, rz] = residuals(sighting, eye);
    const rows: readonly (readonly [Vector3, number])[] = [
      [[((x - eye.offset) * y) / depth ** 2, 0, drawnIn], rx],
      [[((z - eye.eyeHeight) * y) / depth ** 2, drawnIn, 0], rz],
    ];
    for (const [row, residual] of rows)
      for (let i = 0; i < 3; i++) {
        right[i] = (right[i] as number) + (row[i] as number) * residual;
        for (let j = 0; j < 3; j++) m[3 * i + j] = (m[3 * i + j] as number) + (row[i] as number) * (row[j] as number);
      }
  }
  const row = (i: number): Vector3 => [m[i] as number, m[i + 1] as number, m[i + 2] as number];
  return { matrix: [row(0), row(3), row(6)], right };
}

function refine(sightings: readonly Sighting[], start: Viewer): Viewer | null {
  let eye = start;
  let squares = sumOfSquares(sightings, eye);
  for (let step = 0; step < MAX_STEPS; step++) {
    const { matrix, right } = normalEquations(sightings, eye);
    const inverse = invert3(matrix);
    if (!inverse) return null;
    const change = multiply3(inverse, right);
    const next = shortenUntilBetter(sightings, eye, change, squares);
    if (!next) break;
    const moved = Math.abs(next.eye.distance - eye.distance) / eye.distance;
    eye = next.eye;
    squares = next.squares;
    if (moved < SETTLED) break;
  }
  return eye;
}

function shortenUntilBetter(
  sightings: readonly Sighting[],
  eye: Viewer,
  [dD, dh, de]: Vector3,
  squares: number,
): { readonly eye: Viewer; readonly squares: number } | null {
  for (let share = 1; share > 1e-4; share /= 2) {
    const next = {
      distance: eye.distance + share * dD,
      eyeHeight: eye.eyeHeight + share * dh,
      offset: eye.offset + share * de,
    };
    if (!sightings.every(({ stage }) => next.distance > 0 && next.distance + stage[1] > 0)) continue;
    const left = sumOfSquares(sightings, next);
    if (left < squares) return { eye: next, squares: left };
  }
  return null;
}

/** Whether a hand of this sigma, metres on the picture plane, leaves distance and height within half of themselves. */
function canTell(sightings: readonly Sighting[], eye: Viewer, sigma: number): boolean {
  const inverse = invert3(normalEquations(sightings, eye).matrix);
  if (!inverse) return false;
  const spread = (variance: number) => Math.sqrt(Math.max(variance, 0)) * sigma;
  const limit = CANNOT_TELL * eye.distance;
  return (
    spread(inverse[0][0]) < limit &&
    spread(inverse[1][1]) < CANNOT_TELL * Math.abs(eye.eyeHeight) &&
    spread(inverse[2][2]) < limit
  );
}
