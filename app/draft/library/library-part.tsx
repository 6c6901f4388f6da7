"use client";

import Link from "next/link";
import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import { useDesk } from "../desk/draft-context";
import { goTo } from "../exercise/go-to";
import type { LibraryLink } from "./kept-links";
import type { Library } from "./library";
import { LibraryTrouble } from "./library-trouble";
import { useLibrary } from "./use-library";
import "./library.css";

type Open = Extract<Library, { kind: "open" }>;
type There = Open["plans"][number];

/** The plan on the table in its teacher's library: whether it is there, whether it has changed since, and keeping it. */
export function LibraryPart({ library, plan }: { readonly library: Library; readonly plan: string }) {
  return (
    <section className="library-part" aria-labelledby="library">
      <h2 id="library" className="lettering">
        Your library
      </h2>
      {library.kind === "closed" ? (
        <p className="draft-note">{library.sentence} Your plan is kept in this browser all the same.</p>
      ) : (
        <OpenLibrary library={library} plan={plan} />
      )}
    </section>
  );
}

function OpenLibrary({ library, plan }: { readonly library: Open; readonly plan: string }) {
  const draft = useDesk((desk) => desk.history.draft);
  const { link, changed, sending, trouble, keep, letGo } = useLibrary(library.ownerId, plan, draft);
  const [words, setWords] = useState("");
  const there = library.plans.find(({ planId }) => planId === link?.planId);
  const beside = link?.beside ?? null;
  const newer = link !== null && isNewer(link, there);
  const keepIt = async (over = false) => {
    if (await keep(words, over)) setWords("");
  };
  return (
    <>
      <p role="status">
        <Standing link={link} changed={changed} there={there} />
      </p>
      {(link === null || changed || beside) && (
        <>
          <div className="draft-field library-words">
            <label htmlFor="library-words" className="small-lettering">
              What is new in it, if you like
            </label>
            <input
              id="library-words"
              className="look-list"
              maxLength={80}
              autoComplete="off"
              value={words}
              onChange={(event) => setWords(event.target.value)}
            />
          </div>
          <div className="draft-presses">
            {(!beside || changed) && (
              <Press weight="small" aria-disabled={sending} onClick={() => keepIt()}>
                {pressWords(link, sending)}
              </Press>
            )}
            {beside && (
              <Press weight="small" aria-disabled={sending} onClick={() => keepIt(true)}>
                Put mine in its place
              </Press>
            )}
            {link && (beside || newer) && <OpenThere planId={link.planId} />}
          </div>
        </>
      )}
      {link && newer && !changed && !beside && (
        <div className="draft-presses">
          <OpenThere planId={link.planId} />
        </div>
      )}
      {trouble && <LibraryTrouble trouble={trouble} onLetGo={letGo} />}
      <p>
        <Link href="/class/plans" className="plain-link" prefetch={false}>
          All your plans in the library
        </Link>
      </p>
    </>
  );
}

function OpenThere({ planId }: { readonly planId: string }) {
  return (
    <Press weight="small" onClick={() => goTo(`/draft/library?plan=${encodeURIComponent(planId)}`)}>
      Open the one in the library
    </Press>
  );
}

function pressWords(link: LibraryLink | null, sending: boolean): string {
  if (sending) return "A moment…";
  return link ? "Keep the changes in your library" : "Keep it in your library";
}

/** As the page was opened, another browser had kept a later edition. What is kept from here since then is later still. */
function isNewer(link: LibraryLink, there: There | undefined): boolean {
  return there !== undefined && there.edition > link.edition;
}

type StandingProps = {
  readonly link: LibraryLink | null;
  readonly changed: boolean;
  readonly there: There | undefined;
};

/** How the plan here stands to the one in the library, in words. */
function Standing({ link, changed, there }: StandingProps) {
  if (!link) return <>This plan is in this browser only.</>;
  if (link.beside)
    return (
      <>
        Another browser kept a change of this plan first, <When at={link.beside.changedAt} />. That one is the plan in
        your library, and what you kept here lies beside it, among its versions: nothing is lost.
        {changed && " You have changed it here since."}
      </>
    );
  if (isNewer(link, there))
    return (
      <>
        Your library has a newer one, kept from another browser <When at={there?.changedAt ?? link.keptAt} />.
        {changed && " You have changed this one here as well; keep it, and both are there."}
      </>
    );
  if (there?.thrown && there.edition === link.edition)
    return <>You threw this plan away in your library. Keep it once more, and it is back.</>;
  if (changed)
    return (
      <>
        Changed here since it was kept in your library <When at={link.keptAt} />.
      </>
    );
  return (
    <>
      It is in your library as it is here, kept <When at={link.keptAt} />.
    </>
  );
}
