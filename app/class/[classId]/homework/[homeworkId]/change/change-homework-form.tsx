"use client";

import { type FormEvent, useEffect, useState } from "react";
import { Press, PressLink } from "@/app/_parts/press";
import type { ToAgree } from "@/lib/classroom/homework/edit-homework";
import { Complaint } from "../../../../field";
import { useSend } from "../../../../use-send";
import { localTime } from "../../local-time";
import { type FormState, type KnownItem, readForm } from "../../set/form-state";
import { type Choices, HomeworkFields } from "../../set/homework-fields";
import { AgreeFirst } from "./agree-first";

type Props = Choices & {
  readonly classId: string;
  readonly homeworkId: string;
  readonly dueAt: string | null;
  readonly start: FormState;
  readonly known: readonly KnownItem[];
};

const NOTHING = { hides: 0, seal: null };

/** Changes homework that is set. What hides drawings or changes scores is shown first, and done once it was agreed to. */
export function ChangeHomeworkForm({ classId, homeworkId, dueAt, start, known, ...choices }: Props) {
  const [form, setForm] = useState(start);
  const [unclear, setUnclear] = useState("");
  const [toAgree, setToAgree] = useState<ToAgree | null>(null);
  const { sending, complaint, send, done } = useSend("/api/class/change-homework");
  const page = `/class/${classId}/homework/${homeworkId}`;
  // Only the browser knows the reader's own time.
  useEffect(() => {
    if (dueAt !== null) setForm((before) => ({ ...before, due: localTime(dueAt) }));
  }, [dueAt]);
  const change = (part: Partial<FormState>) => {
    setForm((before) => ({ ...before, ...part }));
    setToAgree(null);
  };
  const put = async (agreed: { readonly hides: number; readonly seal: string | null }) => {
    if (sending) return;
    const wanted = readForm(form);
    setUnclear(typeof wanted === "string" ? wanted : "");
    if (typeof wanted === "string") return;
    // The field knows no seconds: a date that was left alone stays to the second.
    const untouched = dueAt !== null && form.due === localTime(dueAt);
    const reply = await send({ homeworkId, ...wanted, ...(untouched ? { dueAt } : {}), agreed });
    done();
    if (reply?.done === true) window.location.assign(page);
    setToAgree(reply?.done === false ? (reply as unknown as ToAgree) : null);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void put(NOTHING);
  };
  return (
    <form onSubmit={submit}>
      <HomeworkFields {...choices} form={form} known={known} onChange={change}>
        <Complaint>{unclear || complaint}</Complaint>
        {toAgree ? (
          <AgreeFirst
            hides={toAgree.hides}
            preview={toAgree.preview}
            sending={sending}
            onYes={() => void put({ hides: toAgree.hides, seal: toAgree.preview?.seal ?? null })}
            onNo={() => setToAgree(null)}
          />
        ) : (
          <div className="class-presses">
            <Press type="submit" weight="main" aria-disabled={sending}>
              {sending ? "A moment…" : "Change it"}
            </Press>
            <PressLink href={page}>Leave it as it was</PressLink>
          </div>
        )}
      </HomeworkFields>
    </form>
  );
}
