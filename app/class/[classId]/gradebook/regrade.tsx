"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useId, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Preview } from "@/lib/classroom/gradebook/regrade";
import { Complaint } from "../../field";
import { useSend } from "../../use-send";
import { RegradeOutcome, sayScores } from "./regrade-outcome";

type Props = { readonly classId: string; readonly work: readonly { readonly id: string; readonly title: string }[] };

/** Grades a homework anew: first what would change, then the change, all of it at once. */
export function Regrade({ classId, work }: Props) {
  const router = useRouter();
  const [homeworkId, setHomework] = useState(work[0]?.id ?? "");
  const [strictness, setStrictness] = useState("as-set");
  const [exercises, setExercises] = useState("as-set");
  const [preview, setPreview] = useState<Preview | null>(null);
  const [said, setSaid] = useState("");
  const { sending, complaint, send, done } = useSend("/api/class/regrade");
  const asked = { classId, homeworkId, strictness, exercises };
  const choose = (set: (value: string) => void) => (value: string) => {
    set(value);
    setPreview(null);
    setSaid("");
  };
  const look = async () => {
    setSaid("");
    const reply = await send(asked);
    done();
    setPreview(reply ? (reply.preview as Preview) : null);
  };
  const apply = async (seal: string) => {
    const reply = await send({ ...asked, seal });
    done();
    setPreview(null);
    if (!reply) return;
    setSaid(`Done: ${sayScores((reply.preview as Preview).changes.length)} changed.`);
    router.refresh();
  };
  return (
    <div className="class-form">
      <Pick label="Homework" value={homeworkId} onPick={choose(setHomework)}>
        {work.map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
      </Pick>
      <Pick label="How strictly" value={strictness} onPick={choose(setStrictness)}>
        <option value="as-set">As it was set</option>
        <option value="exercise">As each exercise says</option>
        <option value="thumbnail">As a thumbnail</option>
        <option value="sketch">As a sketch</option>
        <option value="drafted">As a drafted drawing</option>
      </Pick>
      <Pick label="Exercises" value={exercises} onPick={choose(setExercises)}>
        <option value="as-set">As they were set</option>
        <option value="course">As they are in the course now</option>
      </Pick>
      <Press onClick={look} aria-disabled={sending}>
        {sending ? "A moment…" : "See what would change"}
      </Press>
      <Complaint>{complaint}</Complaint>
      <p role="status">{said}</p>
      {preview && (
        <>
          <RegradeOutcome preview={preview} />
          <Press weight="main" onClick={() => apply(preview.seal)}>
            {preview.changes.length === 0 ? "Keep it graded so" : `Change ${sayScores(preview.changes.length)}`}
          </Press>
        </>
      )}
    </div>
  );
}

type PickProps = {
  readonly label: string;
  readonly value: string;
  readonly onPick: (value: string) => void;
  readonly children: ReactNode;
};

function Pick({ label, value, onPick, children }: PickProps) {
  const id = useId();
  return (
    <div className="class-pick">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.target.value)}>
        {children}
      </select>
    </div>
  );
}
