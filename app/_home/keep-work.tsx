"use client";

import { type ChangeEvent, useRef, useState } from "react";
import { type Back, bringBack, copyProgress, erase } from "@/app/_parts/kept-work/copy-work";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { shelfChanged, useShelf } from "@/app/_parts/kept-work/use-shelf";
import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";

const COPY_NAME = "plasterline-work.json";

function sayBack(back: Back): string {
  if (!back.ok) return back.why;
  const said = "The copy is back: your records and drawings are as they were when it was saved.";
  if (back.left === 0) return said;
  const left = back.left === 1 ? "One finished exercise" : `${back.left} finished exercises`;
  return `${said} ${left} in it could not be read, and ${back.left === 1 ? "was" : "were"} left out.`;
}

/** The student's work: save a copy, bring one back, rub it all out. */
export function KeepWork() {
  const shelf = useShelf();
  const [said, setSaid] = useState("");
  const [sure, setSure] = useState(false);
  const picker = useRef<HTMLInputElement>(null);

  const save = () => {
    const kept = findShelf();
    if (kept) saveFile(COPY_NAME, JSON.stringify(copyProgress(kept), null, 2));
  };
  const bring = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    const kept = findShelf();
    event.target.value = "";
    if (!file || !kept) return;
    const back = bringBack(kept, await file.text());
    shelfChanged();
    setSaid(sayBack(back));
  };
  const rubOut = () => {
    const kept = findShelf();
    if (kept) erase(kept);
    shelfChanged();
    setSure(false);
    setSaid("Rubbed out. Nothing of yours is left in this browser.");
  };

  if (shelf && !shelf.keeping) {
    return (
      <section className="register ruled">
        <h2 className="lettering">Your work</h2>
        <p>
          This browser does not let the page keep anything, perhaps because of a private window or a setting. You can
          practise all the same; your records last until you close the page.
        </p>
      </section>
    );
  }
  return (
    <section className="register ruled" aria-labelledby="your-work">
      <header className="register-head">
        <h2 id="your-work" className="lettering">
          Your work
        </h2>
        <p>It is kept in this browser only. Save a copy to take it to another.</p>
      </header>
      <div className="work-presses">
        <Press onClick={save}>Save a copy</Press>
        <Press onClick={() => picker.current?.click()}>Bring a copy back</Press>
        <input
          ref={picker}
          type="file"
          accept="application/json,.json"
          className="aloud"
          tabIndex={-1}
          aria-label="The copy to bring back"
          onChange={bring}
        />
        {sure ? (
          <>
            <Press onClick={() => setSure(false)}>Keep it</Press>
            <Press weight="main" onClick={rubOut}>
              Yes, rub out everything
            </Press>
          </>
        ) : (
          <Press onClick={() => setSure(true)}>Rub it all out</Press>
        )}
      </div>
      <p role="status">{said}</p>
    </section>
  );
}
