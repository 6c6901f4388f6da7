"use client";

import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint } from "../../../field";
import { useSend } from "../../../use-send";
import { EMPTY, type FormState, readForm } from "./form-state";
import { type Choices, HomeworkFields } from "./homework-fields";

type Props = Choices & { readonly classId: string };

/** Sets homework. What was written stays in the form until the server has taken it. */
export function SetHomeworkForm({ classId, ...choices }: Props) {
  const [form, setForm] = useState<FormState>(EMPTY);
  const [unclear, setUnclear] = useState("");
  const { sending, complaint, send } = useSend("/api/class/set-homework");
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (sending) return;
    const wanted = readForm(form);
    setUnclear(typeof wanted === "string" ? wanted : "");
    if (typeof wanted === "string") return;
    const reply = await send({ classId, ...wanted });
    if (reply) window.location.assign(`/class/${classId}/homework/${String(reply.homeworkId)}`);
  };
  return (
    <form onSubmit={submit}>
      <HomeworkFields {...choices} form={form} onChange={(part) => setForm((before) => ({ ...before, ...part }))}>
        <Complaint>{unclear || complaint}</Complaint>
        <Press type="submit" weight="main" aria-disabled={sending}>
          {sending ? "A moment…" : "Set it"}
        </Press>
      </HomeworkFields>
    </form>
  );
}
