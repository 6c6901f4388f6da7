import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { openClassroom } from "@/app/_server/classroom";
import { phoneAddress } from "@/app/_server/phone-address";
import { classSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { classWithMembers } from "@/lib/classroom/accounts/classes";
import { ClassFrame } from "../class-frame";
import { ClassPaths } from "../class-paths";
import { Closed } from "../closed";
import { Part } from "../part";
import { EraseClass, KeepDays } from "./class-care";
import { ClassList } from "./class-list";
import { CodeDrawing } from "./code-drawing";
import { HomeworkPart } from "./homework/homework-part";
import { MemberRow } from "./member-row";
import "./homework/homework.css";

export const metadata: Metadata = { title: "Class" };

type Props = { readonly params: Promise<{ readonly classId: string }> };

/** A class as its teacher sees it. */
export default async function OneClassPage({ params }: Props) {
  const [asked, { classId }] = [await headers(), await params];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const [person, subject] = [await whoIs(asked), await classSubject(store, classId)];
  // Someone else's class looks like none at all.
  if (person.kind !== "teacher" || !subject || !mayDo(person, "see-members", subject)) notFound();
  const found = await classWithMembers(store, classId);
  if (!found) notFound();
  const { row, members } = found;
  const { base, guessed } = phoneAddress(asked);
  return (
    <ClassFrame title={row.title} name={person.name}>
      <ClassPaths classId={classId} here="" />
      <Part
        id="code"
        title="Class code"
        note="Students scan it, or open the address and write the code. Whoever has it can join."
      >
        <div className="class-door">
          <div>
            <p className="class-code lettering">{row.code}</p>
            <p>{`${base.replace(/^https?:\/\//, "")}/class/join`}</p>
            {guessed && (
              <p className="class-quiet">
                Other devices reach this computer only when Plasterline was started for the room: npm start -- --lan
              </p>
            )}
          </div>
          <CodeDrawing
            text={`${base}/class/join?code=${row.code}`}
            label={`Code to scan, for ${base}/class/join?code=${row.code}`}
          />
        </div>
      </Part>
      <HomeworkPart store={store} classId={classId} />
      <Part id="members" title="Students" note={members.length === 1 ? "1 place" : `${members.length} places`}>
        {members.length === 0 && <p>Nobody has joined yet.</p>}
        <ul>
          {members.map(({ id, name, joined_at }) => (
            <MemberRow key={id} memberId={id} name={name} joined={joined_at !== null} />
          ))}
        </ul>
        <ClassList classId={classId} />
      </Part>
      <Part
        id="kept"
        title="What is kept"
        note="Names, what was handed in, marks and remarks; no e-mail address, no network address. Only you see it."
      >
        <KeepDays classId={classId} days={row.keep_days} />
        <div className="class-presses">
          <a className="press ruled" href={`/api/class/export?classId=${classId}`} download>
            Save all of it as a file
          </a>
          <EraseClass classId={classId} title={row.title} />
        </div>
      </Part>
    </ClassFrame>
  );
}
