"use client";

import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { MarksOrder } from "./marks-order";
import { PointsAsked } from "./points-asked";
import { TaskFields } from "./task-fields";
import { UseIt } from "./use-it";
import { Versions } from "./versions";
import { WordsFields } from "./words-fields";
import { Worth } from "./worth";
import "./exercise.css";

export type ExercisePart = {
  readonly draft: Draft;
  /** Makes an edit; null when it is made, else why it cannot be. */
  readonly apply: (change: Edit) => string | null;
};

/** The plan as an exercise: what is asked and in which order, how hard that is, its words, and what can be done with it. */
export function ExerciseDesk({ draft, apply }: ExercisePart) {
  return (
    <div className="exercise-desk">
      <h2 className="notes-title">Make it an exercise</h2>
      <UseIt draft={draft} />
      <MarksOrder draft={draft} apply={apply} />
      <PointsAsked draft={draft} apply={apply} />
      <TaskFields draft={draft} apply={apply} />
      <Worth draft={draft} />
      <WordsFields draft={draft} apply={apply} />
      <Versions draft={draft} />
    </div>
  );
}
