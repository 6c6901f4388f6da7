import type { Metadata } from "next";
import { headers } from "next/headers";
import { notFound } from "next/navigation";
import { findExercise, readCourse } from "@/app/_parts/course/course";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { PlainPage } from "@/app/_parts/plain-page";
import { PressLink } from "@/app/_parts/press";
import { CheckDrawing } from "./check-drawing";
import { findDue, findHomework } from "./find-due";
import { NeedsJavaScript } from "./needs-javascript";

export const metadata: Metadata = { title: "Check" };

type Param = string | readonly string[] | undefined;
type Props = { readonly searchParams: Promise<{ readonly exercise?: Param; readonly homework?: Param }> };

/** A pencil drawing from its photograph to its marks; for one's own sake, or for homework. */
export default async function CheckPage({ searchParams }: Props) {
  const { exercise: id, homework } = await searchParams;
  if (typeof homework === "string") return <HomeworkCheck itemId={homework} />;
  const course = await readCourse();
  const found = typeof id === "string" ? findExercise(course, id) : null;
  return (
    <>
      <NeedsJavaScript />
      <CheckDrawing
        exercise={found?.kind === "found" ? found.exercise : null}
        asked={typeof id === "string" ? id : null}
        catalogue={course.exercises.map(({ id: each, title, unit }) => ({
          id: each,
          title,
          unit: UNIT_WORDS[unit].title,
        }))}
        due={await findDue(await headers())}
        homework={null}
      />
    </>
  );
}

async function HomeworkCheck({ itemId }: { readonly itemId: string }) {
  const found = await findHomework(await headers(), itemId);
  if (found.kind === "unknown") notFound();
  if (found.kind === "closed")
    return (
      <PlainPage title="Class is closed just now">
        <p>{found.sentence}</p>
        <p>A drawing that you have begun to check for your homework is kept in this browser.</p>
      </PlainPage>
    );
  if (found.kind === "nobody")
    return (
      <PlainPage
        title="Come back to your class first"
        actions={<PressLink href="/class/back">Come back to your class</PressLink>}
      >
        <p>This is homework, and the server does not know you just now. What you have begun is kept here.</p>
      </PlainPage>
    );
  const { exercise, homework } = found;
  return (
    <>
      <NeedsJavaScript />
      <CheckDrawing exercise={exercise} asked={exercise.id} catalogue={[]} due={[]} homework={homework} />
    </>
  );
}
