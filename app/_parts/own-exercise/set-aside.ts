import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { put, type Shelf, take } from "@/app/_parts/kept-work/shelf";
import { nameOfText } from "./name-of-text";

const ASIDE_KEY = "plasterline.own";

/** The most exercises of one's own that lie ready to be opened; the one set aside first goes. */
const MOST_ASIDE = 6;

type Aside = { readonly id: string; readonly text: string };

/**
 * Sets the text of an exercise file aside in the browser, for other pages to open. What it goes by follows from the text: a
 * changed exercise goes by another name. Null where the browser keeps nothing.
 */
export function setAside(shelf: Shelf | null, text: string): string | null {
  const id = nameOfText(text);
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
