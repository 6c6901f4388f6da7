import { useId } from "react";

type Props = {
  readonly label: string;
  /** Its name in the address. */
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly note?: string;
};

/** A whole number with its name over it. */
export function NumberField({ label, name, least, most, value, onChange, note }: Props) {
  const id = useId();
  return (
    <div className="printing-field">
      <label htmlFor={id} className="small-lettering">
        {label}
      </label>
      <input
        id={id}
        name={name}
        className="look-list"
        type="number"
        inputMode="numeric"
        min={least}
        max={most}
        step={1}
        required
        aria-describedby={note ? `${id}-note` : undefined}
        value={Number.isNaN(value) ? "" : value}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
      {note && (
        <p id={`${id}-note`} className="printing-note">
          {note}
        </p>
      )}
    </div>
  );
}
