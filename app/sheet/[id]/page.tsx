import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { BrokenSheet } from "@/app/_parts/course/broken-sheet";
import { findExercise, readCourse } from "@/app/_parts/course/course";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { askedPoints } from "./asked-points";
import { SheetDesk } from "./sheet-desk";
import { sheetScalesOf } from "./sheet-scales";
import "./sheet.css";

type Props = { readonly params: Promise<{ readonly id: string }> };

const find = cache(async (id: string) => findExercise(await readCourse(), id));

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const found = await find((await params).id);
  return { title: found.kind === "found" ? `Print: ${found.exercise.title}` : "Print" };
}

/** An exercise on paper: the sheet to draw on with its key, a set for a class, or its drawings alone. */
export default async function SheetPage({ params }: Props) {
  const found = await find((await params).id);
  if (found.kind === "unknown") notFound();
  if (found.kind === "broken") return <BrokenSheet entry={found.entry} />;
  const { exercise, sheet } = found;
  return (
    <main className="printing">
      <header className="printing-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <Link href={`/practise/${exercise.id}`} className="plain-link" prefetch={false}>
          Practise it on screen
        </Link>
        <Link href={`/check?exercise=${encodeURIComponent(exercise.id)}`} className="plain-link" prefetch={false}>
          Check a drawing
        </Link>
        <LookDisclosure />
      </header>
      <SheetDesk
        exercise={{ id: exercise.id, title: exercise.title, unit: exercise.unit, level: exercise.level }}
        asked={askedPoints(exercise)}
        scales={sheetScalesOf(exercise)}
        firstSeed={"variant" in sheet ? sheet.variant : null}
      />
    </main>
  );
}
