import { readMarksJson } from "../../exercise/read-marks";
import { no } from "../accounts/answer";
import { handIn, type NotHandedIn } from "../homework/hand-in";
import type { Receipt } from "../homework/receipt";
import type { Store } from "../store/store";
import type { PileHandIn } from "./requests";

/** Stands with every drawing on paper that the teacher does not call late: it lay on the desk before it was photographed. */
export const PAPER_IN_TIME = "Handed in on paper.";

/**
 * Hands a drawing on paper in for a student, once for each id: confirmed readings, graded here at the scale that their sheet was
 * printed at. It is in time unless the teacher says otherwise; then the server's clock and the due date decide. Attempts are
 * counted as the student's own.
 */
export async function handInFor(
  store: Store,
  { id, itemId, memberId, marks: sent, madeAt, late }: PileHandIn,
  now = new Date(),
): Promise<{ readonly ok: true; readonly receipt: Receipt } | NotHandedIn> {
  const reading = readMarksJson(sent);
  if (!reading.ok) return no("bad-marks", `These marks cannot be read: ${reading.problems[0]?.message ?? "unclear"}.`);
  const { scale, hints: _, ...others } = reading.marks;
  if (scale === undefined) return no("no-scale", "These marks do not say at which scale their sheet was printed.");
  const marks = { ...others, marks: others.marks.map((mark) => ({ ...mark, with: "paper" })) };
  const onPaper = { scale, inTimeReason: late ? null : PAPER_IN_TIME };
  const done = await handIn(store, { id, itemId, memberId, marks, madeAt, onPaper }, now);
  return done.ok ? done : { ...done, sentence: FOR_TEACHER[done.reason] ?? done.sentence };
}

/** What the student would be told in the second person. */
const FOR_TEACHER: Readonly<Partial<Record<NotHandedIn["reason"], string>>> = {
  gone: "This exercise is in the homework no more, or cannot be read any more. Load the page anew.",
  "bad-marks": "These readings are not of the exercise that was set. Read the photograph once more.",
  "not-yours": "This homework was not set to this student, or the drawing was handed in for another already.",
  "no-attempt-left":
    "This student has used all attempts at this exercise. Allow more in the homework, then confirm once more.",
};
