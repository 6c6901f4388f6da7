"use client";

import { type FormEvent, useEffect, useState } from "react";
import { forgetPassedOn, passedOn, windowShelf } from "@/app/_parts/own-exercise/passed-on";
import { Press } from "@/app/_parts/press";
import { Complaint } from "../../../field";
import { useSend } from "../../../use-send";
import { deskItem, EMPTY, type FormState, type Item, readForm, withItem } from "./form-state";
import { type Choices, HomeworkFields } from "./homework-fields";

type Props = Choices & {
  readonly classId: string;
  /** What is chosen already as the page opens. */
  readonly first: readonly Item[];
  /** Whether what the drafting desk passed on is chosen as well. */
  readonly takesDesk: boolean;
};

/** Sets homework. What was written stays in the form until the server has taken it. */
export function SetHomeworkForm({ classId, first, takesDesk, ...choices }: Props) {
  const [form, setForm] = useState<FormState>({ ...EMPTY, title: first[0]?.words ?? "", items: first });
  // Only the window knows what was passed on.
  useEffect(() => {
    const passed = takesDesk ? passedOn(windowShelf()) : null;
    if (passed)
      setForm((before) => ({
        ...before,
        title: before.title || passed.title,
        items: withItem(before.items, deskItem(passed)),
      }));
  }, [takesDesk]);
  const [unclear, setUnclear] = useState("");
  const { sending, complaint, send } = useSend("/api/class/set-homework");
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (sending) return;
    const wanted = readForm(form);
    setUnclear(typeof wanted === "string" ? wanted : "");
    if (typeof wanted === "string") return;
    const reply = await send({ classId, ...wanted });
    if (!reply) return;
    const passed = passedOn(windowShelf());
    if (passed && form.items.some(({ key }) => key === deskItem(passed).key)) forgetPassedOn(windowShelf());
    window.location.assign(`/class/${classId}/homework/${String(reply.homeworkId)}`);
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
