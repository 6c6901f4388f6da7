"use client";

import { type ReactNode, useEffect, useState } from "react";
import { PlainPage } from "@/app/_parts/plain-page";
import { PressLink } from "@/app/_parts/press";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Problem } from "@/lib/exercise/problem";
import { type OwnText, useOwnText } from "./use-own-text";

export type Own = { readonly exercise: Exercise; readonly text: string; readonly id: string | null };

type Read =
  | { readonly own: Own; readonly faults: readonly Problem[] }
  | { readonly own: null; readonly faults: readonly Problem[] };

/** Problems told at once; mending these usually mends the rest. */
const MOST_TOLD = 5;

/** What a page shows of an exercise that the browser keeps or that came in its address; else a plain word of why there is none. */
export function OwnExercise({ children }: { readonly children: (own: Own) => ReactNode }) {
  const text = useOwnText();
  const [read, setRead] = useState<Read | null>(null);
  useEffect(() => {
    let here = true;
    const look = async () => {
      if (text.kind !== "found") return;
      const found = await readOwn(text);
      if (here) setRead(found);
    };
    look();
    return () => {
      here = false;
    };
  }, [text]);
  if (text.kind === "gone")
    return (
      <PlainPage title="That exercise is not here" actions={<PressLink href="/draft">To the drafting desk</PressLink>}>
        <p>{WHY_GONE[text.why]}</p>
      </PlainPage>
    );
  if (!read) return <p className="aloud">Opening the exercise.</p>;
  if (!read.own || read.faults.length > 0)
    return (
      <PlainPage title="This cannot be drawn yet" actions={<PressLink href="/draft">To the drafting desk</PressLink>}>
        <p>Its author has something to mend first:</p>
        <ul>
          {read.faults.slice(0, MOST_TOLD).map(({ where, message, hint }) => (
            <li key={`${where} ${message}`}>
              {where || "The file"}: {message} ({hint}).
            </li>
          ))}
        </ul>
      </PlainPage>
    );
  return children(read.own);
}

const WHY_GONE = {
  "no address": "The address names no exercise. Open it from the drafting desk.",
  "not kept": "This browser does not keep it any more: only the last few are. Open it from the drafting desk again.",
  cut: "The link did not arrive whole. Ask for it once more, or for the exercise as a file.",
} as const;

/** What reads files is heavy, and is fetched only here. */
async function readOwn({ text, id }: Extract<OwnText, { kind: "found" }>): Promise<Read> {
  const [{ readExercise }, { faultsOf }] = await Promise.all([
    import("@/lib/exercise/read-exercise"),
    import("@/lib/exercise/check-sense"),
  ]);
  const reading = readExercise(text);
  if (!reading.ok) return { own: null, faults: reading.problems };
  return { own: { exercise: reading.exercise, text, id }, faults: faultsOf(reading.exercise) };
}
