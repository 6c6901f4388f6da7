import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { openClassroom } from "@/app/_server/classroom";
import { mayDo } from "@/lib/classroom/access/may-do";
import { readCriteria } from "@/lib/classroom/gradebook/read-criteria";
import { findHomework, homeworkSubject } from "@/lib/classroom/homework/find-homework";
import { homeworkToChange, type ItemToChange } from "@/lib/classroom/homework/homework-to-change";
import { UNITS } from "@/lib/exercise/exercise";
import { ClassFrame } from "../../../../class-frame";
import { ClassPaths } from "../../../../class-paths";
import { Closed } from "../../../../closed";
import type { FormState, KnownItem } from "../../set/form-state";
import { readChoices } from "../../set/read-choices";
import { ChangeHomeworkForm } from "./change-homework-form";
import "../../homework.css";

export const metadata: Metadata = { title: "Change homework" };

type Props = { readonly params: Promise<{ readonly classId: string; readonly homeworkId: string }> };

/** Where a teacher changes homework that is set. */
export default async function ChangeHomeworkPage({ params }: Props) {
  const [asked, { classId, homeworkId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const [person, found] = [await whoIs(asked), await findHomework(store.db, homeworkId)];
  if (person.kind !== "teacher" || found?.homework.class_id !== classId) notFound();
  if (!mayDo(person, "set-homework", homeworkSubject(found))) notFound();
  const { homework } = found;
  const { items, memberIds } = await homeworkToChange(store, homework);
  const known = items.map(knownItem);
  const start: FormState = {
    title: homework.title,
    items: known.filter(({ takenOut }) => !takenOut),
    due: "",
    attempts: homework.attempts === 0 ? "" : String(homework.attempts),
    counts: homework.counts,
    feedback: homework.feedback,
    strictness: homework.strictness ?? "own",
    hints: homework.hints,
    weight: String(homework.weight),
    criteria: readCriteria(homework.criteria)
      .map(({ name, points }) => `${name}, ${points}`)
      .join("\n"),
    toWhom: homework.to_whom,
    memberIds,
    habit: "",
  };
  return (
    <ClassFrame title={`Change ${homework.title}`} name={person.name}>
      <ClassPaths classId={classId} />
      <ChangeHomeworkForm
        classId={classId}
        homeworkId={homeworkId}
        dueAt={homework.due_at}
        start={start}
        known={known}
        {...(await readChoices(store, classId, found.teacherId))}
      />
    </ClassFrame>
  );
}

/** An exercise of the course goes by its own name, so that the course's list shows it as chosen. */
function knownItem(item: ItemToChange, _: number, all: readonly ItemToChange[]): KnownItem {
  const { id, source, exercise_id, unit, level, title, weight, drawings, taken_out_at } = item;
  const alone = all.filter((each) => each.source === "course" && each.exercise_id === exercise_id).length === 1;
  const known = UNITS.find((each) => each === unit);
  return {
    key: source === "course" && alone ? `course ${exercise_id}` : `${source} ${unit} ${level} kept ${id}`,
    words: title ?? `${known ? UNIT_WORDS[known].title : "An exercise"}, level ${level}, another for each student`,
    chosen: { source: "kept", itemId: id },
    weight: String(weight),
    drawings,
    takenOut: taken_out_at !== null,
  };
}
