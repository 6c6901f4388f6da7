"use client";

import { useState } from "react";
import { Press } from "@/app/_parts/press";

type Props = {
  readonly words: string;
  readonly whose: string;
  readonly sure: string;
  readonly weight?: "plain" | "small";
  readonly onSure: () => void;
};

/** A press for what cannot be undone: it asks before it does. */
export function Twice({ words, whose, sure, weight = "small", onSure }: Props) {
  const [asking, setAsking] = useState(false);
  if (!asking)
    return (
      <Press weight={weight} onClick={() => setAsking(true)} aria-label={`${words} ${whose}`}>
        {words}
      </Press>
    );
  return (
    <span className="class-who">
      <span>{sure} It cannot be undone.</span>
      <Press weight={weight} onClick={onSure} autoFocus aria-label={`Yes, erase ${whose}`}>
        Yes, erase
      </Press>
      <Press weight={weight} onClick={() => setAsking(false)}>
        No
      </Press>
    </span>
  );
}
