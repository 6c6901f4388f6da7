import type { SheetPlace } from "../../sheet/place-drawings";
import type { PencilCorner, PencilLine } from "../drawing-reading";
import type { Cross } from "./find-crosses";

/** A line is taken on past its end to meet another, millimetres; lines that meet at a slant may stop farther off. */
const TAKEN_ON_MM = 1.5;
const TAKEN_ON_MOST_MM = 3;
const SLANT_MM = 0.5;
/** A line that goes on past a corner by no more than this ends there, millimetres. */
const RUNS_OVER_MM = 1.9;
/** Lines that turn less than this from each other do not meet in a place worth naming (sine). */
const LEAST_SINE = 0.09;
/** Meetings nearer than this are one corner, millimetres. */
const ONE_CORNER_MM = 1.1;
/** How much the ends themselves say of a corner's place against the lines through it. */
const ENDS_WEIGH = 0.05;

/** A line's end is a place of its own this far from any corner, millimetres; of strokes as short as a letter's it is none. */
const OWN_END_MM = 0.6;
const OWN_END_LEAST_MM = 4.5;

/** A cross and a corner nearer than this are one, millimetres. */
const SAME_PLACE_MM = 0.9;

type Meeting = { readonly at: SheetPlace; readonly lines: readonly number[]; readonly ending: readonly number[] };

/** Where pencil lines end, meet and cross; corners first, then crossings, then loose ends. Millimetres of the sheet. */
export function findCorners(lines: readonly PencilLine[], crosses: readonly Cross[] = []): readonly PencilCorner[] {
  const meetings: Meeting[] = [];
  const met = lines.map(() => [false, false] as [boolean, boolean]);
  for (let i = 0; i < lines.length; i++)
    for (let k = i + 1; k < lines.length; k++) {
      const found = meet(lines[i] as PencilLine, lines[k] as PencilLine);
      if (!found) continue;
      const ends = [i, k].map((line, side) => ({ line, end: found.ends[side] as number | null }));
      for (const { line, end } of ends) if (end !== null) (met[line] as [boolean, boolean])[end] = true;
      meetings.push({
        at: found.at,
        lines: [i, k],
        ending: ends.flatMap(({ line, end }) => (end === null ? [] : [line])),
      });
    }
  lines.forEach(({ from, to }, i) => {
    if (!met[i]?.[0]) meetings.push({ at: from, lines: [i], ending: [i] });
    if (!met[i]?.[1]) meetings.push({ at: to, lines: [i], ending: [i] });
  });
  meetings.sort((a, b) => rank(a) - rank(b));
  const groups: Meeting[][] = [];
  for (const meeting of meetings) {
    const near = groups
      .map((group) => ({ group, off: apart(middle(group), meeting.at) }))
      .filter(({ off }) => off < ONE_CORNER_MM)
      .sort((a, b) => a.off - b.off)[0];
    if (near) near.group.push(meeting);
    else groups.push([meeting]);
  }
  const corners = groups.map((group) => cornerOf(group, lines));
  return [...corners, ...ownEnds(lines, corners), ...lostCrosses(crosses, corners, lines)];
}

/** Ends of lines that reach over or stop short of their corners: a letter beside an end makes a corner of it that is none. */
function ownEnds(lines: readonly PencilLine[], corners: readonly PencilCorner[]): readonly PencilCorner[] {
  return lines.flatMap(({ from, to }, i) =>
    apart(from, to) < OWN_END_LEAST_MM
      ? []
      : [from, to]
          .filter((end) => corners.every(({ at }) => apart(at, end) > OWN_END_MM))
          .map((at): PencilCorner => ({ at, lines: [i], kind: "end" })),
  );
}

/** Crosses whose strokes were not both found as lines, since others cover them or print does. */
function lostCrosses(
  crosses: readonly Cross[],
  corners: readonly PencilCorner[],
  lines: readonly PencilLine[],
): readonly PencilCorner[] {
  return crosses
    .filter(({ at }) => corners.every((corner) => apart(corner.at, at) > SAME_PLACE_MM || corner.lines.length < 2))
    .map(({ at }) => ({
      at,
      lines: lines.flatMap(({ from, to }, i) => (liesOn(at, from, to) ? [i] : [])),
      kind: "crossing",
    }));
}

