"use client";

export default function GlobalError({ reset }: { readonly error: Error; readonly reset: () => void }) {
  return (
    <html lang="en">
      <body style={{ fontFamily: "sans-serif", maxWidth: "34rem", margin: "4rem auto", padding: "0 1.5rem" }}>
        <h1>Plasterline could not draw this page</h1>
        <p>Something went wrong in the program. What you had set down is kept in this browser.</p>
        <p>
          <button type="button" onClick={reset}>
            Try once more
          </button>{" "}
          <a href="/">To the list of exercises</a>
        </p>
      </body>
    </html>
  );
}
