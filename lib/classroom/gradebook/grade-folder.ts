import { type Exercise, UNITS } from "../../exercise/exercise";
import { readMarks } from "../../exercise/read-marks";
import { asDrawn } from "../../grading/as-drawn";
import { gradeMarks, unaskedMark } from "../../grading/grade-marks";
import { breathe } from "./breathe";
import type { Attempt, Gradebook } from "./gradebook";
import { makeGradebook } from "./make-gradebook";
import { nameFromFile } from "./name-from-file";

export type FolderFile = { readonly path: string; readonly text: string };

/** A file that was left out, or taken with a doubt. */
export type Doubt = { readonly path: string; readonly taken: boolean; readonly sentence: string };

export type GradedFolder = { readonly gradebook: Gradebook; readonly doubts: readonly Doubt[]; readonly taken: number };

type Taken = {
  readonly path: string;
  readonly name: string;
  readonly exercise: Exercise;
  readonly score: number | null;
};

const out = (path: string, sentence: string): Doubt => ({ path, taken: false, sentence });

/**
 * Files of marks, graded by the exercises they name: the same gradebook as a class's, with the best where a student sent
 * several for one exercise. Nothing is due here, so nothing is late or missing. Whose a file is comes from its name.
 */
export async function gradeFolder(
  files: readonly FolderFile[],
  findExercise: (id: string) => Exercise | null,
  now: string,
): Promise<GradedFolder> {
  const taken: Taken[] = [];
  const doubts: Doubt[] = [];
  for (const { path, text } of files) {
    await breathe();
    const reading = readMarks(text);
    if (!reading.ok) {
      doubts.push(out(path, "This is no file of marks saved by Plasterline."));
      continue;
    }
    const set = reading.marks;
    const exercise = findExercise(set.exercise);
    const name = nameFromFile(path, set.exercise);
    const unasked = exercise ? unaskedMark(exercise, set) : null;
    if (!exercise) doubts.push(out(path, `Its exercise, ${set.exercise}, is not in the course here.`));
    else if (unasked !== null)
      doubts.push(out(path, `It marks ${set.marks[unasked]?.point}, which ${exercise.title} does not ask here.`));
    else if (name === null)
      doubts.push(
        out(path, "Its name tells no student. Put the student's name before the exercise's in the file's name."),
      );
    else {
      const { score, missing } = gradeMarks(asDrawn(exercise, set), set);
      taken.push({ path, name, exercise, score });
      if (set.version !== undefined && set.version !== exercise.version)
        doubts.push({
          path,
          taken: true,
          sentence: `It was drawn for version ${set.version} of ${exercise.title}, and graded by version ${exercise.version}.`,
        });
      if (missing.length > 0)
        doubts.push({ path, taken: true, sentence: `It lacks ${missing.join(", ")}, which count 0.` });
    }
  }
  return { gradebook: bookOf(taken, now), doubts: [...doubts, ...alikeNames(taken)], taken: taken.length };
}

function bookOf(taken: readonly Taken[], now: string): Gradebook {
  const exercises = [...new Map(taken.map(({ exercise }) => [exercise.id, exercise])).values()].sort(
    (a, b) =>
      UNITS.indexOf(a.unit) - UNITS.indexOf(b.unit) || a.level - b.level || a.title.localeCompare(b.title, "en"),
  );
  const names = new Map(taken.map(({ name }) => [key(name), name]));
  const attempts = taken.map(
    ({ path, name, exercise, score }): Attempt => ({
      id: path,
      itemId: exercise.id,
      memberId: key(name),
      score,
      receivedAt: now,
      madeAt: null,
      inTimeReason: null,
    }),
  );
  const work = {
    id: "folder",
    title: "Folder",
    setAt: now,
    dueAt: null,
    counts: "best",
    weight: 1,
    toAll: true,
    criteria: [],
    columns: exercises.map(({ id, title }) => ({ itemId: id, title, exerciseId: id, weight: 1 })),
  } as const;
  return makeGradebook(
    {
      work: [work],
      students: [...names].map(([memberId, name]) => ({ memberId, name, number: null })),
      arrangements: [],
      attempts,
      overrides: [],
      points: [],
    },
    now,
  );
}

/** One student whatever capitals the file's name has. */
function key(name: string): string {
  return name.toLowerCase();
}

/** A name that is another's with more behind it may be the same student: "Wim" and "Wim Aalders". */
function alikeNames(taken: readonly Taken[]): readonly Doubt[] {
  const names = [...new Set(taken.map(({ name }) => key(name)))].sort();
  return taken.flatMap(({ path, name }) => {
    const longer = names.find((other) => other.startsWith(`${key(name)} `));
    return longer === undefined
      ? []
      : [
          {
            path,
            taken: true,
            sentence: `Is ${name} the same student as ${taken.find((each) => key(each.name) === longer)?.name}?`,
          },
        ];
  });
}
