"use client";

import { useEffect, useId, useState } from "react";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import { printLength } from "@/lib/measure/print-length";
import { useDesk } from "../desk/draft-context";

type FieldProps = {
  readonly label: string;
  /** What it means, under it. */
  readonly note?: string;
};

type TextProps = FieldProps & {
  readonly value: string;
  /** Takes what was written; a sentence says why it cannot be. */
  readonly onWrite: (text: string) => string | null;
  readonly wide?: boolean;
};

/** A line to write on. What is written counts when it is left, or with Enter; what cannot be says why, and stays to be mended. */
export function TextField({ label, note, value, onWrite, wide = false }: TextProps) {
  const id = useId();
  const [text, setText] = useState(value);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    setText(value);
    setWrong(null);
  }, [value]);
  const take = () => {
    if (text.trim() === value.trim()) {
      setText(value);
      setWrong(null);
      return;
    }
    const say = onWrite(text);
    setWrong(say);
  };
  const told = [wrong && `${id}-wrong`, note && `${id}-note`].filter(Boolean).join(" ");
  return (
    <div className="draft-field" data-wide={wide || undefined}>
      <label htmlFor={id} className="small-lettering">
        {label}
      </label>
      <input
        id={id}
        type="text"
        className="look-list"
        autoComplete="off"
        spellCheck={false}
        value={text}
        aria-invalid={wrong !== null}
        aria-describedby={told || undefined}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            event.preventDefault();
            take();
          } else if (event.key === "Escape") {
            setText(value);
            setWrong(null);
          }
        }}
      />
      {wrong && (
        <p id={`${id}-wrong`} className="draft-wrong" role="alert">
          {wrong}
        </p>
      )}
      {note && (
        <p id={`${id}-note`} className="draft-note">
          {note}
        </p>
      )}
    </div>
  );
}

type LengthProps = FieldProps & {
  readonly metres: number;
  readonly onLength: (metres: number) => string | null;
};

/** A length as people write it; shown as drafters write it. */
export function LengthField({ metres, onLength, ...rest }: LengthProps) {
  const units = useDesk((desk) => desk.history.draft.exercise.units);
  return (
    <TextField
      {...rest}
      value={printLength(metres, units)}
      onWrite={(text) => {
        const typed = typedLength(text, units);
        return typed.ok ? onLength(typed.metres) : typed.say;
      }}
    />
  );
}

type NumberProps = FieldProps & {
  readonly value: number;
  readonly onNumber: (value: number) => string | null;
  /** Why a text is no such number. */
  readonly refuse: string;
  readonly unit?: string;
};

/** A plain number. */
export function NumberField({ value, onNumber, refuse, unit = "", ...rest }: NumberProps) {
  const shown = `${Math.round(value * 1000) / 1000}${unit}`;
  return (
    <TextField
      {...rest}
      value={shown}
      onWrite={(text) => {
        const plain = text.replace("−", "-").replace(unit, "").trim();
        const read = /^[-+]?\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
        return Number.isFinite(read) ? onNumber(read) : refuse;
      }}
    />
  );
}

type ChoiceProps<Word extends string> = FieldProps & {
  readonly words: Readonly<Record<Word, string>>;
  readonly order: readonly Word[];
  readonly value: Word;
  readonly onChoice: (word: Word) => void;
};

/** A list to choose one of. */
export function ChoiceField<Word extends string>({ label, note, words, order, value, onChoice }: ChoiceProps<Word>) {
  const id = useId();
  return (
    <div className="draft-field">
      <label htmlFor={id} className="small-lettering">
        {label}
      </label>
      <select
        id={id}
        className="look-list"
        value={value}
        aria-describedby={note ? `${id}-note` : undefined}
        onChange={(event) => {
          const chosen = order.find((each) => each === event.target.value);
          if (chosen !== undefined) onChoice(chosen);
        }}
      >
        {order.map((word) => (
          <option key={word} value={word}>
            {words[word]}
          </option>
        ))}
      </select>
      {note && (
        <p id={`${id}-note`} className="draft-note">
          {note}
        </p>
      )}
    </div>
  );
}
