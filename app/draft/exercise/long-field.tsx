"use client";

import { useEffect, useId, useState } from "react";

type Props = {
  readonly label: string;
  readonly note: string;
  readonly value: string;
  /** Takes what was written; a sentence says why it cannot be. */
  readonly onWrite: (text: string) => string | null;
};

/** Several lines to write on. What is written counts when they are left. */
export function LongField({ label, note, value, onWrite }: Props) {
  const id = useId();
  const [text, setText] = useState(value);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    setText(value);
    setWrong(null);
  }, [value]);
  return (
    <div className="draft-field" data-wide>
      <label htmlFor={id} className="small-lettering">
        {label}
      </label>
      <textarea
        id={id}
        className="look-list long-field"
        rows={3}
        value={text}
        aria-invalid={wrong !== null}
        aria-describedby={wrong ? `${id}-wrong` : `${id}-note`}
        onChange={(event) => setText(event.target.value)}
        onBlur={() => setWrong(text.trim() === value.trim() ? null : onWrite(text.trim()))}
      />
      {wrong ? (
        <p id={`${id}-wrong`} className="draft-wrong" role="alert">
          {wrong}
        </p>
      ) : (
        <p id={`${id}-note`} className="draft-note">
          {note}
        </p>
      )}
    </div>
  );
}
