import { expect, it } from "vitest";
import { makeCountHere } from "@/lib/classroom/accounts/count-here";

const LIMIT = { name: "trial", most: 3, seconds: 60 };

it("lets so many through within the time, each address for itself, and says how long to wait", () => {
  const count = makeCountHere(LIMIT);
  expect([0, 1000, 2000].map((ms) => count("a", ms).allowed)).toEqual([true, true, true]);
  expect(count("a", 3000)).toEqual({ allowed: false, waitS: 57 });
  expect(count("b", 3000)).toEqual({ allowed: true });
  expect(count("a", 59_999)).toEqual({ allowed: false, waitS: 1 });
  expect(count("a", 60_000)).toEqual({ allowed: true });
});

it("forgets old ones when there are many, and nobody whose time still runs", () => {
  const count = makeCountHere(LIMIT);
  for (let i = 0; i < 3; i++) count("busy", 50_000);
  for (let i = 0; i < 6000; i++) count(`once-${i}`, 0);
  expect(count("busy", 61_000)).toEqual({ allowed: false, waitS: 49 });
  expect(count("once-5", 61_000)).toEqual({ allowed: true });
});
