import type { DxfEntity } from "dxf";
import { bulgePoints, ellipsePoints } from "../bend-points";
import { splinePoints } from "./spline-points";

type Pair = readonly [number, number];
export type ElementLine = { readonly points: readonly Pair[]; readonly curved: boolean };
type Element = Exclude<DxfEntity, { type: "INSERT" }>;
type Vertex = { readonly x?: number; readonly y?: number; readonly bulge?: number };

const FULL_TURN = 2 * Math.PI;

/**
 * The lines of one element, in its own coordinates, or what keeps it from being one. A polyline with bulges comes as its straight
 * runs and its bends. `flipped` tells that it is drawn on the back of the sheet, where its axes run the other way.
 */
export function elementLines(element: Element, flipped: boolean): readonly ElementLine[] | string {
  const lines = linesOf(element, flipped);
  if (typeof lines === "string") return lines;
  const finite = lines.every(({ points }) => points.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y)));
  return finite ? lines : "elements with a number missing";
}

function linesOf(element: Element, flipped: boolean): readonly ElementLine[] | string {
  switch (element.type) {
    case "LINE":
      return [{ points: [place(element.start), place(element.end)], curved: false }];
    case "LWPOLYLINE":
    case "POLYLINE":
      return polylineLines(element.vertices, element.closed === true);
    case "CIRCLE":
      return [bend(place(element), [element.r ?? Number.NaN, 0], 1, 0, FULL_TURN)];
    case "ARC": {
      const { startAngle = Number.NaN, endAngle = Number.NaN } = element;
      return [bend(place(element), [element.r ?? Number.NaN, 0], 1, startAngle, sweepOf(startAngle, endAngle))];
    }
    case "ELLIPSE": {
      const { majorX = Number.NaN, majorY = Number.NaN, axisRatio = Number.NaN } = element;
      const { startAngle = 0, endAngle = FULL_TURN } = element;
      const ratio = flipped ? -axisRatio : axisRatio;
      return [bend(place(element), [majorX, majorY], ratio, startAngle, sweepOf(startAngle, endAngle))];
    }
    case "SPLINE": {
      const points = splinePoints({
        degree: element.degree ?? 3,
        knots: element.knots,
        controls: element.controlPoints.map(place),
        weights: element.weights ?? [],
      });
      return points ? [{ points, curved: true }] : "curves without the points that steer them";
    }
  }
}

function place({ x = Number.NaN, y = Number.NaN }: { readonly x?: number; readonly y?: number }): Pair {
  return [x, y];
}

function bend(centre: Pair, major: Pair, ratio: number, from: number, sweep: number): ElementLine {
  const minor: Pair = [-major[1] * ratio, major[0] * ratio];
  return { points: ellipsePoints(centre, major, minor, from, sweep), curved: true };
}

/** Counter-clockwise from one angle to another, above 0 and at most a full turn. */
function sweepOf(from: number, to: number): number {
  const turn = (((to - from) % FULL_TURN) + FULL_TURN) % FULL_TURN;
  return turn > 1e-12 ? turn : FULL_TURN;
}

function polylineLines(vertices: readonly Vertex[], closed: boolean): readonly ElementLine[] | string {
  const first = vertices[0];
  if (!first || vertices.length < 2) return "polylines of fewer than two points";
  const lines: ElementLine[] = [];
  let run: Pair[] = [place(first)];
  const steps = closed ? vertices.length : vertices.length - 1;
  for (let i = 0; i < steps; i += 1) {
    const from = vertices[i] as Vertex;
    const to = place(vertices[(i + 1) % vertices.length] as Vertex);
    if (!from.bulge) {
      run.push(to);
      continue;
    }
    if (run.length > 1) lines.push({ points: run, curved: false });
    lines.push({ points: bulgePoints(place(from), to, from.bulge), curved: true });
    run = [to];
  }
  if (run.length > 1) lines.push({ points: run, curved: false });
  return lines;
}
