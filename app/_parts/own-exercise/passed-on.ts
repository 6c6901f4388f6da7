import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { put, type Shelf, take } from "@/app/_parts/kept-work/shelf";

const PASSED_KEY = "plasterline.passed-on";

/** An exercise file on its way from the drafting desk to a homework: it waits in this window, and goes with it. */
export type PassedOn = { readonly title: string; readonly text: string };

/** The window's own storage; null where it is blocked. */
export function windowShelf(): Shelf | null {
  try {
    return window.sessionStorage;
  } catch {
    return null;
  }
}

export function passOn(shelf: Shelf | null, passed: PassedOn): boolean {
  return shelf !== null && put(shelf, PASSED_KEY, passed);
}

/** Once it is set, nothing waits any more. */
export function forgetPassedOn(shelf: Shelf | null): void {
  shelf?.removeItem(PASSED_KEY);
}

export function passedOn(shelf: Shelf | null): PassedOn | null {
  const kept = shelf && take(shelf, PASSED_KEY);
  return isRecord(kept) && typeof kept.title === "string" && typeof kept.text === "string"
    ? { title: kept.title, text: kept.text }
    : null;
}
