import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { BrokenSheet } from "@/app/_parts/course/broken-sheet";
import { findDemonstrated } from "../find-demonstrated";
import { Notes } from "./notes";

type Props = { readonly params: Promise<{ readonly id: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const found = await findDemonstrated((await params).id);
  return { title: found.kind === "found" ? `Notes: ${found.exercise.title}` : "Notes" };
}

export default async function NotesPage({ params }: Props) {
  const found = await findDemonstrated((await params).id);
  if (found.kind === "unknown") notFound();
  if (found.kind === "broken") return <BrokenSheet entry={found.entry} />;
  return <Notes exercise={found.exercise} />;
}
