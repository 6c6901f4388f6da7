import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { cache } from "react";
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
  if (found.kind === "broken") {
    return (
      <PlainPage title="This sheet cannot be read">
        <p>
          The exercise is there, but its file <code>{found.entry.file}</code> has something wrong in it. If you are the
          teacher, mend this and look again; if not, show this page to them.
        </p>
        <ul className="flex flex-col gap-3">
          {found.entry.problems.map((problem) => (
            <li key={`${problem.where} ${problem.message}`}>
              <code>{problem.where === "" ? "the whole file" : problem.where}</code>: {problem.message}. To mend it:{" "}
              {problem.hint}.
            </li>
          ))}
        </ul>
      </PlainPage>
    );
  }
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
