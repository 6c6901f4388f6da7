"use client";

import { PlainPage } from "./_parts/plain-page";
import { Press, PressLink } from "./_parts/press";

export default function ErrorPage({ reset }: { readonly error: Error; readonly reset: () => void }) {
  return (
    <PlainPage
      title="This sheet tore"
      actions={
        <>
          <Press weight="main" onClick={reset}>
            Try once more
          </Press>
          <PressLink href="/">To the list of exercises</PressLink>
        </>
      }
    >
      <p>Something went wrong in the program while it drew this page. It is not your fault.</p>
      <p>
        What you had set down is kept in this browser. Try once more; if it tears again, tell your teacher which
        exercise it was.
      </p>
    </PlainPage>
  );
}
