"use client";

import { PressLink } from "@/app/_parts/press";
import { Form } from "./form";
import { Part } from "./part";
import { SignInForm } from "./sign-in-form";

/** A whole new page with the session's cookie, drawn by the server. */
const toClass = () => window.location.assign("/class");

/** The page of a server that nobody has used for a class yet. */
export function FirstRun({ atTheServer }: { readonly atTheServer: boolean }) {
  const word = {
    name: "word",
    label: "Word from the server",
    note: "It stands in the window in which Plasterline was started: whoever sees that window may begin.",
  };
  return (
    <Part
      id="first"
      title="You are the first"
      note="Nobody teaches here yet. Make yourself the teacher; students need no e-mail address, only a code that you will give them."
    >
      <Form
        path="/api/class/first-teacher"
        press="Begin to teach here"
        onDone={toClass}
        lines={[
          { name: "name", label: "Your name", note: "As your students know you.", autoComplete: "name" },
          { name: "email", label: "E-mail address", type: "email", autoComplete: "username" },
          {
            name: "password",
            label: "Password",
            type: "password",
            note: "At least 10 letters; a few words do well. No letter brings a new one.",
            autoComplete: "new-password",
          },
          ...(atTheServer ? [] : [word]),
        ]}
      />
    </Part>
  );
}

/** The two ways in. */
export function WaysIn() {
  return (
    <>
      <Part id="students" title="Students" note="You need no e-mail address.">
        <div className="class-presses">
          <PressLink href="/class/join" weight="main">
            Join a class
          </PressLink>
          <PressLink href="/class/back">Come back to your class</PressLink>
        </div>
      </Part>
      <Part id="teachers" title="Teachers">
        <SignInForm onDone={toClass} />
      </Part>
    </>
  );
}
