"use client";

import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { UNITS, type Unit } from "@/lib/exercise/exercise";
import { ChoiceField, TextField } from "../fields/fields";
import type { ExercisePart } from "./exercise-part";
import { LongField } from "./long-field";

const LEVELS = ["1", "2", "3", "4", "5"] as const;
const LEVEL_WORDS = { "1": "1", "2": "2", "3": "3", "4": "4", "5": "5" } as const;
const UNIT_TITLES = Object.fromEntries(UNITS.map((unit) => [unit, UNIT_WORDS[unit].title])) as Record<Unit, string>;

type Words = Extract<Parameters<ExercisePart["apply"]>[0], { edit: "set-words" }>["words"];

/** The words around the exercise, and its place in a course. */
export function WordsFields({ draft, apply }: ExercisePart) {
  const { title, brief, scenario, notes, id, unit, level } = draft.exercise;
  const set = (words: Words) => apply({ edit: "set-words", words });
  return (
    <section aria-labelledby="words-fields">
      <h3 id="words-fields" className="lettering">
        Its words
      </h3>
      <div className="draft-fields">
        <TextField
          label="Title"
          wide
          value={title}
          onWrite={(text) => (text.trim() === "" ? "An exercise needs a title." : set({ title: text.trim() }))}
        />
        <LongField
          label="Brief"
          note="What the student is to do."
          value={brief}
          onWrite={(text) => set({ brief: text })}
        />
        <LongField
          label="Scenario"
          note="Where and what the set is."
          value={scenario}
          onWrite={(text) => set({ scenario: text })}
        />
        <LongField label="Notes" note="For other teachers." value={notes} onWrite={(text) => set({ notes: text })} />
        <ChoiceField
          label="Unit"
          words={UNIT_TITLES}
          order={UNITS}
          value={unit}
          onChoice={(chosen) => set({ unit: chosen })}
        />
        <ChoiceField
          label="Level"
          words={LEVEL_WORDS}
          order={LEVELS}
          value={String(level) as (typeof LEVELS)[number]}
          onChoice={(chosen) => set({ level: Number(chosen) })}
        />
        <TextField
          label="Name of its file"
          note="Letters, digits, - and _. Marks made on it are known by this name."
          value={id}
          onWrite={(text) => set({ id: text.trim() })}
        />
      </div>
    </section>
  );
}
