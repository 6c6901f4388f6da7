import { join } from "node:path";
import { type Exercise, UNITS } from "@/lib/exercise/exercise";
import { type CourseEntry, loadExercises } from "@/lib/exercise/load-exercises";
import { findVariant } from "@/lib/generator/find-variant";
import type { SheetPlace } from "./course-words";

/** Where the exercises lie: the project's own folder, or the one a teacher names. */
export function courseFolder(): string {
  return process.env.PLASTERLINE_EXERCISES ?? join(process.cwd(), "exercises");
}

export type Course = {
  /** In the order they are meant to be done: by unit, level, then the file's path. */
  readonly exercises: readonly Exercise[];
  readonly broken: readonly Extract<CourseEntry, { ok: false }>[];
};

/** The course as it stands on disk now: a teacher's new file is there on the next look. */
export async function readCourse(): Promise<Course> {
  const entries = await loadExercises(courseFolder());
  const exercises = entries.flatMap((entry) => (entry.ok ? [entry.exercise] : []));
  const broken = entries.flatMap((entry) => (entry.ok ? [] : [entry]));
  return { exercises: exercises.sort(byCourse), broken };
}

function byCourse(a: Exercise, b: Exercise): number {
  return UNITS.indexOf(a.unit) - UNITS.indexOf(b.unit) || a.level - b.level;
}

export type Found =
  | {
      readonly kind: "found";
      readonly exercise: Exercise;
      readonly sheet: SheetPlace;
      readonly next: { readonly id: string; readonly title: string } | null;
    }
  | { readonly kind: "broken"; readonly entry: Extract<CourseEntry, { ok: false }> }
  | { readonly kind: "unknown" };

/**
 * The exercise of an id; a file that cannot be read goes by its name. An id that the course does not have may be that of a
 * generated exercise, which is made on the spot.
 */
export function findExercise(course: Course, id: string): Found {
  const at = course.exercises.findIndex((exercise) => exercise.id === id);
  const exercise = course.exercises[at];
  if (!exercise) {
    const entry = course.broken.find(({ file }) => nameOf(file) === id);
    if (entry) return { kind: "broken", entry };
    const made = findVariant(id);
    return made
      ? { kind: "found", exercise: made.exercise, sheet: { variant: made.seed }, next: null }
      : { kind: "unknown" };
  }
  const unit = course.exercises.filter((each) => each.unit === exercise.unit);
  const next = course.exercises[at + 1];
  return {
    kind: "found",
    exercise,
    sheet: [unit.indexOf(exercise) + 1, unit.length],
    next: next ? { id: next.id, title: next.title } : null,
  };
}

/** A file's name without its ending, and without the number that may put it in order. */
function nameOf(file: string): string {
  return (file.split("/").at(-1) ?? "").replace(/^\d+-/, "").replace(/\.json$/, "");
}