function liesOn(at: SheetPlace, from: SheetPlace, to: SheetPlace): boolean {
  const length = apart(from, to);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const along = (at[0] - from[0]) * ux + (at[1] - from[1]) * uy;
  const beside = Math.abs((at[0] - from[0]) * uy - (at[1] - from[1]) * ux);
  return along >= 0 && along <= length && beside < SAME_PLACE_MM;
}

/** Corners where more lines end are surer, and gather the others round them. */
function rank({ lines, ending }: Meeting): number {
  return lines.length === 1 ? 3 : 2 - ending.length;
}

function cornerOf(group: readonly Meeting[], lines: readonly PencilLine[]): PencilCorner {
  const through = [...new Set(group.flatMap((meeting) => meeting.lines))];
  const ending = new Set(group.flatMap((meeting) => meeting.ending));
  const kind = ending.size === 0 ? "crossing" : through.length === 1 ? "end" : "corner";
  return {
    at: nearestTo(
      through.map((i) => lines[i] as PencilLine),
      middle(group),
    ),
    lines: through,
    kind,
  };
}

/** The place nearest to all lines (least squares), held by the meetings' own middle where they run nearly alike. */
function nearestTo(lines: readonly PencilLine[], hold: SheetPlace): SheetPlace {
  let [a, b, c, p, q] = [ENDS_WEIGH, 0, ENDS_WEIGH, 0, 0];
  for (const { from, to } of lines) {
    const length = apart(from, to);
    const [nx, ny] = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
    // A longer line says more surely where it runs.
    const weight = Math.min(1, length / 8);
    const off = (from[0] - hold[0]) * nx + (from[1] - hold[1]) * ny;
    a += weight * nx * nx;
    b += weight * nx * ny;
    c += weight * ny * ny;
    p += weight * nx * off;
    q += weight * ny * off;
  }
  const det = a * c - b * b;
  const [x, y] = [(c * p - b * q) / det, (a * q - b * p) / det];
  return Math.hypot(x, y) <= ONE_CORNER_MM ? [hold[0] + x, hold[1] + y] : hold;
}

/** Where two lines meet, with which end of each is there (0 its first, 1 its second, null: it goes on through); null where they do not. */
function meet(one: PencilLine, other: PencilLine): { at: SheetPlace; ends: readonly (number | null)[] } | null {
  const [l1, l2] = [apart(one.from, one.to), apart(other.from, other.to)];
  const [ux, uy] = [(one.to[0] - one.from[0]) / l1, (one.to[1] - one.from[1]) / l1];
  const [vx, vy] = [(other.to[0] - other.from[0]) / l2, (other.to[1] - other.from[1]) / l2];
  const sine = ux * vy - uy * vx;
  if (Math.abs(sine) < LEAST_SINE) return null;
  const [dx, dy] = [other.from[0] - one.from[0], other.from[1] - one.from[1]];
  const [s, t] = [(dx * vy - dy * vx) / sine, (dx * uy - dy * ux) / sine];
  const most = Math.min(TAKEN_ON_MOST_MM, TAKEN_ON_MM + SLANT_MM / Math.abs(sine));
  if (s < -most || s > l1 + most || t < -most || t > l2 + most) return null;
  const end = (at: number, length: number) => {
    const nearer = at < length / 2 ? 0 : 1;
    const over = nearer === 0 ? at : length - at;
    // A short line's two ends must not both be at one corner, nor its middle.
    return over <= Math.min(RUNS_OVER_MM, length * 0.3) ? nearer : null;
  };
  return { at: [one.from[0] + s * ux, one.from[1] + s * uy], ends: [end(s, l1), end(t, l2)] };
}

function middle(group: readonly Meeting[]): SheetPlace {
  const [x, y] = group.reduce(([sx, sy], { at }) => [sx + at[0], sy + at[1]], [0, 0]);
  return [x / group.length, y / group.length];
}

function apart(a: SheetPlace, b: SheetPlace): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
