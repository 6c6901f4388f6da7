"use client";

import { type FormEvent, type ReactNode, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint, Field } from "./field";
import { useSend } from "./use-send";

export type Line = {
  readonly name: string;
  readonly label: string;
  readonly note?: string;
  readonly type?: "text" | "email" | "password";
  readonly autoComplete?: string;
  readonly start?: string;
};

type Props = {
  readonly path: string;
  readonly lines: readonly Line[];
  readonly press: string;
  readonly children?: ReactNode;
  /** Called with the server's answer; the page goes on from there. */
  readonly onDone: (reply: Readonly<Record<string, unknown>>) => void;
};

/** A form of a few lines, kept as it was written until it has been taken. */
export function Form({ path, lines, press, children, onDone }: Props) {
  const [written, setWritten] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries(lines.map(({ name, start }) => [name, start ?? ""])),
  );
  const { sending, complaint, send } = useSend(path);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (sending) return;
    const reply = await send(written);
    if (reply) onDone(reply);
  };
  return (
    <form className="class-form" onSubmit={submit}>
      {children}
      {lines.map(({ name, label, note, type = "text", autoComplete = "off" }) => (
        <Field
          key={name}
          name={name}
          label={label}
          {...(note === undefined ? {} : { note })}
          type={type}
          autoComplete={autoComplete}
          value={written[name] ?? ""}
          onWrite={(value) => setWritten((before) => ({ ...before, [name]: value }))}
        />
      ))}
      <Complaint>{complaint}</Complaint>
      <Press type="submit" weight="main" aria-disabled={sending}>
        {sending ? "A moment…" : press}
      </Press>
    </form>
  );
}
