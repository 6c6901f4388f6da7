import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { openClassroom } from "@/app/_server/classroom";
import { phoneAddress } from "@/app/_server/phone-address";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { teachersHere, wordsOfTeacher } from "@/lib/classroom/accounts/teachers";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { Part } from "../part";
import { ChangePassword } from "./change-password";
import { MakeWord } from "./make-word";
import { WordList } from "./word-list";
import "./teachers.css";

export const metadata: Metadata = { title: "Teachers" };

/** Who teaches here, how another one comes in, and how one who lost the password comes back. */
export default async function TeachersPage() {
  const asked = await headers();
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const { store, whoIs } = opened.classroom;
  const person = await whoIs(asked);
  if (person.kind !== "teacher" || !mayDo(person, "see-teachers", SCHOOL)) notFound();
  const { base, guessed } = phoneAddress(asked);
  const [names, words] = [await teachersHere(store), await wordsOfTeacher(store, person.userId)];
  return (
    <ClassFrame title="Teachers" name={person.name}>
      <Part id="here" title="Who teaches here" note="Each has classes of their own and sees no other's.">
        <ul>
          {names.map((name, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two teachers may have one name
            <li key={i} className="class-row">
              <span>{name}</span>
            </li>
          ))}
        </ul>
      </Part>
      <Part
        id="invite"
        title="Invite a teacher"
        note="They get a word, or a link, which lets one person in within seven days."
      >
        <MakeWord
          path="/api/class/invite"
          press="Make an invitation"
          line={{ name: "note", label: "For whom", note: "Only you see this, in the list below. It may stay empty." }}
          page="invited"
          base={base}
          guessed={guessed}
        />
        <WordList words={words.filter(({ kind }) => kind === "invitation")} />
      </Part>
      <Part
        id="colleague"
        title="A way back for a colleague"
        note="For a teacher who lost the password. Hand it to them in person: whoever has it can take their account. They see that you made it."
      >
        <MakeWord
          path="/api/class/make-way-back"
          press="Make a way back"
          line={{ name: "email", label: "Your colleague's e-mail address", type: "email" }}
          page="way-back"
          base={base}
          guessed={guessed}
        />
        <WordList words={words.filter(({ kind }) => kind === "way-back")} />
      </Part>
      <Part id="password" title="Your password" note="Other browsers in which you are signed in are signed out.">
        <ChangePassword />
      </Part>
    </ClassFrame>
  );
}
