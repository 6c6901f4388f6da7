"use client";

import { PressLink } from "@/app/_parts/press";
import { Form } from "./form";

/** How a teacher signs in. */
export function SignInForm({ onDone }: { readonly onDone: () => void }) {
  return (
    <>
      <Form
        path="/api/class/sign-in"
        press="Sign in"
        onDone={onDone}
        lines={[
          { name: "email", label: "E-mail address", type: "email", autoComplete: "username" },
          { name: "password", label: "Password", type: "password", autoComplete: "current-password" },
        ]}
      />
      <div className="class-presses">
        <PressLink href="/class/invited">I was invited to teach here</PressLink>
        <PressLink href="/class/way-back">I lost my password</PressLink>
      </div>
    </>
  );
}
