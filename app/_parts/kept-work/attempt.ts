import type { ConstructionLine } from "@/app/_sheet/construction-line";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark, MarkSet, PointingDevice } from "@/lib/exercise/marks";

export const ATTEMPT_FORMAT = "plasterline.attempt/1";

export type Place = readonly [number, number];

/** A drawing under way: everything that a reload must bring back. */
export type Attempt = {
  readonly format: typeof ATTEMPT_FORMAT;
  readonly exercise: string;
  readonly version: number;
  /** Set down for good, in the order asked. */
  readonly marks: readonly Mark[];
  /** The correction of the last mark is on view. */
  readonly correcting: boolean;
  /** Where the mark now asked stands, not yet set down. */
  readonly pending: Place | null;
  readonly pendingWith: PointingDevice;
  /** Where it stood before, oldest first; null where it was not on the sheet. */
  readonly earlier: readonly (Place | null)[];
  readonly lines: readonly ConstructionLine[];
  readonly figure: boolean;
  /** Hints taken, by point. */
  readonly hints: Readonly<Record<string, number>>;
};

/** Enough for any patience, and a small thing to keep. */
const MOST_EARLIER = 100;

export function newAttempt(exercise: Pick<Exercise, "id" | "version">): Attempt {
  return {
    format: ATTEMPT_FORMAT,
    exercise: exercise.id,
    version: exercise.version,
    marks: [],
    correcting: false,
    pending: null,
    pendingWith: "mouse",
    earlier: [],
    lines: [],
    figure: true,
    hints: {},
  };
}

/** The index of the point on hand: the one asked, or the one whose correction is on view. */
export function stepOf(attempt: Attempt): number {
  return attempt.correcting ? attempt.marks.length - 1 : attempt.marks.length;
}

export function isFinished(attempt: Attempt, asked: readonly string[]): boolean {
  return !attempt.correcting && attempt.marks.length >= asked.length;
}

/** Notes where the mark stands, for undo; called when a pointer or a key begins to move it. */
export function beginMove(attempt: Attempt): Attempt {
  return { ...attempt, earlier: [...attempt.earlier, attempt.pending].slice(-MOST_EARLIER) };
}

export function moveMark(attempt: Attempt, at: Place | null, device: PointingDevice): Attempt {
  return attempt.correcting ? attempt : { ...attempt, pending: at, pendingWith: device };
}

/** Takes back the last move of the mark now asked. */
export function undoMove(attempt: Attempt): Attempt {
  const last = attempt.earlier.at(-1);
  return last === undefined ? attempt : { ...attempt, pending: last, earlier: attempt.earlier.slice(0, -1) };
}

/** Sets the mark down for good and shows its correction. */
export function commitMark(attempt: Attempt, asked: readonly string[]): Attempt {
  const point = asked[attempt.marks.length];
  if (attempt.correcting || attempt.pending === null || point === undefined) return attempt;
  const mark: Mark = { point, at: [attempt.pending[0], attempt.pending[1]], with: attempt.pendingWith };
  return { ...attempt, marks: [...attempt.marks, mark], correcting: true, pending: null, earlier: [] };
}

/** Goes on from a correction to the next point, or to the result after the last. */
export function goOn(attempt: Attempt): Attempt {
  return attempt.correcting ? { ...attempt, correcting: false } : attempt;
}

/** Takes one more hint for the point now asked. */
export function takeHint(attempt: Attempt, point: string): Attempt {
  if (attempt.correcting) return attempt;
  return { ...attempt, hints: { ...attempt.hints, [point]: hintsTaken(attempt, point) + 1 } };
}

export function hintsTaken({ hints }: Pick<Attempt, "hints">, point: string): number {
  return Object.hasOwn(hints, point) ? (hints[point] ?? 0) : 0;
}

export function addLine(attempt: Attempt, line: Omit<ConstructionLine, "id">): Attempt {
  const id = attempt.lines.reduce((most, each) => Math.max(most, each.id), 0) + 1;
  return { ...attempt, lines: [...attempt.lines, { ...line, id }] };
}

export function removeLine(attempt: Attempt, id: number): Attempt {
  return { ...attempt, lines: attempt.lines.filter((line) => line.id !== id) };
}

export function removeAllLines(attempt: Attempt): Attempt {
  return { ...attempt, lines: [] };
}

/** The marks as the file of a set of marks has them. */
export function markSetOf(attempt: Pick<Attempt, "exercise" | "version" | "marks" | "hints">, scale: string): MarkSet {
  return {
    format: "plasterline.marks/1",
    exercise: attempt.exercise,
    version: attempt.version,
    scale,
    marks: attempt.marks,
    ...(Object.keys(attempt.hints).length > 0 ? { hints: attempt.hints } : {}),
  };
}
