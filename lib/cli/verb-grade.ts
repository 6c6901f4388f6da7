import type { Exercise } from "../exercise/exercise";
import type { MarkSet } from "../exercise/marks";
import { nearestName } from "../exercise/nearest-name";
import { readMarks } from "../exercise/read-marks";
import type { Grade } from "../grading/grade";
import { gradeMarks, unaskedMark } from "../grading/grade-marks";
import { type CallError, type Outcome, refused, wrongCall } from "./outcome";
import { firstOf, isLines, type Piece, readPieces, readSoundExercise } from "./read-input";

/** `grade EXERCISE MARKS...`: one JSON document for one file, one a line for several or for a `.jsonl`. */
export async function grade(files: readonly string[], text: boolean): Promise<Outcome> {
  const [exerciseFile, ...marksFiles] = files;
  if (exerciseFile === undefined || marksFiles.length === 0)
    return wrongCall("grade needs an exercise and at least one file of marks", "grade EXERCISE MARKS...");
  const exercise = readSoundExercise(exerciseFile);
  if (!exercise.ok) return refused(...exercise.errors);
  const single = marksFiles.length === 1 && !isLines(marksFiles[0] as string);
  const print = (result: Grade) =>
    text ? gradeInWords(result, exercise.value) : JSON.stringify(printable(result), null, single ? 2 : 0);
  const [lines, errors]: [string[], CallError[]] = [[], []];
  for (const file of marksFiles)
    for await (const piece of readPieces(file)) {
      const result = gradePiece(exercise.value, piece);
      if (Array.isArray(result)) errors.push(...result);
      else lines.push(print(result as Grade));
    }
  return { exitCode: errors.length > 0 ? 2 : 0, out: lines.join("\n"), errors };
}

function gradePiece(exercise: Exercise, { file, line, text }: Piece): Grade | readonly CallError[] {
  if (!text.ok) return text.errors;
  const reading = readMarks(text.value);
  const problems = reading.ok ? whyUngradable(exercise, reading.marks) : reading.problems;
  if (problems.length > 0 || !reading.ok) return [firstOf(file, problems, line)];
  return gradeMarks(exercise, reading.marks);
}

/** What keeps well-formed marks from being graded on this exercise. */
function whyUngradable(exercise: Exercise, marks: MarkSet) {
  if (marks.exercise !== exercise.id)
    return [
      {
        where: "/exercise",
        message: `these marks are for "${marks.exercise}", not for "${exercise.id}"`,
        hint: "grade them with their own exercise",
      },
    ];
  const index = unaskedMark(exercise, marks);
  if (index === null) return [];
  const point = marks.marks[index]?.point ?? "";
  return [
    {
      where: `/marks/${index}/point`,
      message: `the exercise does not ask for ${point}`,
      hint: `take it out, or did you mean ${nearestName(point, exercise.task.marks)}?`,
    },
  ];
}

/** A grade as the contract prints it: the feedback as one text, not in its parts. */
function printable(result: Grade) {
  return {
    exercise: result.exercise,
    score: result.score,
    outcome: result.outcome,
    marks: result.marks.map(({ words, habitPlace, ...mark }) => mark),
    missing: result.missing,
    habits: result.habits,
    impliedViewer: result.impliedViewer,
  };
}

function gradeInWords(result: Grade, exercise: Exercise): string {
  const head =
    result.outcome === "unready"
      ? `${exercise.title}: no marks yet`
      : `${exercise.title}: ${Math.round(result.score ?? 0)} of 100`;
  return [
    head,
    ...result.marks.map((mark) => `  ${mark.point}: ${Math.round(mark.score)}. ${mark.feedback}`),
    ...(result.missing.length > 0 ? [`  not placed: ${result.missing.join(", ")}`] : []),
  ].join("\n");
}
