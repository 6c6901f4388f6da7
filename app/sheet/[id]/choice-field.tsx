import { useId } from "react";

type Props<Word extends string> = {
  readonly label: string;
  /** Its name in the address. */
  readonly name: string;
  readonly words: Readonly<Record<Word, string>>;
  readonly order: readonly Word[];
  readonly value: Word;
  readonly onChange: (word: Word) => void;
};

/** A list to choose one of, with its name over it. */
export function ChoiceField<Word extends string>({ label, name, words, order, value, onChange }: Props<Word>) {
  const id = useId();
  return (
    <div className="printing-field">
      <label htmlFor={id} className="small-lettering">
        {label}
      </label>
      <select
        id={id}
        name={name}
        className="look-list"
        value={value}
        onChange={(event) => {
          const chosen = order.find((each) => each === event.target.value);
          if (chosen) onChange(chosen);
        }}
      >
        {order.map((word) => (
          <option key={word} value={word}>
            {words[word]}
          </option>
        ))}
      </select>
    </div>
  );
}
