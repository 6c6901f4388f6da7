"use client";

import { useState } from "react";
import { newId } from "@/app/_parts/hand-ins/new-id";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { keptAddress } from "@/app/_parts/own-exercise/own-address";
import { setAside } from "@/app/_parts/own-exercise/set-aside";
import { Press, PressLink } from "@/app/_parts/press";
import { Complaint } from "../field";
import { useSend } from "../use-send";

/** Takes a copy of a shared plan: into one's own library, or to the desk of this browser alone. */
export function TakeCopy({ word, text }: { readonly word: string; readonly text: string }) {
  // Pressed twice, it is one copy.
  const [planId] = useState(newId);
  const [taken, setTaken] = useState(false);
  const [refused, setRefused] = useState("");
  const { send, sending, done, complaint } = useSend("/api/class/copy-plan");
  const copy = async () => {
    if (sending) return;
    const reply = await send({ word, planId });
    done();
    if (reply) setTaken(true);
  };
  const toDesk = () => {
    const id = setAside(findShelf(), text);
    if (id === null) setRefused("This browser keeps nothing: its storage is full or blocked.");
    else window.location.assign(keptAddress("/draft/copy", id));
  };
  return (
    <>
      <p role="status">{taken && "The copy is in your library."}</p>
      <div className="class-presses">
        {taken ? (
          <>
            <PressLink href={`/draft/library?plan=${planId}`} weight="main">
              Open it in Draft
            </PressLink>
            <PressLink href={`/class/plans/${planId}`}>See it in your library</PressLink>
          </>
        ) : (
          <>
            <Press weight="main" aria-disabled={sending} onClick={copy}>
              {sending ? "A moment…" : "Take a copy"}
            </Press>
            <Press onClick={toDesk}>Only to the desk of this browser</Press>
          </>
        )}
      </div>
      <Complaint>{complaint || refused}</Complaint>
    </>
  );
}
