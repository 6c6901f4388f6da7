import type { Metadata } from "next";
import { headers } from "next/headers";
import { openClassroom } from "@/app/_server/classroom";
import { ClassFrame } from "../class-frame";
import { Closed } from "../closed";
import { Join } from "./join";

export const metadata: Metadata = { title: "Join a class" };

type Props = { readonly searchParams: Promise<{ readonly code?: string | string[] }> };

/** Where a student joins; the code may stand in the address, as the code to scan has it. */
export default async function JoinPage({ searchParams }: Props) {
  const [asked, { code }] = [await headers(), await searchParams];
  const opened = await openClassroom();
  if (!opened.ok) return <Closed sentence={opened.refusal.sentence} />;
  const person = await opened.classroom.whoIs(asked);
  const name = person.kind === "nobody" ? undefined : person.name;
  return (
    <ClassFrame title="Join a class" name={name}>
      {person.kind === "teacher" ? (
        <p>You are signed in as a teacher. To see what a student sees, open this page in a private window.</p>
      ) : (
        <Join code={typeof code === "string" ? code.slice(0, 12) : ""} name={name ?? ""} />
      )}
    </ClassFrame>
  );
}
