"use client";

import { PressLink } from "@/app/_parts/press";
import { useShelf } from "@/app/_progress/use-shelf";

type Sheet = { readonly id: string; readonly title: string };

/** One press to the first exercise that is not done yet. */
export function StartPress({ exercises }: { readonly exercises: readonly Sheet[] }) {
  const shelf = useShelf();
  const records = shelf?.records ?? {};
  const next = exercises.find(({ id }) => !Object.hasOwn(records, id)) ?? exercises[0];
  if (!next) return <p>There are no exercises in this course's folder yet.</p>;
  const first = next === exercises[0];
  return (
    <PressLink href={`/practise/${next.id}`} weight="main">
      {first ? "Start" : "Go on"}: {next.title}
    </PressLink>
  );
}
