import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { cache } from "react";
import { BrokenSheet } from "@/app/_parts/course/broken-sheet";
import { findExercise, readCourse } from "@/app/_parts/course/course";
import { PlainPage } from "@/app/_parts/plain-page";
import { Practise } from "./practise";

type Props = { readonly params: Promise<{ readonly id: string }> };

const find = cache(async (id: string) => findExercise(await readCourse(), id));

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const found = await find((await params).id);
  return { title: found.kind === "found" ? found.exercise.title : "Practise" };
}

export default async function PractisePage({ params }: Props) {
  const found = await find((await params).id);
  if (found.kind === "unknown") notFound();
  if (found.kind === "broken") return <BrokenSheet entry={found.entry} />;
  return (
    <>
      <noscript>
        <PlainPage title="This page needs JavaScript">
          <p>
            Placing marks and having them checked is done in your browser, and JavaScript is turned off there. Turn it
            on for this address, then load the page again. Nothing is fetched from anywhere else.
          </p>
        </PlainPage>
      </noscript>
      <Practise exercise={found.exercise} sheet={found.sheet} next={found.next} />
    </>
  );
}
