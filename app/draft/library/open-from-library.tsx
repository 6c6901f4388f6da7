"use client";

import { useEffect, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { PlainPage } from "@/app/_parts/plain-page";
import { Press, PressLink } from "@/app/_parts/press";
import { openNext } from "../kept/kept-plans";
import { type FromLibrary, type PutDown, putBeside, putOnTable } from "./put-on-table";

/** The desk takes this page's place, so that going back does not put the plan down once more. */
const toDesk = () => window.location.replace("/draft");

/** Puts a plan of the library on the table of this browser. Where both have changed, whoever opens it chooses. */
export function OpenFromLibrary({ plan, title }: { readonly plan: FromLibrary; readonly title: string }) {
  const [put, setPut] = useState<PutDown | null>(null);
  useEffect(() => {
    let here = true;
    const open = async () => {
      const done = await putOnTable(plan, new Date().toISOString());
      if (!here) return;
      if (done.kind === "done") toDesk();
      else setPut(done);
    };
    open();
    return () => {
      here = false;
    };
  }, [plan]);
  const openOther = async () => {
    const done = await putBeside(plan, new Date().toISOString());
    if (done.kind === "done") toDesk();
    else setPut(done);
  };
  if (put === null || put.kind === "done") return <p className="aloud">Opening the plan.</p>;
  if (put.kind === "either")
    return (
      <PlainPage
        title={title}
        actions={
          <>
            <Press weight="main" onClick={openOther}>
              Open the one in the library
            </Press>
            <Press
              onClick={() => {
                const shelf = findShelf();
                if (shelf) openNext(shelf, put.key);
                toDesk();
              }}
            >
              Open the one in this browser
            </Press>
          </>
        }
      >
        <p>
          This plan has changed in two places: in this browser, and in your library, where another browser kept it.
          Whichever you open, the other stays: the one here among your plans on the desk, the one there in the library.
        </p>
      </PlainPage>
    );
  return (
    <PlainPage
      title="This plan cannot be opened here"
      actions={<PressLink href="/class/plans">To your plans</PressLink>}
    >
      <p>
        {put.kind === "unread"
          ? "This Plasterline cannot read it. It stays in your library as it is."
          : "This browser keeps nothing: its storage is full or blocked. The plan stays in your library as it is."}
      </p>
    </PlainPage>
  );
}
