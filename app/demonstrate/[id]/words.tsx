"use client";

import { useDemonstration, useRoom, useStep } from "./demonstration-context";
import { TryWords } from "./try-words";

/** The step's words in letters that the last row can read. */
export function Words() {
  const { steps } = useRoom();
  const { number, title, part, sentence } = useStep();
  const trying = useDemonstration((demonstration) => demonstration.trying);
  return (
    <section className="demonstration-words" aria-label="The step">
      <div className="demonstration-head">
        <h2 className="demonstration-title lettering">{title}</h2>
        <p className="demonstration-part">
          {trying === "no" ? part : "You try"}
          <span className="demonstration-number">
            {number} of {steps.length}
          </span>
        </p>
      </div>
      {trying === "no" ? <p className="demonstration-sentence">{sentence}</p> : <TryWords />}
      <p className="aloud" role="status" data-aloud="step">
        {title}. {trying === "no" ? sentence : "You try."}
      </p>
    </section>
  );
}
