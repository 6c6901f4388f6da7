import { expect, it } from "vitest";
import type { LibraryLink } from "@/app/draft/library/kept-links";
import { whichToOpen } from "@/app/draft/library/which-to-open";

const link = (edition: number, sum: string, beside: LibraryLink["beside"] = null): LibraryLink => ({
  planId: "p",
  ownerId: "ida",
  edition,
  sum,
  keptAt: "2026-11-10T10:00:00.000Z",
  beside,
  unanswered: null,
});
const here = (key: string, now: string, kept: LibraryLink) => ({ key, sum: now, link: kept });
const there = { edition: 3, sum: "c" };
const lost = { edition: 3, changedAt: "2026-11-10T11:00:00.000Z" };

it.each([
  ["a new one where this browser has none", [], { open: "new" }],
  ["the same", [here("1", "c", link(2, "b"))], { open: "same", key: "1" }],
  ["the newer one over one that nobody touched", [here("1", "b", link(2, "b"))], { open: "newer", key: "1" }],
  ["the one here where only this one changed", [here("1", "d", link(3, "c"))], { open: "here", key: "1" }],
  ["either where both changed", [here("1", "d", link(2, "b"))], { open: "either", key: "1" }],
  // What lies beside the plan in the library is nowhere the plan itself: the library's must not take its place unasked.
  ["either where the one here lies beside it", [here("1", "d", link(2, "d", lost))], { open: "either", key: "1" }],
  [
    "the one that nobody touched before one that changed",
    [here("1", "d", link(2, "b")), here("2", "a", link(1, "a"))],
    { open: "newer", key: "2" },
  ],
])("opens %s", (_, kept, opening) => {
  expect(whichToOpen(there, kept)).toEqual(opening);
});
