"use client";

import { useId, useState } from "react";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import type { LengthUnits } from "@/lib/measure/length";

type Props = {
  readonly label: string;
  readonly value: string;
  readonly units: LengthUnits;
  readonly onChange: (text: string) => void;
  /** What it means, under it. */
  readonly note?: string;
  readonly example?: string;
};

const NONE = "This length must be above 0.";

/** A length above 0 that counts while it is typed; what is wrong with it is said once it is left. */
export function TypedLength({ label, value, units, onChange, note, example }: Props) {
  const id = useId();
  const [left, setLeft] = useState(false);
  const typed = typedLength(value, units);
  const wrong = !left || value.trim() === "" ? null : !typed.ok ? typed.say : typed.metres > 0 ? null : NONE;
  const under = wrong ?? note;
  return (
    <div className="draft-field">
      <label htmlFor={id} className="small-lettering">
        {label}
      </label>
      <input
        id={id}
        type="text"
        className="look-list"
        autoComplete="off"
        spellCheck={false}
        value={value}
        placeholder={example}
        aria-invalid={wrong !== null}
        aria-describedby={under ? `${id}-note` : undefined}
        onChange={(event) => {
          setLeft(false);
          onChange(event.target.value);
        }}
        onBlur={() => setLeft(true)}
      />
      {under && (
        <p id={`${id}-note`} className={wrong ? "draft-wrong" : "draft-note"} role={wrong ? "alert" : undefined}>
          {under}
        </p>
      )}
    </div>
  );
}
