import { keptAddress } from "@/app/_parts/own-exercise/own-address";

/**
 * Which demonstration it is: of an exercise of the course, or of one that only this browser has, by what it is set aside under
 * (null where nothing can be).
 */
export type Whose = { readonly id: string; readonly own: string | null | undefined };

/** What both windows of a demonstration, and no other, go by. */
export function talkName({ id, own }: Whose): string {
  return own === undefined ? id : `own.${own ?? id}`;
}

/** The addresses of a demonstration's pages; null where another window could not find the exercise. */
export function pagesOfDemonstration({
  id,
  own,
}: Whose): Readonly<Record<"demonstration" | "notes" | "practise", string | null>> {
  if (own === undefined)
    return {
      demonstration: `/demonstrate/${id}`,
      notes: `/demonstrate/${id}/notes`,
      practise: `/practise/${id}`,
    };
  if (own === null) return { demonstration: null, notes: null, practise: null };
  return {
    demonstration: keptAddress("/demonstrate/draft", own),
    notes: keptAddress("/demonstrate/draft/notes", own),
    practise: keptAddress("/practise/draft", own),
  };
}
