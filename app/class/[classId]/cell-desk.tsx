"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Cell, Criterion, Work } from "@/lib/classroom/gradebook/gradebook";
import { Complaint, Field } from "../field";
import { useSend } from "../use-send";
import "../gradebook.css";

type Props = { readonly cell: Cell; readonly work: Pick<Work, "id" | "title" | "criteria"> };

/** What a teacher changes of one student's exercise: the score, the points, whether it is asked at all. */
export function CellDesk({ cell, work }: Props) {
  return (
    <div className="class-two">
      <ByHand cell={cell} />
      {work.criteria.length > 0 && (
        <div className="class-form">
          {work.criteria.map((criterion, i) => (
            <PointsLine key={criterion.name} cell={cell} criterion={criterion} given={cell.points[i] ?? null} />
          ))}
        </div>
      )}
      <Excuse cell={cell} work={work} />
    </div>
  );
}

/** A form's way to the server, after which the page shows what is now kept. */
function useChange(path: string) {
  const router = useRouter();
  const { sending, complaint, send, done } = useSend(path);
  const change = async (body: unknown): Promise<boolean> => {
    if (sending) return false;
    const reply = await send(body);
    done();
    if (reply) router.refresh();
    return reply !== undefined;
  };
  return { sending, complaint, change };
}

/** Written with a comma or a point; nothing where it is no number. */
function readNumber(written: string): number | undefined {
  const text = written.trim().replace(",", ".");
  return text !== "" && Number.isFinite(Number(text)) ? Number(text) : undefined;
}

function ByHand({ cell: { itemId, memberId, override, graded } }: { readonly cell: Cell }) {
  const [score, setScore] = useState(override ? String(override.score) : "");
  const [reason, setReason] = useState(override?.reason ?? "");
  const [unclear, setUnclear] = useState("");
  const kept = useChange("/api/class/override");
  const back = useChange("/api/class/take-back");
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const number = readNumber(score);
    setUnclear(number === undefined ? "A score is a number from 0 to 100." : "");
    if (number !== undefined) await kept.change({ itemId, memberId, score: number, reason });
  };
  return (
    <form className="class-form" onSubmit={submit}>
      {override && (
        <p>
          Changed by hand to {override.score}: {override.reason}
          {graded !== null && ` Plasterline’s own score is ${Math.round(graded)}.`}
        </p>
      )}
      <Field label="Score by hand, 0 to 100" inputMode="decimal" value={score} onWrite={setScore} autoComplete="off" />
      <Field label="Why" value={reason} onWrite={setReason} autoComplete="off" maxLength={500} />
      <Complaint>{unclear || kept.complaint || back.complaint}</Complaint>
      <div className="class-presses">
        <Press type="submit" aria-disabled={kept.sending}>
          Let this score count
        </Press>
        {override && (
          <Press aria-disabled={back.sending} onClick={() => back.change({ itemId, memberId })}>
            Take it back
          </Press>
        )}
      </div>
    </form>
  );
}

type LineProps = { readonly cell: Cell; readonly criterion: Criterion; readonly given: number | null };

function PointsLine({ cell: { itemId, memberId }, criterion, given }: LineProps) {
  const [written, setWritten] = useState(given === null ? "" : String(given));
  const [said, setSaid] = useState("");
  const { complaint, change } = useChange("/api/class/criterion");
  const keep = async () => {
    const points = written.trim() === "" ? null : readNumber(written);
    if (points === undefined) return setSaid("Points are a number.");
    if (points === given) return setSaid("");
    const body = { itemId, memberId, criterion: criterion.name, points };
    setSaid((await change(body)) ? "Kept." : "");
  };
  return (
    <div className="field">
      <Field
        label={`${criterion.name}, of ${criterion.points}`}
        inputMode="decimal"
        autoComplete="off"
        value={written}
        onWrite={setWritten}
        onBlur={keep}
        onKeyDown={(event) => event.key === "Enter" && keep()}
      />
      <Complaint>{complaint}</Complaint>
      <p role="status" className="class-quiet">
        {said}
      </p>
    </div>
  );
}

function Excuse({ cell, work }: Props) {
  const { complaint, change, sending } = useChange("/api/class/excuse");
  const excused = cell.state === "excused";
  return (
    <div className="class-form">
      <p>
        {excused
          ? `Excused from ${work.title}: it is left out of the mean.`
          : `An excused student’s mean leaves all of ${work.title} out.`}
      </p>
      <Complaint>{complaint}</Complaint>
      <Press
        aria-disabled={sending}
        onClick={() => change({ homeworkId: work.id, memberId: cell.memberId, excused: !excused })}
      >
        {excused ? "No longer excused" : "Excuse from this homework"}
      </Press>
    </div>
  );
}
