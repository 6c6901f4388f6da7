import type { Draft, Thing } from "../draft";
import type { Edit } from "../edit";

export type EditOf<Name extends Edit["edit"]> = Extract<Edit, { readonly edit: Name }>;

/** Turns the name of a point before an edit into its name after it. */
export type Renaming = (point: string) => string;

/** What an edit alone makes of a draft; the marks have not followed yet (see `settleMarks`). */
export type Changed =
  | { readonly ok: true; readonly draft: Draft; readonly made: readonly Thing[]; readonly renaming?: Renaming }
  | Refused;

export type Refused = { readonly ok: false; readonly say: string };

export function refuse(say: string): Refused {
  return { ok: false, say };
}

/** The draft with another plan. */
export function withPlan(
  draft: Draft,
  plan: Draft["exercise"]["plan"],
  made: readonly Thing[] = [],
  renaming?: Renaming,
): Changed {
  const changed = { ok: true, draft: { ...draft, exercise: { ...draft.exercise, plan } }, made } as const;
  return renaming ? { ...changed, renaming } : changed;
}

const KIND_WORDS: Readonly<Record<Thing["kind"], string>> = {
  corner: "corner",
  wall: "wall",
  opening: "opening",
  platform: "platform",
  stair: "stair",
  furniture: "piece of furniture",
  column: "column",
  masking: "masking",
};

/** The answer to an edit of something that is not there. */
export function notThere(kind: Thing["kind"], id: string, wall?: string): Refused {
  return refuse(
    `There is no ${KIND_WORDS[kind]} "${id}"${wall === undefined ? " on this plan" : ` in wall "${wall}"`}.`,
  );
}
