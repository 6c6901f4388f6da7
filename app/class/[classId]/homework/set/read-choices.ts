import { readCourse } from "@/app/_parts/course/course";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { classWithMembers } from "@/lib/classroom/accounts/classes";
import { habitsHeld } from "@/lib/classroom/homework/habit-holders";
import { plansOfTeacher } from "@/lib/classroom/library/read-library";
import type { Store } from "@/lib/classroom/store/store";
import { UNITS } from "@/lib/exercise/exercise";
import { habitName } from "@/lib/habits/habit-name";
import type { Choices } from "./homework-fields";

/** What homework of a teacher's class can be made of, and whom it can be set to. */
export async function readChoices(store: Store, classId: string, teacherId: string): Promise<Choices> {
  const [found, course] = [await classWithMembers(store, classId), await readCourse()];
  const held = [...(await habitsHeld(store.db, classId))];
  const plans = await plansOfTeacher(store, teacherId);
  return {
    plans: plans.filter(({ thrown_at }) => thrown_at === null).map(({ id, title }) => ({ id, title })),
    course: UNITS.map((unit) => ({
      unit,
      title: UNIT_WORDS[unit].title,
      exercises: course.exercises
        .filter((exercise) => exercise.unit === unit)
        .map(({ id, title, level }) => ({ id, title, level })),
    })),
    members: (found?.members ?? []).map(({ id, name }) => ({ id, name })),
    habits: held.map(([id, students]) => ({ id, name: habitName(id), students: students.size })),
  };
}
