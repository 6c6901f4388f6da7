import { checkSense } from "../../exercise/check-sense";
import { exercisePoints } from "../../exercise/exercise-points";
import type { Finding } from "../../exercise/finding";
import type { Draft } from "../draft";
import { doorNotes } from "./doors/door-notes";
import { eyeNotes } from "./eye-notes";
import { isHardMark, notesOfHardMarks } from "./hard-marks";
import type { Note } from "./note";
import { notesOfFindings } from "./notes-of-findings";
import { platformNotes } from "./platform-notes";
import { stairNotes } from "./stair-notes";

/**
 * Everything there is to remark on a draft, faults first: what the sense checks say, told of its things; doors that do not open;
 * an eye in the set; marks that are hard to grade; stairs and platforms against the usual limits. Nothing here keeps an author
 * from drawing on.
 */
export function draftNotes(draft: Draft): readonly Note[] {
  const { exercise } = draft;
  const points = exercisePoints(exercise);
  const findings = checkSense(exercise);
  const told = findings.filter((finding) => !isHardMark(finding) && !isStairLimit(finding));
  const notes = [
    ...notesOfFindings(draft, told, points),
    ...eyeNotes(exercise),
    ...doorNotes(exercise),
    ...notesOfHardMarks(draft, findings, points),
    ...stairNotes(exercise),
    ...platformNotes(exercise),
  ];
  return [...notes.filter(({ weight }) => weight === "fault"), ...notes.filter(({ weight }) => weight === "note")];
}

/** The sense checks name two limits of a flight; here all of them are gone through. */
function isStairLimit({ where, weight }: Finding): boolean {
  return weight === "note" && where.startsWith("/plan/stairs/");
}
