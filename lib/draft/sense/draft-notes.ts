import { checkSense } from "../../exercise/check-sense";
import { exercisePoints } from "../../exercise/exercise-points";
import type { Draft } from "../draft";
import { isHardMark, notesOfHardMarks } from "./hard-marks";
import type { Note } from "./note";
import { notesOfFindings } from "./notes-of-findings";

/**
 * Everything there is to remark on a draft, faults first: what the sense checks say, told of its things. Nothing here keeps an
 * author from drawing on.
 */
export function draftNotes(draft: Draft): readonly Note[] {
  const points = exercisePoints(draft.exercise);
  const findings = checkSense(draft.exercise);
  const notes = [
    ...notesOfFindings(
      draft,
      findings.filter((finding) => !isHardMark(finding)),
      points,
    ),
    ...notesOfHardMarks(draft, findings, points),
  ];
  return [...notes.filter(({ weight }) => weight === "fault"), ...notes.filter(({ weight }) => weight === "note")];
}
