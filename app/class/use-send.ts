"use client";

import { useState } from "react";

type Reply = { readonly ok: boolean; readonly sentence?: string; readonly [part: string]: unknown };

/** Sends a form to the server. What was written stays in the form until the server has said that it is done. */
export function useSend(path: string) {
  const [sending, setSending] = useState(false);
  const [complaint, setComplaint] = useState("");

  const send = async (body: unknown): Promise<Reply | undefined> => {
    setSending(true);
    setComplaint("");
    try {
      const answer = await fetch(path, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify(body),
      });
      const reply = (await answer.json()) as Reply;
      if (reply.ok) return reply;
      setComplaint(reply.sentence ?? "The server did not say what was wrong. Try once more.");
    } catch {
      setComplaint("The server cannot be reached. What you wrote is still here; try again when the network is back.");
    }
    setSending(false);
    return undefined;
  };
  return { sending, complaint, send, done: () => setSending(false) };
}
