"use client";

import { useId } from "react";

type Props = {
  readonly words: string;
  readonly value: string;
  readonly onChange: (typed: string) => void;
  readonly trouble: string | null;
  /** After the field: a unit. */
  readonly unit?: string;
  readonly example?: string;
  readonly narrow?: boolean;
};

/** A field with what is wrong with it in words. */
export function TypedField({ words, value, onChange, trouble, unit, example, narrow = false }: Props) {
  const id = useId();
  return (
    <div className="eye-field">
      <label htmlFor={id}>{words}</label>
      <span className="eye-typed">
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellCheck={false}
          className={narrow ? "eye-input eye-narrow" : "eye-input"}
          value={value}
          placeholder={example}
          onChange={(event) => onChange(event.target.value)}
          aria-invalid={trouble !== null}
          aria-describedby={trouble ? `${id}-trouble` : undefined}
        />
        {unit && <span>{unit}</span>}
      </span>
      {trouble && (
        <p id={`${id}-trouble`} className="check-note">
          {trouble}
        </p>
      )}
    </div>
  );
}
