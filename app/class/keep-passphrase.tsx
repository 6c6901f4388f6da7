"use client";

import { useEffect, useState } from "react";
import { Press, PressLink } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";

type Props = {
  readonly passphrase: string;
  readonly link: string;
  readonly whose: "your" | "the student's";
  readonly goOn?: { readonly href: string; readonly words: string };
};

/** A passphrase and the private link, shown once, and ways to keep them that need neither paper nor e-mail. */
export function Keep({ passphrase, link, whose, goOn }: Props) {
  const [whole, setWhole] = useState(link);
  useEffect(() => setWhole(new URL(link, window.location.href).href), [link]);
  const file = `Passphrase: ${passphrase}\nPrivate link: ${whole}\n`;
  return (
    <div className="class-form">
      <p>Write these four words down, or save them. They are shown this once.</p>
      <p className="class-words lettering" data-passphrase>
        {passphrase}
      </p>
      <p>
        Or keep {whose} private link, which needs no typing; whoever has it is taken for{" "}
        {whose === "your" ? "you" : "them"}:{" "}
        <a className="plain-link" href={whole}>
          private link
        </a>
      </p>
      <div className="class-presses">
        <Press onClick={() => saveFile("plasterline-passphrase.txt", file)}>Save them as a file</Press>
        {goOn && (
          <PressLink href={goOn.href} weight="main">
            {goOn.words}
          </PressLink>
        )}
      </div>
    </div>
  );
}
