"use client";

import { useState } from "react";
import { sendJson } from "@/app/_live/send-json";
import { Press } from "@/app/_parts/press";
import { useRoom, useStep } from "./demonstration-context";

/**
 * Lets the whole class place the point of this step, each on their own phone: the screen goes over to the vote, and the browser's
 * own way back leads to this very step. It stands at the steps of a point alone.
 */
export function EveryonePress() {
  const { exercise } = useRoom();
  const { point } = useStep();
  const [complaint, setComplaint] = useState("");
  if (point === null || !exercise.task.marks.includes(point)) return null;
  const open = async () => {
    setComplaint("");
    const reply = await sendJson("/class/live", { exerciseId: exercise.id, point });
    if (reply.ok) window.location.assign(`/class/${String(reply.classId)}/live/${String(reply.voteId)}`);
    else setComplaint(`${reply.sentence ?? "That went wrong."} The teacher signs in under Class first.`);
  };
  return (
    <>
      <Press onClick={open}>Everyone places it</Press>
      {complaint !== "" && <span role="alert">{complaint}</span>}
    </>
  );
}
