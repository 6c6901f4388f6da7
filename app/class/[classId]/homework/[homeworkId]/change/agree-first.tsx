"use client";

import { useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import type { ToAgree } from "@/lib/classroom/homework/edit-homework";
import { RegradeOutcome } from "../../../gradebook/regrade-outcome";

type Props = ToAgree & { readonly sending: boolean; readonly onYes: () => void; readonly onNo: () => void };

/** What a change would hide and which scores it would change, before anything is done. */
export function AgreeFirst({ hides, preview, sending, onYes, onNo }: Props) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return (
    <section className="agree-first" aria-labelledby="agree-first">
      <h3 id="agree-first" ref={head} tabIndex={-1}>
        Nothing is changed yet
      </h3>
      {hides > 0 && (
        <p>
          {hides === 1 ? "1 drawing" : `${hides} drawings`} that {hides === 1 ? "was" : "were"} handed in would be
          hidden, with what was marked on {hides === 1 ? "it" : "them"}. Nothing of it is lost: put the exercise or the
          student back, and {hides === 1 ? "it is" : "they are"} shown again.
        </p>
      )}
      {preview && <RegradeOutcome preview={preview} />}
      <div className="class-presses">
        <Press weight="main" onClick={onYes} aria-disabled={sending}>
          {sending ? "A moment…" : yesWords(hides)}
        </Press>
        <Press onClick={onNo}>No, not yet</Press>
      </div>
    </section>
  );
}

function yesWords(hides: number): string {
  if (hides === 0) return "Yes, change it so";
  return hides === 1 ? "Yes, hide 1 drawing" : `Yes, hide ${hides} drawings`;
}
