"use client";

import { Form } from "../form";
import { newPasswordLine, wordLine } from "../one-time-lines";
import { Part } from "../part";
import { useWordInAddress } from "../word-in-address";

/** A new password for a teacher who lost theirs. */
export function WayBack() {
  const word = useWordInAddress();
  if (word === undefined) return null;
  return (
    <>
      <Part
        id="way-back"
        title="A new password"
        note="Wherever you were signed in, you are signed out. Your classes stay as they are."
      >
        <Form
          path="/api/class/way-back"
          press="Take this password"
          onDone={() => window.location.assign("/class")}
          lines={[wordLine("Word of the way back", word), newPasswordLine("New password")]}
        />
      </Part>
      <Part id="how" title="How to get the word">
        <p>
          Ask another teacher of this server: on their page “Teachers” they can make one for you. It works for a day.
        </p>
        <p className="class-list">
          Or ask whoever runs the server to type <code>npm run way-back -- YOUR-E-MAIL</code> there. That one works for
          an hour.
        </p>
      </Part>
    </>
  );
}
