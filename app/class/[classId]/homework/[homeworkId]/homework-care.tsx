"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint, Field } from "../../../field";
import { useSend } from "../../../use-send";
import { Select } from "../select";

type ReuseProps = {
  readonly homeworkId: string;
  readonly classId: string;
  readonly needsDate: boolean;
  readonly classes: readonly { readonly id: string; readonly title: string }[];
};

/** The same work for another class or term. */
export function Reuse({ homeworkId, classId, needsDate, classes }: ReuseProps) {
  const [to, setTo] = useState(classId);
  const [due, setDue] = useState("");
  const { sending, complaint, send } = useSend("/api/class/reuse-homework");
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (sending) return;
    const dueAt = due === "" ? null : new Date(due).toISOString();
    const reply = await send({ homeworkId, classId: to, dueAt });
    if (reply) window.location.assign(`/class/${to}/homework/${String(reply.homeworkId)}`);
  };
  return (
    <form className="class-form" onSubmit={submit}>
      <Select label="Class" value={to} choices={classes.map(({ id, title }) => [id, title])} onChoose={setTo} />
      <Field
        label="Due"
        type="datetime-local"
        {...(needsDate ? {} : { note: "Leave it empty for any time." })}
        value={due}
        onWrite={setDue}
      />
      <Complaint>{complaint}</Complaint>
      <Press type="submit" aria-disabled={sending}>
        Set it again
      </Press>
    </form>
  );
}

export function Archive({ homeworkId, archived }: { readonly homeworkId: string; readonly archived: boolean }) {
  const router = useRouter();
  const { send, done, complaint } = useSend("/api/class/archive-homework");
  const change = async () => {
    const reply = await send({ homeworkId, archived: !archived });
    done();
    if (reply) router.refresh();
  };
  return (
    <>
      <Press onClick={change}>{archived ? "Take it out again" : "Put it away"}</Press>
      <Complaint>{complaint}</Complaint>
    </>
  );
}
