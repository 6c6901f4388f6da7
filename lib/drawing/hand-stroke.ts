import rough from "roughjs";
import type { DrawingPoint } from "./display-list";

/**
 * Usage: `<path d={handPath(points, stroke.id, { unitsPerMm, closed: stroke.closed })} fill="none" />`, points in any unit
 * of the screen or the paper. Fill a tone with `ruledPath` under it. The same id gives the same line at every zoom.
 */
export type HandOptions = {
  /** How many of the points' units make a millimetre of paper. */
  readonly unitsPerMm: number;
  readonly closed?: boolean;
};

/** A hand-drawn line leaves the true one by no more than this anywhere, its ends included, millimetres of paper. */
export const HAND_REACH_MM = 0.25;

/** A confident line: a rough line of strength 0.6, never straying past `HAND_REACH_MM` (see the test). */
const ROUGHNESS = 0.6;
const BOWING = 0.8;
/** The renderer's bow grows with length; beyond this it is held, millimetres. */
const BOW_HELD_FROM_MM = 200;
/** Lines run a little past their corners, as drafters let them. */
const OVERSHOOT_MM = 0.22;
/** Of a curve: how far its points move. The renderer's own formula makes of it at most 0.09 mm. */
const CURVE_ROUGHNESS = 0.06;
/** Shorter curves are drawn steadier, or a small circle would lose its shape, millimetres. */
const CURVE_FULL_MM = 40;
/** A vertex that turns less than this belongs to a curve, radians, if enough of them follow each other. */
const CURVE_TURN = (16 * Math.PI) / 180;
const CURVE_MIN_POINTS = 5;
/** Curve points closer than this only make it shake, millimetres. */
const CURVE_SPACING_MM = 2.5;
const CURVE_MAX_SKIP = 3;

/** The path of a line drawn by hand, as SVG path data. Empty for fewer than two points. */
export function handPath(points: readonly DrawingPoint[], id: string, { unitsPerMm, closed }: HandOptions): string {
  const mm = points.map(([x, y]): DrawingPoint => [x / unitsPerMm, y / unitsPerMm]);
  const whole = closed && mm.length > 2 ? [...mm, mm[0] as DrawingPoint] : mm;
  const seed = seedOf(id);
  const generator = rough.generator();
  return curvesAndLines(whole)
    .flatMap((run, i) => {
      const runSeed = seedOf(`${seed}.${i}`);
      const drawn = run.length > 2 ? drawCurve(run, runSeed) : drawLine(run, runSeed);
      return drawn.sets.flatMap((set) => set.ops);
    })
    .map(({ op, data }) => PATH_LETTER[op] + data.map((value) => short(value * unitsPerMm)).join(" "))
    .join("");

  function drawLine(run: Run, runSeed: number) {
    const [a, b] = run as readonly [DrawingPoint, DrawingPoint];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const past = length > 0 ? (OVERSHOOT_MM * share(runSeed)) / length : 0;
    const [dx, dy] = [(b[0] - a[0]) * past, (b[1] - a[1]) * past];
    return generator.line(a[0] - dx, a[1] - dy, b[0] + dx, b[1] + dy, {
      seed: runSeed,
      roughness: ROUGHNESS,
      maxRandomnessOffset: HAND_REACH_MM,
      bowing: BOWING * Math.min(1, BOW_HELD_FROM_MM / Math.max(length, 1)),
      preserveVertices: true,
      disableMultiStroke: true,
    });
  }

  function drawCurve(run: Run, runSeed: number) {
    const thinned = thin(run).map(([x, y]): [number, number] => [x, y]);
    const roughness = CURVE_ROUGHNESS * Math.min(1, lengthOf(run) / CURVE_FULL_MM);
    return generator.curve(thinned, { seed: runSeed, roughness, disableMultiStroke: true });
  }
}

/** The exact path through the points, as SVG path data. */
export function ruledPath(points: readonly DrawingPoint[], closed = false): string {
  if (points.length < 2) return "";
  const data = points.map(([x, y]) => `${short(x)} ${short(y)}`).join("L");
  return `M${data}${closed ? "Z" : ""}`;
}

const PATH_LETTER = { move: "M", lineTo: "L", bcurveTo: "C" } as const;

/** Two points: a straight line; more: a curve through them. */
type Run = readonly DrawingPoint[];

/** Cuts a polyline at its corners into straight lines and curves. */
function curvesAndLines(points: readonly DrawingPoint[]): Run[] {
  const runs: Run[] = [];
  let start = 0;
  for (let i = 1; i < points.length; i++) {
    if (i < points.length - 1 && turnAt(points, i) < CURVE_TURN) continue;
    const run = points.slice(start, i + 1);
    if (run.length >= CURVE_MIN_POINTS) runs.push(run);
    else for (let k = 1; k < run.length; k++) runs.push(run.slice(k - 1, k + 1));
    start = i;
  }
  return runs;
}

function turnAt(points: readonly DrawingPoint[], i: number): number {
  const [a, b, c] = points.slice(i - 1, i + 2) as [DrawingPoint, DrawingPoint, DrawingPoint];
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

function lengthOf(run: Run): number {
  return run.reduce(
    (sum, p, i) => sum + (i > 0 ? Math.hypot(p[0] - (run[i - 1]?.[0] ?? 0), p[1] - (run[i - 1]?.[1] ?? 0)) : 0),
    0,
  );
}

/** Leaves out curve points that lie close together, never the ends. */
function thin(run: Run): Run {
  const kept: DrawingPoint[] = [];
  let skipped = 0;
  run.forEach((point, i) => {
    const last = kept.at(-1);
    const near = last && Math.hypot(point[0] - last[0], point[1] - last[1]) < CURVE_SPACING_MM;
    if (i > 0 && i < run.length - 1 && near && skipped < CURVE_MAX_SKIP) {
      skipped++;
      return;
    }
    kept.push(point);
    skipped = 0;
  });
  const [before, last] = kept.slice(-2) as [DrawingPoint, DrawingPoint];
  if (kept.length > 3 && Math.hypot(last[0] - before[0], last[1] - before[1]) < CURVE_SPACING_MM / 2)
    kept.splice(-2, 1);
  return kept;
}

/** A stable odd seed from a text (the FNV-1a hash); the renderer takes 0 for "any". */
function seedOf(id: string): number {
  let hash = 0x811c9dc5;
  for (const letter of id) hash = Math.imul(hash ^ (letter.codePointAt(0) as number), 0x01000193);
  return (hash >>> 1) | 1;
}

/** A share of 0 to 1 that goes with a seed. */
function share(seed: number): number {
  return (seed % 1009) / 1009;
}

/** Thousandths of a unit are finer than any screen or paper shows. */
function short(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
