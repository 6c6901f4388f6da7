"use client";

import { useState } from "react";
import { saveOwnFile } from "@/app/_parts/own-exercise/fetch-own-file";
import { Press } from "@/app/_parts/press";
import { useRoom } from "./demonstration-context";

const FILES = [
  { what: "handout", path: "handout", words: "Handout" },
  { what: "steps", path: "steps.pdf", words: "Steps as PDF" },
] as const;

/** The demonstration on paper. One that only this browser has is sent to be drawn, and comes back as a file. */
export function PaperPresses() {
  const { exercise, text } = useRoom();
  const [said, setSaid] = useState("");
  if (text === null)
    return FILES.map(({ what, path, words }) => (
      <a key={what} className="press ruled" href={`/demonstrate/${exercise.id}/${path}`} download>
        {words}
      </a>
    ));
  const get = async (what: string) => {
    setSaid("A moment…");
    setSaid(await saveOwnFile(`/demonstrate/draft/file?what=${what}`, text));
  };
  return (
    <>
      {FILES.map(({ what, words }) => (
        <Press key={what} onClick={() => get(what)}>
          {words}
        </Press>
      ))}
      <span role="status" className="paper-said">
        {said}
      </span>
    </>
  );
}
