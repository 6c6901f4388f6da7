import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { readCourse } from "@/app/_parts/course/course";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { openClassroom } from "@/app/_server/classroom";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { votesOfClass } from "@/lib/classroom/live/find-vote";
import { thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { placeStep } from "@/lib/classroom/live/place-step";
import { ClassFrame } from "../../class-frame";
import { ClassPaths } from "../../class-paths";
import { Closed } from "../../closed";
import { Part } from "../../part";
import { OpenVote } from "./open-vote";

export const metadata: Metadata = { title: "Everyone places it" };

/** So many votes are listed. */
const LISTED = 20;

type Props = { readonly params: Promise<{ readonly classId: string }> };

/** Where the teacher opens a vote without a demonstration, and finds the last ones. */
export default async function ClassLivePage({ params }: Props) {
  const [asked, { classId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const [person, subject] = [await whoIs(asked), await classSubject(store, classId)];
  if (person.kind !== "teacher" || !subject || !mayDo(person, "run-vote", subject)) notFound();
  const { exercises } = await readCourse();
  const choices = exercises.map((exercise) => ({
    id: exercise.id,
    title: `${UNIT_WORDS[exercise.unit].title} ${exercise.level}: ${exercise.title}`,
    points: exercise.task.marks.flatMap((name) => {
      const step = placeStep(exercise, name);
      return step ? [{ name, words: step.title }] : [];
    }),
  }));
  const votes = (await votesOfClass(store, classId)).slice(0, LISTED);
  return (
    <ClassFrame title="Everyone places it" name={person.name}>
      <ClassPaths classId={classId} here="/live" />
      <Part
        id="open"
        title="Open one"
        note="Students come in by phone with a code on the screen, place one mark, and you show where they all are."
      >
        <OpenVote classId={classId} choices={choices} />
      </Part>
      <Part id="votes" title="The last ones">
        {votes.length === 0 && <p>There has been none yet.</p>}
        <ul>
          {votes.map(({ id, exercise, point, opened_at, state }) => {
            const frozen = thawExercise(exercise);
            return (
              <li key={id} className="class-row">
                <Link href={`/class/${classId}/live/${id}`} className="plain-link" prefetch={false}>
                  {placeStep(frozen, point)?.title ?? point}, {frozen.title}
                </Link>
                <span>{opened_at.slice(0, 10)}</span>
                <span>{state === "open" ? "open" : "over"}</span>
              </li>
            );
          })}
        </ul>
      </Part>
    </ClassFrame>
  );
}
