import { missInSigmas } from "@/lib/perspective/whose-eye/drawn-line";
import type { WhoseEye } from "@/lib/perspective/whose-eye/eye-answer";
import type { DrawingLine, DrawingPlace, MarkedDrawing } from "@/lib/perspective/whose-eye/marked-drawing";
import { type EyeWork, GROUP_LETTERS } from "./eye-work";

/** A line that misses where its group meets by more sigmas than this was drawn past it: a steady hand does so once in eighty. */
const CLEAR_MISS = 2.5;

/** What is known of the eye; of the horizon and the CVP also where they lie on the picture, for someone with a ruler. */
export function sayKnown(eye: WhoseEye): readonly string[] {
  if (eye.kind === "refused") return [];
  const { horizon, cvp } = eye.figures;
  const places = [
    ...(horizon
      ? [`The horizon lies ${far(horizon.value, "above", "under")} the picture's upper edge (${give(horizon.give)}).`]
      : []),
    ...(cvp
      ? [
          `The centre vanishing point lies ${far(cvp.value, "right of", "left of")} the picture's left edge (${give(cvp.give)}).`,
        ]
      : []),
  ];
  // What is told begins with how well these two are known, which is said here with their places.
  return [...places, ...eye.told.slice(places.length)];
}

/** Where each group's lines meet, and which of them miss that, a sentence or two a group. */
export function sayMeetings(work: EyeWork, drawing: MarkedDrawing, eye: WhoseEye): readonly string[] {
  const horizon = eye.kind === "told" ? (eye.figures.horizon?.value ?? null) : null;
  return drawing.parallels.flatMap(({ lines, bearingDeg }, g) => {
    const letter = GROUP_LETTERS[g] ?? "";
    const meeting = eye.meetings[g];
    if (lines.length === 0 || !meeting) return [];
    if (bearingDeg === 0) return [`${letter} runs along the plaster line: drawn level, it meets nowhere.`];
    if (lines.length === 1) return [`${letter} has one line: where it goes, a second one tells.`];
    if (meeting.kind === "unknown")
      return [`Where ${letter} meets cannot be told: its lines are short, or lie on one another.`];
    if (meeting.kind === "parallel")
      return [`${letter} stays parallel on the paper, or meets so far off that it might as well.`];
    const [X, Z] = meeting.at;
    const off = horizon === null ? null : Z - horizon;
    const level =
      off === null
        ? `${far(Z, "above", "under")} its upper edge`
        : Math.abs(off) < NEXT_TO_NOTHING_MM
          ? "on the horizon"
          : `${far(off, "over", "under")} the horizon`;
    const missing = missesOf(work, drawing, g, meeting.at);
    const misses =
      missing.length > 0
        ? ` ${missing.map(({ id, mm }) => `${id} misses it: its near end is ${round(mm)} mm off.`).join(" ")}`
        : lines.length > 2
          ? " None of its lines misses that by more than a hand does."
          : "";
    return [`${letter} meets ${far(X, "right of", "left of")} the picture's left edge, ${level}.${misses}`];
  });
}

const NEXT_TO_NOTHING_MM = 0.05;

/** The lines of a group that clearly miss a place, and by how much their nearer end would have to move, millimetres. */
function missesOf(work: EyeWork, drawing: MarkedDrawing, g: number, at: DrawingPlace) {
  const numbers = (work.groups[g]?.lines ?? []).flatMap(([a, b], i) => (a && b ? [i + 1] : []));
  const lines = drawing.parallels[g]?.lines ?? [];
  // Two lines always meet.
  if (lines.length < 3) return [];
  return lines.flatMap((ends, i) =>
    Math.abs(missInSigmas({ ends, sigma: drawing.sigmaMm }, [at[0], at[1], 1])) > CLEAR_MISS
      ? [{ id: `${GROUP_LETTERS[g]}${numbers[i]}`, mm: nearEndOff(ends, at) }]
      : [],
  );
}

function nearEndOff([p, q]: DrawingLine, at: DrawingPlace): number {
  const fromAt = (place: DrawingPlace) => Math.hypot(place[0] - at[0], place[1] - at[1]);
  const [near, away] = fromAt(p) >= fromAt(q) ? [p, q] : [q, p];
  const [ux, uy] = [away[0] - at[0], away[1] - at[1]];
  const long = Math.hypot(ux, uy);
  return long > 0 ? Math.abs(ux * (near[1] - at[1]) - uy * (near[0] - at[0])) / long : 0;
}

/** What the eye comes to in one line, to be seen while a handle is dragged. */
export function sayInShort(eye: WhoseEye | null): string {
  if (!eye) return "Nothing is marked yet.";
  if (eye.kind === "refused") return "These marks do not go together.";
  const { horizon, cvp, distanceMm } = eye.figures;
  if (!horizon) return "The horizon is not known yet.";
  const across = cvp ? `, the CVP ${round(cvp.value)} mm across` : "";
  const off = distanceMm ? `; the eye is ${distanceMm.value.toFixed(0)} mm before the paper` : "";
  return `The horizon lies ${round(-horizon.value)} mm down${across}${off}.`;
}

function far(mm: number, more: string, less: string): string {
  return `${round(Math.abs(mm))} mm ${mm >= 0 ? more : less}`;
}

function round(mm: number): string {
  return mm.toFixed(mm < 999.5 ? 1 : 0);
}

function give(mm: number): string {
  return `give or take ${mm.toFixed(1)} mm`;
}
