"use client";

import { useState } from "react";
import type { Construction } from "@/lib/construction/step";
import type { GradedMark } from "@/lib/grading/grade";
import { usePracticeRoom } from "./practice-context";
import { useConstruction } from "./use-construction";

/** Up to this level a mark that missed is shown its construction unasked; later it is there on request. */
const SHOWN_UNASKED_TO_LEVEL = 2;

/** A ruler construction on the sheet, as far as it is drawn. */
export type Played = {
  readonly construction: Construction;
  readonly shown: number;
  /** A hint leaves the last crossing to be found. */
  readonly openEnded: boolean;
};

export type Player = {
  readonly played: Played | null;
  /** True while the notes give way to the construction's lines. */
  readonly open: boolean;
  readonly play: () => void;
  readonly show: (shown: number) => void;
  readonly close: () => void;
};

type Open = { readonly at: string; readonly shown: number };

/** Plays the construction of the point on hand: before its mark as a hint, after it to show how. */
export function usePlayer(point: string, graded: GradedMark | null): Player {
  const { exercise } = usePracticeRoom();
  const [opened, setOpened] = useState<Open | null>(null);
  const at = `${point} ${graded ? "after" : "before"}`;
  const open = opened?.at === at ? opened : null;
  const missed = graded !== null && !(graded.offMm !== null && graded.offMm <= graded.toleranceMm);
  const unasked = missed && exercise.level <= SHOWN_UNASKED_TO_LEVEL;
  const construction = useConstruction(point, open !== null || unasked);
  const steps = construction?.steps.length ?? 0;
  const shown = open?.shown ?? (unasked ? steps : 0);
  return {
    played: construction && shown > 0 ? { construction, shown, openEnded: graded === null } : null,
    open: open !== null && construction !== null,
    play: () => setOpened({ at, shown: 1 }),
    show: (next) => setOpened({ at, shown: next }),
    close: () => setOpened(null),
  };
}
