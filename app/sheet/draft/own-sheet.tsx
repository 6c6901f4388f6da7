"use client";

import Link from "next/link";
import { useEffect, useMemo, useState } from "react";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { keptAddress } from "@/app/_parts/own-exercise/own-address";
import { type Own, OwnExercise } from "@/app/_parts/own-exercise/own-exercise";
import { askedPoints } from "../[id]/asked-points";
import { SheetDesk } from "../[id]/sheet-desk";
import type { SheetScales } from "../[id]/sheet-scales";

/** What to put on paper of an exercise that only this browser has. */
export function OwnSheet() {
  return <OwnExercise>{(own) => <Desk key={own.id} {...own} />}</OwnExercise>;
}

function Desk({ exercise, text, id }: Own) {
  const asked = useMemo(() => askedPoints(exercise), [exercise]);
  const [scales, setScales] = useState<SheetScales | null>(null);
  // What lays out a sheet is heavy, and is fetched only here.
  useEffect(() => {
    let here = true;
    import("../[id]/sheet-scales").then(({ sheetScalesOf }) => {
      if (here) setScales(sheetScalesOf(exercise));
    });
    return () => {
      here = false;
    };
  }, [exercise]);
  return (
    <main className="printing">
      <header className="printing-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <Link href="/draft" className="plain-link" prefetch={false}>
          Drafting desk
        </Link>
        {id !== null && (
          <Link href={keptAddress("/practise/draft", id)} className="plain-link" prefetch={false}>
            Practise it
          </Link>
        )}
        <LookDisclosure />
      </header>
      {scales === null ? (
        <p role="status">Laying out the sheet.</p>
      ) : (
        <SheetDesk exercise={exercise} asked={asked} scales={scales} firstSeed={null} text={text} />
      )}
    </main>
  );
}
