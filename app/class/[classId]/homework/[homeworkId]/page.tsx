import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { openClassroom } from "@/app/_server/classroom";
import { mayDo } from "@/lib/classroom/access/may-do";
import { classesOfTeacher } from "@/lib/classroom/accounts/classes";
import { findHomework, homeworkSubject } from "@/lib/classroom/homework/find-homework";
import { type HomeworkSheet, homeworkSheet } from "@/lib/classroom/homework/homework-of-class";
import { UNITS } from "@/lib/exercise/exercise";
import { ClassFrame } from "../../../class-frame";
import { ClassPaths } from "../../../class-paths";
import { Closed } from "../../../closed";
import { Part } from "../../../part";
import { InTime } from "../../in-time";
import { Archive, Reuse } from "./homework-care";
import { StudentTerms } from "./student-terms";
import "../homework.css";

export const metadata: Metadata = { title: "Homework" };

type Props = { readonly params: Promise<{ readonly classId: string; readonly homeworkId: string }> };

/** One homework as its teacher sees it: who has handed in what, and when. */
export default async function HomeworkPage({ params }: Props) {
  const [asked, { classId, homeworkId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const [person, found] = [await whoIs(asked), await findHomework(store.db, homeworkId)];
  if (person.kind !== "teacher" || found?.homework.class_id !== classId) notFound();
  if (!mayDo(person, "set-homework", homeworkSubject(found))) notFound();
  const sheet = await homeworkSheet(store, found.homework);
  const classes = (await classesOfTeacher(store, person.userId)).filter(({ archived }) => archived === 0);
  const { due_at, feedback, archived, title } = sheet.homework;
  return (
    <ClassFrame
      title={title}
      name={person.name}
      lead={
        due_at === null ? (
          "Due any time"
        ) : (
          <>
            Due <When at={due_at} />
          </>
        )
      }
    >
      <ClassPaths classId={classId} />
      <Part id="set" title="What is set" note={ruleWords(sheet)}>
        <ol>
          {sheet.items.map((item) => (
            <li key={item.id} className="class-row">
              <span>{itemWords(item)}</span>
            </li>
          ))}
        </ol>
        <div className="class-presses">
          <PressLink href={`/class/${classId}/homework/${homeworkId}/change`}>Change it</PressLink>
        </div>
      </Part>
      <Part
        id="in"
        title="Handed in"
        note={feedback === "after-due" ? "Students see scores and corrections after the due date." : undefined}
      >
        {sheet.students.length === 0 && <p>It is set to nobody who is in the class.</p>}
        <ul>
          {sheet.students.map((student) => (
            <li key={student.memberId} className="class-row">
              <span>{student.name}</span>
              <span data-handed-in={student.memberId}>{cellsOf(sheet, student)}</span>
              <StudentTerms
                homeworkId={homeworkId}
                memberId={student.memberId}
                name={student.name}
                ownDueAt={student.ownDueAt}
                excused={student.excused}
              />
              {student.cells.map(({ itemId, cameLate }) =>
                cameLate === null ? null : (
                  <InTime
                    key={itemId}
                    handInId={cameLate.handInId}
                    name={`${student.name}, ${itemWords(sheet.items.find(({ id }) => id === itemId))}`}
                    exercise={itemWords(sheet.items.find(({ id }) => id === itemId))}
                    madeAt={cameLate.madeAt}
                    receivedAt={cameLate.receivedAt}
                    dueAt={student.dueAt}
                    reason={cameLate.inTimeReason}
                  />
                ),
              )}
            </li>
          ))}
        </ul>
        <div className="class-presses">
          <PressLink href={`/class/${classId}/pile`}>Hand in a pile of drawings on paper</PressLink>
        </div>
      </Part>
      <Part
        id="again"
        title="Use it again"
        note="In this class or another, with a date of its own, for everyone in it."
      >
        <Reuse
          homeworkId={homeworkId}
          classId={classId}
          needsDate={feedback === "after-due"}
          classes={classes.map(({ id, title: words }) => ({ id, title: words }))}
        />
      </Part>
      <Part id="away" title="Put it away" note="Out of the students' lists; everything handed in stays.">
        <Archive homeworkId={homeworkId} archived={archived === 1} />
      </Part>
    </ClassFrame>
  );
}

function itemWords(item: HomeworkSheet["items"][number] | undefined): string {
  const { title = null, unit = null, level = null } = item ?? {};
  const known = UNITS.find((each) => each === unit);
  return title ?? `${known ? UNIT_WORDS[known].title : "An exercise"}, level ${level}, another for each student`;
}

function ruleWords({ homework }: HomeworkSheet): string {
  const { attempts, counts, strictness, hints } = homework;
  const often = attempts === 0 ? "Any number of attempts" : attempts === 1 ? "One attempt" : `${attempts} attempts`;
  const which = attempts === 1 ? "" : `, the ${counts} counts`;
  const near =
    strictness === null ? "" : `; judged as ${strictness === "drafted" ? "drafted work" : `a ${strictness}`}`;
  return `${often}${which}${near}${hints === "none" ? "; no hints" : ""}.`;
}

function cellsOf(
  { items }: HomeworkSheet,
  { cells, excused, overdue, dueAt, ownDueAt }: HomeworkSheet["students"][number],
) {
  const done = cells.filter(({ times }) => times > 0);
  const last = done
    .map(({ lastAt }) => lastAt ?? "")
    .sort()
    .at(-1);
  return (
    <>
      {done.length} of {items.length}
      {last && (
        <>
          , last <When at={last} />
        </>
      )}
      {cells.some(({ late }) => late) && ", late"}
      {excused && ", excused"}
      {!excused && done.length < items.length && overdue && <span className="homework-missing">, missing</span>}
      {ownDueAt && dueAt && (
        <>
          , due <When at={dueAt} />
        </>
      )}
    </>
  );
}
