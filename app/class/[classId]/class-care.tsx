"use client";

import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint, Field } from "../field";
import { useSend } from "../use-send";
import { Twice } from "./twice";

/** For how long work is kept. */
export function KeepDays({ classId, days }: { readonly classId: string; readonly days: number }) {
  const [written, setWritten] = useState(days === 0 ? "" : String(days));
  const [said, setSaid] = useState("");
  const { sending, send, done, complaint } = useSend("/api/class/keep-days");
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setSaid("");
    const keepDays = written.trim() === "" ? 0 : Number(written);
    if (!Number.isInteger(keepDays)) return setSaid("Write a whole number of days, or nothing.");
    const reply = await send({ classId, keepDays });
    done();
    if (reply) setSaid(keepDays === 0 ? "Work is kept until you erase it." : `Work is erased after ${keepDays} days.`);
  };
  return (
    <form className="class-form" onSubmit={submit}>
      <Field
        label="Erase work after so many days"
        note="Leave it empty to keep work until you erase it."
        inputMode="numeric"
        value={written}
        onWrite={setWritten}
      />
      <Complaint>{complaint}</Complaint>
      <p role="status">{said}</p>
      <Press type="submit" aria-disabled={sending}>
        Keep it so
      </Press>
    </form>
  );
}

export function EraseClass({ classId, title }: { readonly classId: string; readonly title: string }) {
  const { send, complaint } = useSend("/api/class/erase-class");
  const erase = async () => {
    if (await send({ classId })) window.location.assign("/class");
  };
  return (
    <>
      <Twice
        words="Erase the class"
        whose={title}
        sure="Erase the class and all its work?"
        weight="plain"
        onSure={erase}
      />
      <Complaint>{complaint}</Complaint>
    </>
  );
}
