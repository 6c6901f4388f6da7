"use client";

import { type ChangeEvent, useRef, useState } from "react";
import { type Back, bringBack, copyProgress, erase } from "@/app/_parts/kept-work/copy-work";
import { findShelf, keysOf, PLAN_KEY } from "@/app/_parts/kept-work/shelf";
import { shelfChanged, useShelf } from "@/app/_parts/kept-work/use-shelf";
import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";

const RUBBED_OUT = "Rubbed out: your records, drawings and photographs are gone from this browser.";
/** A teacher who rubs out what was tried in front of a class keeps what was prepared for it. */
const PLANS_STAY = "The plans on the drafting desk stay; in Draft, under Plans, each can be thrown away.";

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
  const [drafted, setDrafted] = useState(false);
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
  const askFirst = () => {
    const kept = findShelf();
    setDrafted(kept !== null && keysOf(kept, PLAN_KEY).length > 0);
    setSure(true);
  };
  const rubOut = () => {
    const kept = findShelf();
    if (kept) erase(kept);
    shelfChanged();
    setSure(false);
    setSaid(kept && keysOf(kept, PLAN_KEY).length > 0 ? `${RUBBED_OUT} ${PLANS_STAY}` : RUBBED_OUT);
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
            {drafted && <p>{PLANS_STAY}</p>}
          </>
        ) : (
          <Press onClick={askFirst}>Rub it all out</Press>
        )}
      </div>
      <p role="status">{said}</p>
    </section>
  );
}
