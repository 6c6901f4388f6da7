"use client";

import Link from "next/link";
import { useMemo } from "react";
import { forgetAttempt, keptAttempt } from "@/app/_parts/kept-work/keep";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { type OnShelf, useShelf } from "@/app/_parts/kept-work/use-shelf";
import { type CourseItem, nextExercise } from "@/lib/progress/next-exercise";

/** An exercise as the home page knows it. */
export type Sheet = CourseItem & { readonly version: number; readonly asked: number };

/** What to draw next and why, and one press that starts it. */
export function NextStep({ catalogue }: { readonly catalogue: readonly Sheet[] }) {
  const shelf = useShelf();
  const next = useMemo(() => nextExercise(shelf?.finished ?? [], catalogue, new Date()), [shelf, catalogue]);
  const sheet = catalogue.find(({ id }) => id === next?.exercise);
  if (!next || !sheet) return <p>There are no exercises in this course's folder yet.</p>;
  const begun = shelf ? begunSheets(shelf, catalogue) : [];
  const here = begun.find(({ id }) => id === sheet.id);
  const other = here ? undefined : begun[0];
  // A newcomer needs no reason to begin: the press says it all.
  const why = next.kind === "first" ? "" : next.reason;
  return (
    <div className="next-step">
      {why !== "" && (
        <p className="next-why">
          <span className="small-lettering">{next.kind === "keep" ? "Next, to keep it" : "Next"}</span> {why}
        </p>
      )}
      <Link
        href={`/practise/${sheet.id}`}
        prefetch={false}
        className="press ruled"
        data-weight="main"
        onClick={() => clearFinished(sheet)}
      >
        {here ? "Go on" : next.kind === "first" ? "Start" : "Draw"}: {sheet.title}
        {here && `, ${here.done} of ${here.asked} set down`}
      </Link>
      {other && (
        <p>
          Or go on with{" "}
          <Link href={`/practise/${other.id}`} prefetch={false} className="plain-link">
            {other.title}
          </Link>
          , {other.done} of {other.asked} set down.
        </p>
      )}
    </div>
  );
}

/** Drawings under way, those nearest their end first. */
function begunSheets({ attempts }: OnShelf, catalogue: readonly Sheet[]) {
  return catalogue
    .flatMap((sheet) => {
      const attempt = attempts.find(({ exercise, version }) => exercise === sheet.id && version === sheet.version);
      const done = attempt?.marks.length ?? 0;
      const open = attempt && (attempt.correcting || done < sheet.asked);
      return open && done > 0 ? [{ ...sheet, done }] : [];
    })
    .sort((a, b) => b.done / b.asked - a.done / a.asked);
}

/** The press starts a fresh sheet, where the finished one of last time would else lie. */
function clearFinished({ id, version, asked }: Sheet): void {
  const shelf = findShelf();
  const attempt = shelf && keptAttempt(shelf, { id, version });
  if (attempt && !attempt.correcting && attempt.marks.length >= asked) forgetAttempt(shelf, id);
}
