"use client";

import { useState } from "react";
import { Form } from "../form";
import { Keep } from "../keep-passphrase";
import { Part } from "../part";

type Props = { readonly code: string; readonly name: string };

/** The form, then the passphrase to keep, which is shown this once. */
export function Join({ code, name }: Props) {
  const [kept, setKept] = useState<{ readonly passphrase: string; readonly link: string } | undefined>();
  if (kept)
    return (
      <Part
        id="keep"
        title="You are in"
        note="This is how you come back from another device, or when this one forgets you."
      >
        <Keep {...kept} whose="your" goOn={{ href: "/class", words: "I have it: go on to your class" }} />
      </Part>
    );
  return (
    <Part id="join" title="Your place" note="Your teacher shows you the code. You need no e-mail address.">
      <Form
        path="/api/class/join"
        press="Join"
        lines={[
          { name: "code", label: "Class code", note: "Six letters.", start: code },
          {
            name: "name",
            label: "Your name",
            note: "The one your teacher knows you by.",
            start: name,
            autoComplete: "name",
          },
        ]}
        onDone={({ passphrase, link }) => {
          // Who had a passphrase before keeps it.
          if (typeof passphrase === "string" && typeof link === "string") setKept({ passphrase, link });
          else window.location.assign("/class");
        }}
      />
    </Part>
  );
}
