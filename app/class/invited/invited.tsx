"use client";

import { Form } from "../form";
import { newPasswordLine, wordLine } from "../one-time-lines";
import { Part } from "../part";
import { useWordInAddress } from "../word-in-address";

/** An invited teacher says who they are; the word is filled in from a link where one was followed. */
export function Invited() {
  const word = useWordInAddress();
  if (word === undefined) return null;
  return (
    <Part
      id="invited"
      title="You are invited"
      note="A teacher of this server has asked you in. You will have classes of your own, which only you see."
    >
      <Form
        path="/api/class/invited"
        press="Begin to teach here"
        onDone={() => window.location.assign("/class")}
        lines={[
          wordLine("Word of the invitation", word),
          { name: "name", label: "Your name", note: "As your students know you.", autoComplete: "name" },
          {
            name: "email",
            label: "E-mail address",
            type: "email",
            note: "You sign in with it. No letter is sent to it.",
            autoComplete: "username",
          },
          newPasswordLine("Password"),
        ]}
      />
    </Part>
  );
}
