import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { When } from "@/app/_parts/when";
import { openClassroom } from "@/app/_server/classroom";
import { mayDo } from "@/lib/classroom/access/may-do";
import { type OpenedWork, readWork } from "@/lib/classroom/gradebook/read-work";
import type { Grade } from "@/lib/grading/grade";
import { habitName } from "@/lib/habits/habit-name";
import { ClassFrame } from "../../../class-frame";
import { ClassPaths } from "../../../class-paths";
import { Closed } from "../../../closed";
import { Part } from "../../../part";
import { CellDesk } from "../../cell-desk";
import { InTime, MadeAndReceived } from "../../in-time";
import { DrawingDesk } from "./drawing-desk";
import "./drawing.css";

export const metadata: Metadata = { title: "A drawing" };

type Props = { readonly params: Promise<{ readonly classId: string; readonly handInId: string }> };

/** One drawing over the truth: the teacher's to write on, the student's own to look at once results are out. */
export default async function DrawingPage({ params }: Props) {
  const [asked, { classId, handInId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const [person, work] = [await whoIs(asked), await readWork(store, handInId, new Date().toISOString())];
  // Someone else's work, and one whose results are kept back, looks like none at all.
  if (!work || work.subject.classId !== classId || !mayDo(person, "see-result", work.subject)) notFound();
  if (person.kind === "nobody" || !mayDo(person, "see-truth", work.subject)) notFound();
  const teaches = mayDo(person, "make-remark", work.subject);
  const { exercise, grade, cell, attempts, criteria, homework } = work;
  const remark = mayDo(person, "see-remarks", work.subject) ? work.remark : { strokes: [], words: "", at: null };
  return (
    <ClassFrame title={teaches ? `${work.name}: ${work.title}` : work.title} name={person.name} lead={homework}>
      {teaches ? <ClassPaths classId={classId} /> : null}
      {exercise ? (
        <DrawingDesk
          handInId={handInId}
          exercise={exercise}
          grade={grade}
          habitNames={habitNames(grade)}
          remark={{ strokes: remark.strokes, words: remark.words }}
          teaches={teaches}
        />
      ) : (
        <p>
          This drawing’s exercise cannot be read by this Plasterline, so it cannot be drawn. Its score and your words
          are kept.
        </p>
      )}
      <Part id="score" title="Score" note={handedInWords(work)}>
        <p className="work-score lettering">{work.score === null ? "No marks" : `${Math.round(work.score)} of 100`}</p>
        {work.cameLate && teaches && (
          <InTime
            handInId={handInId}
            name={work.name}
            madeAt={work.madeAt}
            receivedAt={work.receivedAt}
            dueAt={cell.dueAt}
            reason={work.inTimeReason}
          />
        )}
        {work.cameLate && !teaches && (
          <p className="class-quiet">
            Late: <MadeAndReceived madeAt={work.madeAt} receivedAt={work.receivedAt} />
            {work.inTimeReason !== null && ` Your teacher counts it as in time: ${work.inTimeReason}`}
          </p>
        )}
        {cell.override && (
          <p>
            Changed by hand to {Math.round(cell.override.score)}: {cell.override.reason}
          </p>
        )}
        {criteria.map(({ name, points }, i) => {
          const given = cell.points[i] ?? null;
          return given === null ? null : (
            <p key={name}>
              {name}: {given} of {points}
            </p>
          );
        })}
        {grade.habits.map(({ id }) => (
          <p key={id}>A habit shows: {habitName(id)}.</p>
        ))}
        {attempts.length > 1 && (
          <ul className="class-paths" aria-label="Attempts">
            {attempts.map(({ id, score }, i) => (
              <li key={id}>
                {id === handInId ? (
                  <span aria-current="page">Attempt {i + 1}</span>
                ) : (
                  <Link href={`/class/${classId}/drawing/${id}`} className="plain-link" prefetch={false}>
                    Attempt {i + 1}
                    {score === null ? "" : `, ${Math.round(score)}`}
                  </Link>
                )}
              </li>
            ))}
          </ul>
        )}
      </Part>
      {teaches && (
        <Part id="change" title="What counts" note="It stands for this exercise, whichever attempt counts.">
          <CellDesk
            key={cell.override?.at ?? ""}
            cell={cell}
            work={{ id: work.homeworkId, title: homework, criteria }}
          />
        </Part>
      )}
    </ClassFrame>
  );
}

function handedInWords({ receivedAt, cameLate, inTimeReason }: OpenedWork): ReactNode {
  return (
    <>
      Handed in <When at={receivedAt} />
      {cameLate && inTimeReason === null && ", late"}
      {cameLate && inTimeReason !== null && ", counted as in time"}.
    </>
  );
}

function habitNames({ habits, marks }: Grade): Readonly<Record<string, string>> {
  const ids = [...habits.map(({ id }) => id), ...marks.flatMap(({ habit }) => (habit === null ? [] : [habit]))];
  return Object.fromEntries(ids.map((id) => [id, habitName(id)]));
}
