"use client";

import { useState } from "react";
import { Form } from "../form";

/** A new password for a teacher who knows the old one. */
export function ChangePassword() {
  const [changes, setChanges] = useState(0);
  return (
    <>
      <Form
        key={changes}
        path="/api/class/password"
        press="Change the password"
        onDone={() => setChanges(changes + 1)}
        lines={[
          { name: "old", label: "Old password", type: "password", autoComplete: "current-password" },
          {
            name: "password",
            label: "New password",
            type: "password",
            note: "At least 10 letters; a few words do well.",
            autoComplete: "new-password",
          },
        ]}
      />
      <p role="status">{changes > 0 && "Your password is changed."}</p>
    </>
  );
}
