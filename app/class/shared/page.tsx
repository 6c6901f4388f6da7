import type { Metadata } from "next";
import { headers } from "next/headers";
import { PressLink } from "@/app/_parts/press";
import { openClassroom } from "@/app/_server/classroom";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { Part } from "../part";
import { SharedPlan } from "./shared-plan";
import { SignInHere } from "./sign-in-here";
import "./shared.css";

export const metadata: Metadata = { title: "A plan for you" };

/** Where a link to a plan of somebody's library leads: teachers take a copy, others are told what it is. */
export default async function SharedPlanPage() {
  const asked = await headers();
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const person = await opened.classroom.whoIs(asked);
  if (person.kind === "teacher")
    return (
      <ClassFrame title="A plan for you" name={person.name}>
        <SharedPlan />
      </ClassFrame>
    );
  return (
    <ClassFrame title="A plan for a teacher" {...(person.kind === "student" ? { name: person.name } : {})}>
      <Part id="what" title="What this is">
        <div className="shared-words">
          <p>
            With this link a teacher shares the plan of a stage set with other teachers here. They look at it and take a
            copy, to draw on and to set to their classes.
          </p>
          {person.kind === "student" ? (
            <>
              <p>
                It is no homework of yours. What is set to you stands in Class; a plan that you may practise comes by
                another link, which your teacher gives you.
              </p>
              <div className="class-presses">
                <PressLink href="/class" weight="main">
                  To your class
                </PressLink>
              </div>
            </>
          ) : (
            <p>
              If you teach here, sign in, and the plan is shown. If you do not, ask whoever sent it for a “Link for a
              colleague” from their drafting desk, which holds the whole plan and needs no account, or for its file.
            </p>
          )}
        </div>
      </Part>
      {person.kind === "nobody" && (
        <Part id="in" title="Teachers">
          <SignInHere />
        </Part>
      )}
    </ClassFrame>
  );
}
