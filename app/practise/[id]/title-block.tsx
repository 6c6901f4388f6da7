"use client";

import { type SheetPlace, sheetWords, UNIT_WORDS } from "@/app/_parts/course/course-words";
import type { Grade } from "@/lib/grading/grade";
import { printScale } from "@/lib/measure/scale";
import { usePracticeRoom } from "./practice-context";
import { scoreSoFar } from "./use-grade";

/** The title block in the sheet's lower right corner. */
export function TitleBlock({ sheet, grade }: { readonly sheet: SheetPlace; readonly grade: Grade }) {
  const { exercise, work } = usePracticeRoom();
  const score = scoreSoFar(grade);
  return (
    <footer className="title-block">
      <Cell label="Drawing" value={exercise.title} wide />
      <Cell label="Unit" value={`${UNIT_WORDS[exercise.unit].title}, level ${exercise.level}`} />
      <Cell label="Scale" value={printScale(exercise.scale)} />
      {work ? (
        <Cell label="Homework" value={work.homework.title} />
      ) : "variant" in sheet ? (
        <Cell label="Variant" value={String(sheet.variant)} />
      ) : (
        <Cell label="Sheet" value={sheetWords(sheet)} />
      )}
      {work?.homework.held ? (
        <Cell label="Score" value="after the due date" />
      ) : (
        <Cell label="Score" value={score === null ? "none" : String(Math.round(score))} />
      )}
    </footer>
  );
}

function Cell({
  label,
  value,
  wide = false,
}: {
  readonly label: string;
  readonly value: string;
  readonly wide?: boolean;
}) {
  return (
    <div className="title-cell" data-wide={wide || undefined}>
      <span className="title-label">{label}</span>
      <span className="title-value">{value}</span>
    </div>
  );
}
