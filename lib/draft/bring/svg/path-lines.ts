import svgpath from "svgpath";
import { bezierPoints } from "../../../geometry/bezier-points";

type Pair = readonly [number, number];
export type PathLine = { readonly points: readonly Pair[]; readonly curved: boolean };

/** Straight pieces of one bend. */
const PIECES = 18;

/** The lines of path data, straight runs and bends apart; null when it cannot be read. An arc is within 0.03 % of its radius. */
export function pathLines(d: string): readonly PathLine[] | null {
  const path = svgpath(d);
  // Not among the declared members: what was wrong with the data, or nothing.
  if ((path as unknown as { readonly err: string }).err) return null;
  const lines: PathLine[] = [];
  let run: Pair[] = [];
  let start: Pair = [0, 0];
  let at: Pair = [0, 0];
  const endRun = () => {
    if (run.length > 1) lines.push({ points: run, curved: false });
    run = [at];
  };
  const lineTo = (to: Pair) => {
    run.push(to);
    at = to;
  };
  const bendTo = (one: Pair, two: Pair, to: Pair) => {
    endRun();
    lines.push({ points: [...bezierPoints(at, one, two, to, PIECES).slice(0, -1), to], curved: true });
    at = to;
    run = [at];
  };
  path
    .abs()
    .unshort()
    .unarc()
    .iterate((segment) => {
      switch (segment[0]) {
        case "M":
          endRun();
          at = [segment[1], segment[2]];
          start = at;
          run = [at];
          break;
        case "L":
          lineTo([segment[1], segment[2]]);
          break;
        case "H":
          lineTo([segment[1], at[1]]);
          break;
        case "V":
          lineTo([at[0], segment[1]]);
          break;
        case "C":
          bendTo([segment[1], segment[2]], [segment[3], segment[4]], [segment[5], segment[6]]);
          break;
        case "Q": {
          const [cx, cy, x, y] = [segment[1], segment[2], segment[3], segment[4]];
          bendTo(twoThirds(at, [cx, cy]), twoThirds([x, y], [cx, cy]), [x, y]);
          break;
        }
        case "Z":
        case "z":
          if (at[0] !== start[0] || at[1] !== start[1]) lineTo(start);
          endRun();
          break;
      }
    });
  endRun();
  return lines.every(({ points }) => points.every((point) => point.every(Number.isFinite))) ? lines : null;
}

/** A quadratic curve's control point for a cubic one. */
function twoThirds(end: Pair, control: Pair): Pair {
  return [end[0] + ((control[0] - end[0]) * 2) / 3, end[1] + ((control[1] - end[1]) * 2) / 3];
}
