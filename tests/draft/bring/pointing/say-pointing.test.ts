import { expect, it } from "vitest";
import { PLACES } from "@/lib/draft/bring/pointing/pointing";
import { PLACE_WORDS, sayAsked, sayCaughtBy } from "@/lib/draft/bring/pointing/say-pointing";

it("asks for every place in words of its own, whole sentences", () => {
  const asks = [...PLACES, null].map((asked) => sayAsked({ asked }));
  expect(new Set(asks).size).toBe(PLACES.length + 1);
  for (const ask of asks) expect(ask).toMatch(/^[A-Z].*\.$/);
  expect(new Set(PLACES.map((place) => PLACE_WORDS[place])).size).toBe(PLACES.length);
});

it.each([
  ["end", "At the end of a line."],
  ["crossing", "Where two lines cross."],
  ["middle", "In the middle of a line."],
  ["line", "On a line."],
  [null, ""],
] as const)("says of %s what caught it", (by, words) => {
  expect(sayCaughtBy(by)).toBe(words);
});
