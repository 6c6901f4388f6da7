"use client";

import { useEffect, useMemo, useRef, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { keptAddress, linkAddress } from "@/app/_parts/own-exercise/own-address";
import { passOn, windowShelf } from "@/app/_parts/own-exercise/passed-on";
import { setAside } from "@/app/_parts/own-exercise/set-aside";
import { Press } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import type { Draft } from "@/lib/draft/draft";
import { MOST_PACKED, packText } from "@/lib/draft/exercise-desk/pack-text";
import { writeDraft } from "@/lib/draft/write-draft";
import { faultsOf } from "@/lib/exercise/check-sense";
import { fileText } from "../kept/file-text";
import { SendDxf } from "../kept/send-dxf";
import { goTo } from "./go-to";
import { OpenFile } from "./open-file";

const NOT_KEPT = "This browser keeps nothing for other pages: its storage is full or blocked. Save the file instead.";

/** What can be done with the exercise: try it, show it, print it, save it, share it, set it. What stops it is said first. */
export function UseIt({ draft }: { readonly draft: Draft }) {
  const { exercise } = draft;
  const faults = useMemo(() => faultsOf(exercise), [exercise]);
  const [said, setSaid] = useState("");
  const [link, setLink] = useState<string | null>(null);
  const shown = useRef(draft);
  useEffect(() => {
    shown.current = draft;
    setLink(null);
  }, [draft]);
  const open = (page: string) => {
    const id = setAside(findShelf(), fileText(draft));
    setSaid(id === null ? NOT_KEPT : "");
    if (id !== null) goTo(keptAddress(page, id));
  };
  const share = async (page: string) => {
    const packed = await packText(JSON.stringify(writeDraft(draft)));
    if (shown.current !== draft) return;
    const tooLong = packed.length > MOST_PACKED;
    setLink(tooLong ? null : new URL(linkAddress(page, packed), window.location.href).href);
    setSaid(
      tooLong
        ? `This plan would need a link of ${packed.length.toLocaleString("en")} letters; more than ${MOST_PACKED.toLocaleString("en")} do not arrive everywhere. Save the file and send that.`
        : "",
    );
  };
  const set = () => {
    const passed = passOn(windowShelf(), { title: exercise.title, text: fileText(draft) });
    setSaid(passed ? "" : NOT_KEPT);
    if (passed) goTo("/class");
  };
  const off = faults.length > 0;
  return (
    <section aria-label="What to do with it">
      {off && (
        <div className="exercise-stops">
          <p>
            <strong>To be mended first:</strong>
          </p>
          <ul className="worth-list">
            {faults.slice(0, MOST_TOLD).map(({ where, message, hint }) => (
              <li key={`${where} ${message}`}>
                {message} <span className="draft-note">({hint})</span>
              </li>
            ))}
            {faults.length > MOST_TOLD && <li>and {faults.length - MOST_TOLD} more; Notes has them all.</li>}
          </ul>
        </div>
      )}
      <div className="draft-presses">
        <Press weight="main" disabled={off} onClick={() => open("/practise/draft")}>
          Try it
        </Press>
        <Press disabled={off} onClick={() => open("/demonstrate/draft")}>
          Demonstrate it
        </Press>
        <Press disabled={off} onClick={() => open("/sheet/draft")}>
          Print it
        </Press>
        <Press disabled={off} onClick={set}>
          Set it as homework
        </Press>
        <Press onClick={() => saveFile(`${exercise.id}.json`, fileText(draft))}>Save the file</Press>
        <OpenFile />
        <Press onClick={() => share("/draft/copy")}>Link for a colleague</Press>
        <Press disabled={off} onClick={() => share("/practise/draft")}>
          Link for students
        </Press>
      </div>
      <SendDxf exercise={exercise} />
      {link && <Link key={link} address={link} />}
      <p role="status">{said}</p>
    </section>
  );
}

/** Faults told at once. */
const MOST_TOLD = 5;

/** An address to be taken along. Where the browser gives no clipboard it is copied by hand. */
function Link({ address }: { readonly address: string }) {
  const [copied, setCopied] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(address);
      setCopied(true);
    } catch {
      setCopied(false);
    }
  };
  return (
    <div className="draft-typed">
      <div className="draft-field">
        <label htmlFor="shared-link" className="small-lettering">
          The whole exercise is in this link
        </label>
        <input
          ref={field}
          id="shared-link"
          className="look-list"
          readOnly
          value={address}
          onFocus={(event) => event.target.select()}
        />
      </div>
      <Press weight="small" onClick={copy}>
        {copied ? "Copied" : "Copy"}
      </Press>
      <p className="draft-note">
        It shows the plan as it is now: what you change later needs another link. It works wherever this address is
        reached, and nothing of the plan is kept on the server. {address.length.toLocaleString("en")} letters long.
      </p>
    </div>
  );
}
