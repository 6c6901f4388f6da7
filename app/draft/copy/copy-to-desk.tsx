"use client";

import { useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { keptAddress } from "@/app/_parts/own-exercise/own-address";
import { type OwnText, useOwnText } from "@/app/_parts/own-exercise/use-own-text";
import { PlainPage } from "@/app/_parts/plain-page";
import { Press, PressLink } from "@/app/_parts/press";
import { startHistory } from "@/lib/draft/history";
import { CHOOSING } from "../hand/hand";
import { freshKey, keepPlan } from "../kept/kept-plans";
import { useReadDraft } from "./use-read-draft";

/** A plan that came in, and what can be done with it. What its author does to it later does not come along: it is a copy. */
export function CopyToDesk() {
  const own = useOwnText();
  const reading = useReadDraft(own.kind === "found" ? own.text : null);
  const [refused, setRefused] = useState(false);
  if (own.kind === "gone")
    return (
      <PlainPage title="That plan is not here" actions={<PressLink href="/draft">To the drafting desk</PressLink>}>
        <p>The link did not arrive whole, or this browser does not keep the plan any more. Ask for it as a file.</p>
      </PlainPage>
    );
  if (!reading) return <p className="aloud">Opening the plan.</p>;
  if (!reading.ok)
    return (
      <PlainPage title="This plan cannot be read" actions={<PressLink href="/draft">To the drafting desk</PressLink>}>
        {reading.problems.slice(0, 5).map(({ where, message, hint }) => (
          <p key={`${where} ${message}`}>
            {where || "The file"}: {message} ({hint}).
          </p>
        ))}
      </PlainPage>
    );
  const { exercise } = reading.draft;
  const copy = () => {
    const shelf = findShelf();
    const work = { history: startHistory(reading.draft), done: [], undone: [], hand: CHOOSING, measures: null };
    if (shelf && keepPlan(shelf, freshKey(shelf), work, new Date().toISOString())) window.location.assign("/draft");
    else setRefused(true);
  };
  return (
    <PlainPage
      title={exercise.title}
      actions={
        <>
          <Press weight="main" onClick={copy}>
            Copy it to your desk
          </Press>
          <PractiseLink own={own} />
          <PressLink href="/draft">Leave it</PressLink>
        </>
      }
    >
      {exercise.brief !== "" && <p>{exercise.brief}</p>}
      <p>
        Your copy is your own: what is changed on it afterwards, here or there, stays here or there. The plans on your
        desk stay as they are.
      </p>
      {refused && <p role="alert">This browser does not keep the plan: its storage is full or blocked.</p>}
    </PlainPage>
  );
}

function PractiseLink({ own }: { readonly own: OwnText }) {
  const id = own.kind === "found" ? own.id : null;
  return id === null ? null : <PressLink href={keptAddress("/practise/draft", id)}>Practise it</PressLink>;
}
