"use client";

import { useId, useState } from "react";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import type { LengthUnits } from "@/lib/measure/length";

type Props = {
  readonly words: string;
  readonly value: string;
  readonly units: LengthUnits;
  readonly onChange: (text: string) => void;
};

/** A length above 0; what is wrong with it is said once it is left. */
export function LengthField({ words, value, units, onChange }: Props) {
  const id = useId();
  const [left, setLeft] = useState(false);
  const typed = typedLength(value, units);
  const wrong = !left || value.trim() === "" ? null : !typed.ok ? typed.say : typed.metres > 0 ? null : NONE;
  return (
    <div className="draft-field">
      <label htmlFor={id} className="small-lettering">
        {words}
      </label>
      <input
        id={id}
        type="text"
        className="look-list"
        autoComplete="off"
        spellCheck={false}
        value={value}
        placeholder={units === "m" ? "297 mm" : '11"'}
        aria-invalid={wrong !== null}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => {
          setLeft(false);
          onChange(event.target.value);
        }}
        onBlur={() => setLeft(true)}
      />
      {wrong && (
        <p id={`${id}-wrong`} className="draft-wrong">
          {wrong}
        </p>
      )}
    </div>
  );
}

const NONE = "A side is longer than 0.";
