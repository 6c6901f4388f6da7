import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { readCourse } from "@/app/_parts/course/course";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { openClassroom } from "@/app/_server/classroom";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { classWithMembers } from "@/lib/classroom/accounts/classes";
import { habitsHeld } from "@/lib/classroom/homework/habit-holders";
import { UNITS } from "@/lib/exercise/exercise";
import { habitName } from "@/lib/habits/habit-name";
import { ClassFrame } from "../../../class-frame";
import { Closed } from "../../../closed";
import { SetHomeworkForm } from "./set-homework-form";
import "../homework.css";

export const metadata: Metadata = { title: "Set homework" };

type Props = { readonly params: Promise<{ readonly classId: string }> };

/** Where a teacher sets homework to a class. */
export default async function SetHomeworkPage({ params }: Props) {
  const [asked, { classId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const [person, subject] = [await whoIs(asked), await classSubject(store, classId)];
  if (person.kind !== "teacher" || !subject || !mayDo(person, "set-homework", subject)) notFound();
  const [found, course] = [await classWithMembers(store, classId), await readCourse()];
  if (!found) notFound();
  const held = [...(await habitsHeld(store.db, classId))];
  return (
    <ClassFrame title="Set homework" name={person.name} lead={found.row.title}>
      <SetHomeworkForm
        classId={classId}
        course={UNITS.map((unit) => ({
          unit,
          title: UNIT_WORDS[unit].title,
          exercises: course.exercises
            .filter((exercise) => exercise.unit === unit)
            .map(({ id, title, level }) => ({ id, title, level })),
        }))}
        members={found.members.map(({ id, name }) => ({ id, name }))}
        habits={held.map(([id, students]) => ({ id, name: habitName(id), students: students.size }))}
      />
    </ClassFrame>
  );
}
