"use client";

import type { ReactNode } from "react";
import { Field } from "../../../field";
import { Part } from "../../../part";
import { Select } from "../select";
import { ChooseExercises, type CourseUnit } from "./choose-exercises";
import type { PlanChoice } from "./choose-plans";
import type { FormState, KnownItem } from "./form-state";
import { ToWhom } from "./to-whom";

export type Choices = {
  readonly course: readonly CourseUnit[];
  /** Plans of the teacher's own library. */
  readonly plans: readonly PlanChoice[];
  readonly members: readonly { readonly id: string; readonly name: string }[];
  /** Habits that somebody in the class holds. */
  readonly habits: readonly { readonly id: string; readonly name: string; readonly students: number }[];
};

type Props = Choices & {
  readonly form: FormState;
  /** Exercises that are in the homework already, or were. */
  readonly known?: readonly KnownItem[];
  readonly onChange: (part: Partial<FormState>) => void;
  /** The end of the form: what was wrong, and the press. */
  readonly children: ReactNode;
};

/** All that homework is set with. */
export function HomeworkFields({
  course,
  plans,
  members,
  habits,
  form,
  known = [],
  onChange: change,
  children,
}: Props) {
  return (
    <>
      <Part id="what" title="What to draw" note="In the order they stand in the list.">
        <div className="class-form homework-form">
          <Field label="Title" value={form.title} autoComplete="off" onWrite={(title) => change({ title })} />
          <ChooseExercises
            course={course}
            plans={plans}
            items={form.items}
            known={known}
            onChange={(items) => change({ items })}
          />
        </div>
      </Part>
      <Part id="when" title="When and how often">
        <div className="class-form homework-form">
          <div className="homework-pair">
            <Field
              label="Due"
              type="datetime-local"
              note="Leave it empty for any time."
              value={form.due}
              onWrite={(due) => change({ due })}
            />
            <Field
              label="Attempts"
              inputMode="numeric"
              note="Leave it empty for any number."
              value={form.attempts}
              onWrite={(attempts) => change({ attempts })}
            />
            <Select
              label="Of several attempts"
              value={form.counts}
              choices={[
                ["best", "the best counts"],
                ["last", "the last counts"],
              ]}
              onChoose={(counts) => change({ counts })}
            />
          </div>
        </div>
      </Part>
      <Part id="how" title="How it is judged">
        <div className="class-form homework-form">
          <div className="homework-pair">
            <Select
              label="Corrections and scores"
              note="After the due date, marks are only set down until then, and the drawing goes on from the student's own."
              value={form.feedback}
              choices={[
                ["at-once", "at every mark"],
                ["after-due", "after the due date"],
              ]}
              onChoose={(feedback) => change({ feedback })}
            />
            <Select
              label="Near enough"
              value={form.strictness}
              choices={[
                ["own", "as each exercise has it"],
                ["thumbnail", "as in a thumbnail"],
                ["sketch", "as in a sketch"],
                ["drafted", "as in drafted work"],
              ]}
              onChoose={(strictness) => change({ strictness })}
            />
            <Select
              label="Hints"
              value={form.hints}
              choices={[
                ["allowed", "as each exercise has them"],
                ["none", "none"],
              ]}
              onChoose={(hints) => change({ hints })}
            />
            <Field
              label="Weight"
              inputMode="decimal"
              note="Against the other homework of the class."
              value={form.weight}
              onWrite={(weight) => change({ weight })}
            />
          </div>
          <div className="field">
            <label htmlFor="criteria">Criteria of your own</label>
            <textarea
              id="criteria"
              aria-describedby="criteria-note"
              value={form.criteria}
              onChange={(event) => change({ criteria: event.target.value })}
            />
            <p className="field-note" id="criteria-note">
              What you will judge by eye: one a line, with its most points. For example: Line quality, 10
            </p>
          </div>
        </div>
      </Part>
      <Part id="whom" title="To whom">
        <div className="class-form homework-form">
          <ToWhom form={form} members={members} habits={habits} onChange={change} />
          {children}
        </div>
      </Part>
    </>
  );
}
