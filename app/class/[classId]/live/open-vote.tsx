"use client";

import { type FormEvent, useId, useState } from "react";
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
      <Chooser
        label="Exercise"
        value={exerciseId}
        onChoose={setExerciseId}
        options={choices.map(({ id, title }) => ({ value: id, words: title }))}
      />
      <Chooser
        label="Point"
        value={known?.name ?? ""}
        onChoose={setPoint}
        options={chosen?.points.map(({ name, words }) => ({ value: name, words })) ?? []}
      />
      <Complaint>{complaint}</Complaint>
      <Press type="submit" weight="main" aria-disabled={sending}>
        Everyone places it
      </Press>
    </form>
  );
}

type ChooserProps = {
  readonly label: string;
  readonly value: string;
  readonly onChoose: (value: string) => void;
  readonly options: readonly { readonly value: string; readonly words: string }[];
};

function Chooser({ label, value, onChoose, options }: ChooserProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} className="look-list" value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </select>
    </div>
  );
}
