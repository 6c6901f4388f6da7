"use client";

import Link from "next/link";
import { Press, PressLink } from "@/app/_parts/press";
import { usePracticeRoom } from "./practice-context";
import { stepTitle } from "./step-words";
import { useGrade } from "./use-grade";

export function Result({
  next,
}: {
  readonly sheet: readonly [number, number];
  readonly next: { readonly id: string; readonly title: string } | null;
}) {
  const { exercise, store, points } = usePracticeRoom();
  const grade = useGrade();
  return (
    <main className="p-6">
      <Link href="/">Plasterline</Link>
      <h1 className="lettering text-2xl">{exercise.title}</h1>
      <p>Score: {grade.score === null ? "none" : Math.round(grade.score)}</p>
      <ul>
        {grade.marks.map((mark) => {
          const point = points.get(mark.point);
          return (
            <li key={mark.point}>
              {point ? stepTitle(point) : mark.point}: {Math.round(mark.score)}
            </li>
          );
        })}
      </ul>
      <div className="flex gap-4">
        <Press onClick={() => store.getState().again()}>Again</Press>
        {next && <PressLink href={`/practise/${next.id}`}>Next: {next.title}</PressLink>}
      </div>
    </main>
  );
}
