"use client";

import type { ExercisePart } from "./exercise-part";
import { KindsAsked } from "./kinds-asked";
import { MarksOrder } from "./marks-order";
import { PointsAsked } from "./points-asked";
import { TaskFields } from "./task-fields";
import { UseIt } from "./use-it";
import { Versions } from "./versions";
import { WordsFields } from "./words-fields";
import { Worth } from "./worth";
import "./exercise.css";

/** The plan as an exercise: what is asked and in which order, how hard that is, its words, and what can be done with it. */
export function ExerciseDesk({ draft, apply, plan }: ExercisePart & { readonly plan: string }) {
  return (
    <div className="exercise-desk">
      <h2 className="notes-title">Make it an exercise</h2>
      <UseIt draft={draft} />
      <KindsAsked draft={draft} apply={apply} />
      <MarksOrder draft={draft} apply={apply} />
      <PointsAsked draft={draft} apply={apply} />
      <TaskFields draft={draft} apply={apply} />
      <Worth draft={draft} />
      <WordsFields draft={draft} apply={apply} />
      <Versions key={plan} draft={draft} plan={plan} />
    </div>
  );
}
