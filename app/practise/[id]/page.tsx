import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { cache } from "react";
import { BrokenSheet } from "@/app/_parts/course/broken-sheet";
import { findExercise, readCourse } from "@/app/_parts/course/course";
import { PlainPage } from "@/app/_parts/plain-page";
import { PressLink } from "@/app/_parts/press";
import { openClassroom } from "@/app/_server/classroom";
import { deskOf } from "@/lib/classroom/homework/desk-of";
import { Practise } from "./practise";

type Props = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly homework?: string | readonly string[] }>;
};

const find = cache(async (id: string) => findExercise(await readCourse(), id));

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  if ((await searchParams).homework !== undefined) return { title: "Homework" };
  const found = await find((await params).id);
  return { title: found.kind === "found" ? found.exercise.title : "Practise" };
}

export default async function PractisePage({ params, searchParams }: Props) {
  const { homework } = await searchParams;
  if (typeof homework === "string") return <HomeworkPage itemId={homework} />;
  const found = await find((await params).id);
  if (found.kind === "unknown") notFound();
  if (found.kind === "broken") return <BrokenSheet entry={found.entry} />;
  return (
    <>
      <NeedsJavaScript />
      <Practise exercise={found.exercise} sheet={found.sheet} next={found.next} />
    </>
  );
}

/** The exercise that the server keeps for this student, whatever the address calls it. */
async function HomeworkPage({ itemId }: { readonly itemId: string }) {
  const asked = await headers();
  const opened = await openClassroom();
  if (!opened.ok)
    return (
      <PlainPage title="Class is closed just now">
        <p>{opened.refusal.sentence}</p>
        <p>What you have drawn of your homework is kept in this browser.</p>
      </PlainPage>
    );
  const { store, whoIs } = opened.classroom;
  const person = await whoIs(asked);
  if (person.kind === "nobody")
    return (
      <PlainPage
        title="Come back to your class first"
        actions={<PressLink href="/class/back">Come back to your class</PressLink>}
      >
        <p>This is homework, and the server does not know you just now. What you have drawn of it is kept here.</p>
      </PlainPage>
    );
  const desk = await deskOf(store, person, itemId);
  // Someone else's homework looks like none at all.
  if (!desk) notFound();
  const { exercise, memberId, held, dueAt, attemptsLeft, last } = desk;
  const homework = {
    itemId,
    memberId,
    title: desk.homework,
    held,
    dueAt,
    attemptsLeft,
    last: last && { receivedAt: last.receipt.receivedAt, late: last.receipt.late, marks: last.marks },
  };
  return (
    <>
      <NeedsJavaScript />
      <Practise exercise={exercise} sheet={[1, 1]} next={null} homework={homework} />
    </>
  );
}

function NeedsJavaScript() {
  return (
    <noscript>
      <PlainPage title="This page needs JavaScript">
        <p>
          Placing marks and having them checked is done in your browser, and JavaScript is turned off there. Turn it on
          for this address, then load the page again. Nothing is fetched from anywhere else.
        </p>
      </PlainPage>
    </noscript>
  );
}
