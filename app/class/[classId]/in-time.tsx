"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { Complaint, Field } from "../field";
import { useSend } from "../use-send";
import "../gradebook.css";

type Props = {
  readonly handInId: string;
  /** Whose it is, where several stand on one page. */
  readonly name: string;
  readonly madeAt: string | null;
  readonly receivedAt: string;
  readonly dueAt: string | null;
  /** Why it counts as in time; null while it counts as late. */
  readonly reason: string | null;
  /** Of which exercise it is, in a list of several: the reason is then left as it is proposed. */
  readonly exercise?: string;
};

/** Work that came in late: when it was made and when it came in, and one press that has it count as in time. */
export function InTime({ handInId, name, madeAt, receivedAt, dueAt, reason, exercise }: Props) {
  const router = useRouter();
  const [why, setWhy] = useState(proposedReason(madeAt, dueAt));
  const { sending, complaint, send, done } = useSend("/api/class/count-in-time");
  const count = async (said: string | null) => {
    if (sending) return;
    const reply = await send({ handInId, reason: said });
    done();
    if (reply) router.refresh();
  };
  return (
    <div className="in-time">
      <p className="class-quiet">
        {exercise ?? "Late"}: <MadeAndReceived madeAt={madeAt} receivedAt={receivedAt} />
        {reason !== null && ` Counted as in time: ${reason}`}
      </p>
      {reason === null && exercise === undefined && (
        <Field label="Reason to count it as in time" value={why} onWrite={setWhy} autoComplete="off" maxLength={500} />
      )}
      <Complaint>{complaint}</Complaint>
      {reason === null ? (
        <Press
          weight="small"
          aria-label={`Count as in time: ${name}`}
          aria-disabled={sending}
          onClick={() => count(why)}
        >
          Count as in time
        </Press>
      ) : (
        <Press weight="small" aria-label={`Count as late: ${name}`} aria-disabled={sending} onClick={() => count(null)}>
          Count as late
        </Press>
      )}
    </div>
  );
}

/** Both clocks: only the server's is gone by. */
export function MadeAndReceived({ madeAt, receivedAt }: Pick<Props, "madeAt" | "receivedAt">) {
  return (
    <>
      {madeAt !== null && (
        <>
          made <When at={madeAt} /> by the student’s own clock,{" "}
        </>
      )}
      received <When at={receivedAt} />.
    </>
  );
}

function proposedReason(madeAt: string | null, dueAt: string | null): string {
  const before = madeAt !== null && dueAt !== null && madeAt <= dueAt;
  return before ? "Made before it was due, by the student’s own clock." : "Excused by the teacher.";
}
