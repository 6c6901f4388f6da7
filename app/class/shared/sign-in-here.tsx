"use client";

import { SignInForm } from "../sign-in-form";

/** Signs a teacher in, and stays with the link that was followed. */
export function SignInHere() {
  return <SignInForm onDone={() => window.location.reload()} />;
}
