import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { put, type Shelf, take } from "@/app/_parts/kept-work/shelf";

const ASIDE_KEY = "plasterline.own";

/** The most exercises of one's own that lie ready to be opened; the one set aside first goes. */
const MOST_ASIDE = 6;

type Aside = { readonly id: string; readonly text: string };

/**
 * Sets the text of an exercise file aside in the browser, for other pages to open. What it goes by follows from the text: a
 * changed exercise goes by another name. Null where the browser keeps nothing.
 */
export function setAside(shelf: Shelf | null, text: string): string | null {
  const id = nameOf(text);
  if (!shelf) return null;
  const others = asides(shelf).filter((each) => each.id !== id);
  // In a full storage the older ones make room.
  for (let most = MOST_ASIDE - 1; most >= 0; most--)
    if (put(shelf, ASIDE_KEY, [{ id, text }, ...others.slice(0, most)])) return id;
  return null;
}

/** The text that was set aside under a name; null where it is gone. */
export function takeUp(shelf: Shelf | null, id: string): string | null {
  return (shelf && asides(shelf).find((each) => each.id === id)?.text) ?? null;
}

function asides(shelf: Shelf): readonly Aside[] {
  const kept = take(shelf, ASIDE_KEY);
  return Array.isArray(kept)
    ? kept.filter(
        (each): each is Aside => isRecord(each) && typeof each.id === "string" && typeof each.text === "string",
      )
    : [];
}

/** Where the sum begins, and what it is multiplied by for each letter: those of the 32-bit hash FNV-1a (from memory). */
const FIRST = 0x811c9dc5;
const TIMES = 0x01000193;

/** A short name that follows from a text: two of the few that are kept do not share one but by a rare chance. */
function nameOf(text: string): string {
  let sum = FIRST;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), TIMES) >>> 0;
  return `${sum.toString(36)}-${text.length.toString(36)}`;
}
