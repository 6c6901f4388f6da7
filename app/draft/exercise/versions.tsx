"use client";

import { useCallback, useEffect, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import type { Draft } from "@/lib/draft/draft";
import { MOST_VERSIONS, type Version } from "@/lib/draft/exercise-desk/versions";
import { startHistory } from "@/lib/draft/history";
import { useDesk, useDeskStore } from "../desk/draft-context";
import { CHOOSING } from "../hand/hand";
import { fileText } from "../kept/file-text";
import { forgetVersion, keepVersion, keptVersions } from "./kept-versions";

type Props = {
  readonly draft: Draft;
  /** What the plan on this table is kept under; another may lie on the table of another tab. */
  readonly plan: string;
};

/** Versions of the plan to go back to. Going back keeps the plan as it is now first, so that nothing is lost by it. */
export function Versions({ draft, plan }: Props) {
  const store = useDeskStore();
  const measures = useDesk((desk) => desk.measures);
  const [versions, setVersions] = useState<readonly Version[]>([]);
  const [name, setName] = useState("");
  const [said, setSaid] = useState("");
  const look = useCallback(() => {
    setVersions(keptVersions(findShelf(), plan));
  }, [plan]);
  useEffect(look, [look]);

  const keep = (called: string): boolean => {
    const version = { when: new Date().toISOString(), name: called, text: fileText(draft) };
    const kept = keepVersion(findShelf(), plan, version);
    setSaid(kept ? "" : "This browser does not keep the version: its storage is full or blocked.");
    look();
    return kept;
  };
  const goBack = async (version: Version) => {
    const { readDraft } = await import("@/lib/draft/read-draft");
    const reading = readDraft(version.text);
    if (!reading.ok) {
      setSaid("That version cannot be read any more.");
      return;
    }
    if (!keep("")) return;
    store.getState().open({ history: startHistory(reading.draft), done: [], undone: [], hand: CHOOSING, measures });
    store.getState().setDrawer("exercise");
  };
  return (
    <section aria-labelledby="versions">
      <h3 id="versions" className="lettering">
        Versions
      </h3>
      <div className="draft-typed">
        <div className="draft-field version-name">
          <label htmlFor="version-name" className="small-lettering">
            Name, if you like
          </label>
          <input
            id="version-name"
            className="look-list"
            maxLength={80}
            autoComplete="off"
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
        </div>
        <Press
          weight="small"
          onClick={() => {
            if (keep(name)) setName("");
          }}
        >
          Keep this version
        </Press>
      </div>
      <p className="draft-note">
        Kept in this browser, at most {MOST_VERSIONS}; then the oldest goes. Going back keeps the plan as it is now
        first; its single steps cannot be undone any more.
      </p>
      <ul className="version-list">
        {versions.map((version) => (
          <li key={version.when}>
            <span>
              {version.name !== "" && <strong>{version.name}, </strong>}
              <When at={version.when} />
            </span>
            <Press weight="small" onClick={() => goBack(version)}>
              Go back to it
            </Press>
            <Press
              weight="small"
              onClick={() => {
                forgetVersion(findShelf(), plan, version.when);
                look();
              }}
            >
              Throw away
            </Press>
          </li>
        ))}
      </ul>
      <p role="status">{said}</p>
    </section>
  );
}
