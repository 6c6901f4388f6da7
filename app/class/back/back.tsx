"use client";

import { useEffect, useState } from "react";
import { readPrivateLink, type WayBack } from "@/lib/classroom/accounts/private-link";
import { Form } from "../form";
import { Part } from "../part";

/** The three things to know, filled in from a private link where one was followed. */
export function Back() {
  const [way, setWay] = useState<WayBack | null | undefined>();
  useEffect(() => {
    setWay(readPrivateLink(window.location.hash) ?? null);
    // The link's secret is not left standing in the address, where anyone behind the chair can read it.
    window.history.replaceState(null, "", window.location.pathname);
  }, []);
  if (way === undefined) return null;
  return (
    <Part id="back" title="Your way back" note="If you have lost your passphrase, your teacher can give you a new one.">
      <Form
        path="/api/class/back"
        press="Come back"
        onDone={() => window.location.assign("/class")}
        lines={[
          { name: "code", label: "Class code", start: way?.code ?? "" },
          { name: "name", label: "Your name", start: way?.name ?? "", autoComplete: "name" },
          {
            name: "passphrase",
            label: "Passphrase",
            note: "Four words. Capitals and dashes do not matter.",
            start: way?.passphrase ?? "",
          },
        ]}
      >
        {way && <p>Your private link has filled this in. Press to go on.</p>}
      </Form>
    </Part>
  );
}
