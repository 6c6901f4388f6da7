import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { PressLink } from "@/app/_parts/press";
import { openClassroom } from "@/app/_server/classroom";
import { isAtTheServer } from "@/app/_server/client";
import { classesOfStudent, classesOfTeacher } from "@/lib/classroom/accounts/classes";
import { firstRun } from "@/lib/classroom/accounts/first-teacher";
import { plansOfTeacher } from "@/lib/classroom/library/read-library";
import type { Store } from "@/lib/classroom/store/store";
import { ClassFrame } from "./class-frame";
import { Closed } from "./closed";
import { FirstRun, WaysIn } from "./doors";
import { FromDesk } from "./from-desk";
import { MakeClass } from "./make-class";
import { Part } from "./part";
import { SendHomework } from "./send-homework";
import { StudentWork } from "./student-work";

export const metadata: Metadata = { title: "Class" };

/** The door of Class: whoever comes sees what is theirs. */
export default async function ClassPage() {
  const asked = await headers();
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const person = await whoIs(asked);
  if (person.kind === "teacher") return <Teacher store={store} userId={person.userId} name={person.name} />;
  if (person.kind === "student") return <Student store={store} userId={person.userId} name={person.name} />;
  return (
    <ClassFrame title="Class" lead="Homework, marks, and the whole class at one corner.">
      {(await firstRun(store)) ? <FirstRun atTheServer={isAtTheServer(asked)} /> : <WaysIn />}
    </ClassFrame>
  );
}

type Props = { readonly store: Store; readonly userId: string; readonly name: string };

async function Teacher({ store, userId, name }: Props) {
  const [classes, plans] = [await classesOfTeacher(store, userId), await plansOfTeacher(store, userId)];
  return (
    <ClassFrame title="Your classes" name={name}>
      <FromDesk classes={classes.map(({ id, title }) => ({ id, title }))} />
      <Part id="classes" title="Classes" note="Open one to see who is in it and to set work.">
        {classes.length === 0 && <p>There is none yet. Make the first one below.</p>}
        <ul>
          {classes.map(({ id, title, code, students }) => (
            <li key={id} className="class-row">
              <Link href={`/class/${id}`} className="plain-link" prefetch={false}>
                {title}
              </Link>
              <span>{students === 1 ? "1 student" : `${students} students`}</span>
              <span className="lettering">{code}</span>
            </li>
          ))}
        </ul>
      </Part>
      <Part
        id="plans"
        title="Your plans"
        note="What you draft and keep: its versions, a link for colleagues, homework."
      >
        <div className="class-presses">
          <PressLink href="/class/plans">
            {sayPlans(plans.filter(({ thrown_at }) => thrown_at === null).length)}
          </PressLink>
        </div>
      </Part>
      <Part id="folder" title="A folder of marks" note="For a class that hands in by file, without joining.">
        <div className="class-presses">
          <PressLink href="/class/folder">Grade saved marks</PressLink>
        </div>
      </Part>
      <Part id="make" title="A new class" note="It gets a code of six letters, which your students join by.">
        <MakeClass />
      </Part>
      <Part id="teachers" title="Teachers" note="Invite another one, help a colleague back in, change your password.">
        <div className="class-presses">
          <PressLink href="/class/teachers">Teachers and your password</PressLink>
        </div>
      </Part>
    </ClassFrame>
  );
}

function sayPlans(plans: number): string {
  if (plans === 0) return "Your library";
  return plans === 1 ? "1 plan in your library" : `${plans} plans in your library`;
}

async function Student({ store, userId, name }: Props) {
  const classes = await classesOfStudent(store, userId);
  return (
    <ClassFrame title="Your class" name={name}>
      <SendHomework />
      {classes.map(({ memberId, title }) => (
        <StudentWork key={memberId} store={store} memberId={memberId} title={classes.length > 1 ? title : null} />
      ))}
      <Part id="classes" title={classes.length === 1 ? "Class" : "Classes"}>
        {classes.length === 0 && (
          <p>You are in no class just now. Join one with the code that your teacher gives you.</p>
        )}
        <ul>
          {classes.map(({ memberId, title, name: called }) => (
            <li key={memberId} className="class-row">
              <span>{title}</span>
              <span>as {called}</span>
            </li>
          ))}
        </ul>
        <div className="class-presses">
          <PressLink href="/class/join">Join another class</PressLink>
        </div>
      </Part>
    </ClassFrame>
  );
}
