"use client";

import { Select } from "../select";
import type { FormState } from "./form-state";

type Props = {
  readonly form: FormState;
  readonly members: readonly { readonly id: string; readonly name: string }[];
  readonly habits: readonly { readonly id: string; readonly name: string; readonly students: number }[];
  readonly onChange: (part: Partial<FormState>) => void;
};

/** All, some by name, or those who share a wrong idea. */
export function ToWhom({ form, members, habits, onChange }: Props) {
  const { toWhom, memberIds, habit } = form;
  const kinds: readonly (readonly [FormState["toWhom"], string])[] = [
    ["all", "the whole class"],
    ["some", "some, by name"],
    ...(habits.length > 0 ? [["habit", "those who share a habit"] as const] : []),
  ];
  const toggle = (id: string) =>
    onChange({ memberIds: memberIds.includes(id) ? memberIds.filter((each) => each !== id) : [...memberIds, id] });
  return (
    <>
      <Select
        label="Set it to"
        note={toWhom === "all" && "Whoever joins later gets it too."}
        value={toWhom}
        choices={kinds}
        onChoose={(kind) => onChange({ toWhom: kind, habit: habit || (habits[0]?.id ?? "") })}
      />
      {toWhom === "some" && (
        <fieldset>
          <legend>Students</legend>
          {members.length === 0 && <p>Nobody is in the class yet.</p>}
          <div className="homework-choices">
            {members.map(({ id, name }) => (
              <label key={id}>
                <input type="checkbox" checked={memberIds.includes(id)} onChange={() => toggle(id)} />
                {name}
              </label>
            ))}
          </div>
        </fieldset>
      )}
      {toWhom === "habit" && (
        <Select
          label="Habit"
          note="By the last that each handed in of every exercise, as of now."
          value={habit}
          choices={habits.map(({ id, name, students }) => [
            id,
            `${name}: ${students === 1 ? "1 student" : `${students} students`}`,
          ])}
          onChoose={(chosen) => onChange({ habit: chosen })}
        />
      )}
    </>
  );
}
