import { expect, it } from "vitest";
import { versionsToDrop } from "@/lib/classroom/library/versions-to-drop";

const version = (id: string, words = "", beside: 0 | 1 = 0) => ({
  id,
  at: `2026-11-1${id}T10:00:00.000Z`,
  words,
  beside,
});

it.each([
  ["none while there is room", [version("1"), version("2")], 2, []],
  ["the oldest", [version("3"), version("1"), version("2")], 2, ["1"]],
  ["one with words only when no other is left", [version("1", "The first"), version("2"), version("3")], 1, ["2", "3"]],
  ["one that never was the plan neither", [version("1", "", 1), version("2"), version("3")], 2, ["2"]],
  ["of those with words the oldest", [version("1", "a"), version("2", "b")], 1, ["1"]],
])("drops %s", (_, versions, most, dropped) => {
  expect(versionsToDrop(versions, most)).toEqual(dropped);
});
