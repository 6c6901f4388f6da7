"use client";

import { useEffect, useState } from "react";
import { PressLink } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { readWordLink } from "@/lib/classroom/accounts/word-link";
import type { Exercise } from "@/lib/exercise/exercise";
import { Complaint } from "../field";
import { Part } from "../part";
import { PlanDrawings } from "../plan-drawings";
import { useSend } from "../use-send";
import { TakeCopy } from "./take-copy";

type Shared = {
  readonly word: string;
  readonly title: string;
  readonly by: string;
  readonly text: string;
  readonly changedAt: string;
  /** Whether it is the reader's own. */
  readonly own: boolean;
  /** Null where this page cannot read it. */
  readonly exercise: Exercise | null;
};

const NO_LINK =
  "The link did not arrive whole: behind the # of its address stand twenty letters. Ask for it once more, or look whether all of it was copied.";

/** The plan that a link opens: what it is, whose it is, and a copy of it. */
export function SharedPlan() {
  const { send, complaint } = useSend("/api/class/shared-plan");
  const [shared, setShared] = useState<Shared | null>(null);
  const [cut, setCut] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is asked for once, and what asks for it is another each time
  useEffect(() => {
    let here = true;
    const open = async () => {
      const word = readWordLink(window.location.hash);
      if (word === "") {
        setCut(true);
        return;
      }
      const reply = await send({ word });
      if (!reply || !here) return;
      const { title, by, text, changedAt, own } = reply as unknown as Shared;
      const exercise = await read(text);
      if (here) setShared({ word, title, by, text, changedAt, own, exercise });
    };
    open();
    return () => {
      here = false;
    };
  }, []);
  if (cut || complaint !== "")
    return (
      <Part id="none" title="No plan">
        <Complaint>{cut ? NO_LINK : complaint}</Complaint>
        <div className="class-presses">
          <PressLink href="/class">To Class</PressLink>
        </div>
      </Part>
    );
  if (!shared)
    return (
      <Part id="opening" title="A plan">
        <p role="status">Opening it…</p>
      </Part>
    );
  const { title, by, changedAt, exercise } = shared;
  return (
    <>
      <Part
        id="plan"
        title={title}
        note={
          <>
            {shared.own ? "You share it yourself" : `${by} shares it`}; kept <When at={changedAt} />.
          </>
        }
      >
        {exercise ? (
          <>
            {exercise.brief !== "" && <p>{exercise.brief}</p>}
            <PlanDrawings exercise={exercise} />
          </>
        ) : (
          <p>This page cannot draw it. A copy of it can be taken all the same.</p>
        )}
      </Part>
      <Part
        id="copy"
        title="Take a copy"
        note={`It is your own from then on: what you change stays with you, and what ${shared.own ? "you change in this one" : `${by} changes`} does not reach it.`}
      >
        <TakeCopy word={shared.word} text={shared.text} />
      </Part>
    </>
  );
}

/** What reads files is heavy, and is fetched only here. */
async function read(text: string): Promise<Exercise | null> {
  const { readExercise } = await import("@/lib/exercise/read-exercise");
  const reading = readExercise(text);
  return reading.ok ? reading.exercise : null;
}
