"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint, Field } from "../../../field";
import { useSend } from "../../../use-send";
import { localTime } from "../local-time";

type Props = {
  readonly homeworkId: string;
  readonly memberId: string;
  readonly name: string;
  readonly ownDueAt: string | null;
  readonly excused: boolean;
};

/** Another due date for one student, or none of it at all. */
export function StudentTerms({ homeworkId, memberId, name, ownDueAt, excused }: Props) {
  const router = useRouter();
  const [due, setDue] = useState<string | null>(null);
  const { send, done, complaint } = useSend("/api/class/homework-terms");
  const agree = async (terms: { readonly dueAt: string | null; readonly excused: boolean }) => {
    const reply = await send({ homeworkId, memberId, ...terms });
    done();
    if (!reply) return;
    setDue(null);
    router.refresh();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void agree({ dueAt: due ? new Date(due).toISOString() : null, excused });
  };
  return (
    <>
      {due === null ? (
        <span className="class-who">
          <Press
            weight="small"
            aria-label={`Another date for ${name}`}
            onClick={() => setDue(ownDueAt ? localTime(ownDueAt) : "")}
          >
            Another date
          </Press>
          <Press
            weight="small"
            aria-label={excused ? `No longer excuse ${name}` : `Excuse ${name}`}
            onClick={() => void agree({ dueAt: ownDueAt, excused: !excused })}
          >
            {excused ? "No longer excuse" : "Excuse"}
          </Press>
        </span>
      ) : (
        <form className="class-form" onSubmit={submit}>
          <Field
            label={`Due for ${name}`}
            type="datetime-local"
            note="Leave it empty for the date of all."
            value={due}
            onWrite={setDue}
          />
          <div className="class-who">
            <Press type="submit" weight="small">
              Agree
            </Press>
            <Press weight="small" onClick={() => setDue(null)}>
              Leave it
            </Press>
          </div>
        </form>
      )}
      <Complaint>{complaint}</Complaint>
    </>
  );
}
