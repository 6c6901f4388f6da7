import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { PlainPage } from "@/app/_parts/plain-page";
import { PressLink } from "@/app/_parts/press";
import { openClassroom } from "@/app/_server/classroom";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { planWithText } from "@/lib/classroom/library/read-library";
import { OpenFromLibrary } from "./open-from-library";

export const metadata: Metadata = { title: "From your library" };

type Props = { readonly searchParams: Promise<{ readonly plan?: string | readonly string[] }> };

/** Where a plan of a teacher's library comes to the desk of this browser. */
export default async function FromLibraryPage({ searchParams }: Props) {
  const [asked, { plan: wanted }] = [await headers(), await searchParams];
  const planId = typeof wanted === "string" ? wanted : "";
  const opened = await openClassroom();
  if (!opened.ok)
    return (
      <PlainPage title="Your library is closed just now" actions={<PressLink href="/draft">To the desk</PressLink>}>
        <p>{opened.refusal.sentence}</p>
        <p>The plans of this browser are on the drafting desk as ever.</p>
      </PlainPage>
    );
  const { store, whoIs } = opened.classroom;
  const [person, subject] = [await whoIs(asked), await planSubject(store, planId)];
  // Someone else's plan looks like none at all.
  if (!subject || !mayDo(person, "see-plan", subject)) notFound();
  const plan = await planWithText(store, planId);
  if (!plan) notFound();
  const { edition, changed_at, text, title } = plan;
  return (
    <OpenFromLibrary
      title={title}
      plan={{ planId, ownerId: subject.teacherId, edition, changedAt: changed_at, text }}
    />
  );
}
