"use client";

import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { NotesSection } from "./notes-section";
import { SightlinesSection } from "./sightlines-section";

type Props = {
  readonly draft: Draft;
  readonly apply: (change: Edit) => string | null;
  /** Shows things in the drawing. */
  readonly show: (things: readonly Thing[]) => void;
  /** Lays over the plan what the chosen seat sees; null takes it off. */
  readonly lay: (sight: Sight | null) => void;
};

/** What there is to note on the plan, and what the seats of the house see of it. */
export function NotesDrawer({ lay, ...rest }: Props) {
  return (
    <>
      <NotesSection {...rest} />
      <SightlinesSection {...rest} lay={lay} />
    </>
  );
}
