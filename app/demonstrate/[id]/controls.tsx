"use client";

import Link from "next/link";
import { Press } from "@/app/_parts/press";
import type { Layout } from "@/app/_sheet/sheet-views";
import { pagesOfDemonstration } from "./addresses";
import { useDemonstration, useRoom } from "./demonstration-context";
import { PENCILS } from "./demonstration-store";
import { EveryonePress } from "./everyone-press";
import { PaperPresses } from "./paper-presses";
import type { PageMoves } from "./use-keys";

type Props = {
  readonly page: PageMoves;
  readonly layout: Layout;
  readonly narrow: boolean;
  readonly notesOpen: boolean;
};

const PENCIL_WORDS = { red: "Red pencil", blue: "Blue pencil" } as const;

/** Everything that keys do, as presses. */
export function Controls({ page, layout, narrow, notesOpen }: Props) {
  const { store, exercise, own } = useRoom();
  const { notes, practise } = pagesOfDemonstration({ id: exercise.id, own });
  const pencil = useDemonstration((demonstration) => demonstration.pencil);
  const ring = useDemonstration((demonstration) => demonstration.ring);
  const trying = useDemonstration((demonstration) => demonstration.trying);
  const { on, back, setBlank, setRing, setPencil, rubOut, letTry, leaveTry, setCard } = store.getState();
  return (
    <nav className="demonstration-controls" aria-label="Presses">
      <Press onClick={back}>Back</Press>
      <Press weight="main" onClick={on}>
        On
      </Press>
      <Press onClick={() => setCard("corners")}>Corners</Press>
      <Press aria-pressed={trying !== "no"} onClick={() => (trying === "no" ? letTry() : leaveTry())}>
        You try
      </Press>
      {own === undefined && <EveryonePress />}
      {PENCILS.map((colour) => (
        <Press
          key={colour}
          aria-pressed={pencil === colour}
          className={`pencil-${colour}`}
          onClick={() => setPencil(pencil === colour ? null : colour)}
        >
          {PENCIL_WORDS[colour]}
        </Press>
      ))}
      <Press onClick={() => rubOut("last")}>Rub out last</Press>
      <Press onClick={() => rubOut("all")}>Rub out all</Press>
      <Press aria-pressed={ring} onClick={() => setRing(!ring)}>
        Ring
      </Press>
      <Press onClick={() => setBlank(true)}>Blank</Press>
      {!narrow && <Press onClick={page.layout}>Plan {layout === "beside" ? "under" : "beside"} the picture</Press>}
      <Press onClick={page.light}>Light</Press>
      <Press onClick={page.fullScreen}>Full screen</Press>
      {notes !== null && <Press onClick={page.notes}>{notesOpen ? "Notes are open" : "Notes window"}</Press>}
      <PaperPresses />
      <Press onClick={() => setCard("keys")}>Keys</Press>
      {practise !== null && (
        <Link className="press ruled" href={practise} prefetch={false}>
          Practise it
        </Link>
      )}
      <Link className="press ruled" href={own === undefined ? "/" : "/draft"} prefetch={false}>
        Leave
      </Link>
    </nav>
  );
}
