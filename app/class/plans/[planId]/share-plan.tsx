"use client";

import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { writeWordLink } from "@/lib/classroom/accounts/word-link";
import { Complaint, Field } from "../../field";
import { useSend } from "../../use-send";

type Props = {
  readonly planId: string;
  /** The word of its link; null while it is not shared. */
  readonly word: string | null;
  /** Where others find this server; a guess where this page was opened at an address that only this computer has. */
  readonly base: string;
  readonly guessed: boolean;
};

/** A link by which colleagues take a copy, and its end. */
export function SharePlan({ planId, word: before, base, guessed }: Props) {
  const [word, setWord] = useState(before);
  const [said, setSaid] = useState("");
  const { send, done, complaint } = useSend("/api/class/share-plan");
  const share = async (shared: boolean) => {
    const reply = await send({ planId, shared });
    done();
    if (!reply) return;
    setWord(typeof reply.word === "string" ? reply.word : null);
    setSaid(shared ? "" : "The link leads nowhere now. Copies that were taken stay.");
  };
  const address = word === null ? "" : `${base}${writeWordLink("shared", word)}`;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setSaid("The link is copied.");
    } catch {
      setSaid("This browser gives no clipboard to this page: take the link out of its line by hand.");
    }
  };
  return (
    <div className="class-form">
      {word === null ? (
        <Press onClick={() => share(true)}>Make a link</Press>
      ) : (
        <>
          <Field
            label="Link for a colleague"
            note="It shows the plan as it is in your library when they open it. Whoever has it and teaches here can take a copy."
            readOnly
            value={address}
            onWrite={() => {}}
            onFocus={(event) => event.target.select()}
          />
          {guessed && (
            <p className="class-quiet">
              Other devices reach this computer only when Plasterline was started for the room: npm start -- --lan
            </p>
          )}
          <div className="class-presses">
            <Press onClick={copy}>Copy the link</Press>
            <Press onClick={() => share(false)}>End the link</Press>
          </div>
        </>
      )}
      <Complaint>{complaint}</Complaint>
      <p role="status">{said}</p>
    </div>
  );
}
