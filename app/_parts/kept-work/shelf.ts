/** Of a browser's storage, what is used here. */
export type Shelf = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

/** The keys of the finished exercises' records begin so; then comes the moment, so that their order is that of time. */
export const FINISHED_KEY = "plasterline.record.";

/** The keys of photographed drawings under way begin so. */
export const CHECK_KEY = "plasterline.check";

/** The keys of the plans on the drafting desk begin so. */
export const PLAN_KEY = "plasterline.draft.plan.";

/** When the storage is full, at most so many times what is to be written is freed: if that is not enough, nothing is. */
const MOST_FREED = 3;

/** The browser's storage; null where it is blocked or full. */
export function findShelf(): Shelf | null {
  try {
    const shelf = window.localStorage;
    shelf.setItem("plasterline.try", "1");
    shelf.removeItem("plasterline.try");
    return shelf;
  } catch {
    return null;
  }
}

/** The keys that begin so, in the alphabet's order. */
export function keysOf(shelf: Shelf, beginning: string): readonly string[] {
  return Array.from({ length: shelf.length }, (_, i) => shelf.key(i) ?? "")
    .filter((key) => key.startsWith(beginning))
    .sort();
}

/** The value kept under a key; null for none, and for what cannot be read. */
export function take(shelf: Shelf, key: string): unknown {
  try {
    return parse(shelf.getItem(key) ?? "null");
  } catch {
    return null;
  }
}

/**
 * Keeps a value, without its members that are null: whoever reads it takes a missing one for null. In a full storage the
 * oldest records of finished exercises make room for it. False when the storage refuses all the same.
 */
export function putSlim(shelf: Shelf, key: string, value: unknown): boolean {
  return putText(
    shelf,
    key,
    JSON.stringify(value, (_, each: unknown) => (each === null ? undefined : each)),
  );
}

/** The same, with every member. */
export function put(shelf: Shelf, key: string, value: unknown): boolean {
  return putText(shelf, key, JSON.stringify(value));
}

function putText(shelf: Shelf, key: string, text: string): boolean {
  if (setText(shelf, key, text)) return true;
  let freed = 0;
  for (const oldest of keysOf(shelf, FINISHED_KEY)) {
    if (oldest === key || freed > MOST_FREED * text.length) break;
    freed += shelf.getItem(oldest)?.length ?? 0;
    shelf.removeItem(oldest);
    if (setText(shelf, key, text)) return true;
  }
  return false;
}

function setText(shelf: Shelf, key: string, text: string): boolean {
  try {
    shelf.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** A text as JSON; null for any other. */
export function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
