"use client";

import { type FormEvent, useState } from "react";
import { Press } from "@/app/_parts/press";

/** One line for the code. */
export function CodeForm() {
  const [code, setCode] = useState("");
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const written = code.replace(/[^a-z]/gi, "").toUpperCase();
    if (written !== "") window.location.assign(`/live/${written}`);
  };
  return (
    <form onSubmit={submit} className="flex flex-wrap items-end gap-4">
      <label className="flex flex-col">
        <span className="font-semibold">Code</span>
        <input
          name="code"
          value={code}
          onChange={(event) => setCode(event.target.value)}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          maxLength={20}
          className="lettering min-h-11 w-48 border-graphite border-b bg-transparent text-2xl"
        />
      </label>
      <Press type="submit" weight="main">
        Take part
      </Press>
    </form>
  );
}
