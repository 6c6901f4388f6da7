import { type ReactNode, useId } from "react";

type Props<Value extends string> = {
  readonly label: string;
  readonly note?: ReactNode;
  readonly value: Value;
  readonly choices: readonly (readonly [value: Value, words: string])[];
  readonly onChoose: (value: Value) => void;
};

/** One of a few, with its name above and what to know of it below. */
export function Select<Value extends string>({ label, note, value, choices, onChoose }: Props<Value>) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={note ? `${id}-note` : undefined}
        onChange={(event) => onChoose(event.target.value as Value)}
      >
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
      {note && (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      )}
    </div>
  );
}
