"use client";

import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";
import { Complaint } from "../../field";
import { useSend } from "../../use-send";

type Choice = {
  readonly id: string;
  readonly title: string;
  readonly points: readonly { readonly name: string; readonly words: string }[];
};

/** An exercise of the course and one of its points, for everyone to place. */
export function OpenVote({ classId, choices }: { readonly classId: string; readonly choices: readonly Choice[] }) {
  const [exerciseId, setExerciseId] = useState(choices[0]?.id ?? "");
  const chosen = choices.find(({ id }) => id === exerciseId);
  const [point, setPoint] = useState("");
  const known = chosen?.points.find(({ name }) => name === point) ?? chosen?.points[0];
  const { sending, send, complaint } = useSend("/class/live");
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const reply = await send({ classId, exerciseId, point: known?.name ?? "" });
    if (reply) window.location.assign(`/class/${classId}/live/${String(reply.voteId)}`);
  };
  return (
    <form className="class-form" onSubmit={submit}>
      <label className="field">
        <span>Exercise</span>
        <select className="look-list" value={exerciseId} onChange={(event) => setExerciseId(event.target.value)}>
          {choices.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>Point</span>
        <select className="look-list" value={known?.name ?? ""} onChange={(event) => setPoint(event.target.value)}>
          {chosen?.points.map(({ name, words }) => (
            <option key={name} value={name}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <Complaint>{complaint}</Complaint>
      <Press type="submit" weight="main" aria-disabled={sending}>
        Everyone places it
      </Press>
    </form>
  );
}
