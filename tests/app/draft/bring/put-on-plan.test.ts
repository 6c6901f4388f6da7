import { beforeEach, describe, expect, it } from "vitest";
import { newPlan, planOnTable, putOnPlan } from "@/app/draft/bring/put-on-plan";
import { CHOOSING } from "@/app/draft/hand/hand";
import { fileName } from "@/app/draft/kept/file-name";
import { keepPlan, keptPlans, lastOpen } from "@/app/draft/kept/kept-plans";
import type { Edit } from "@/lib/draft/edit";
import { startHistory, undo } from "@/lib/draft/history";
import { newDraft } from "@/lib/draft/new-draft";
import { readDraft } from "@/lib/draft/read-draft";
import { expectSameDraft } from "../../../draft/same-draft";

const NOW = "2026-05-01T10:00:00.000Z";
const read = (text: string) => {
  const reading = readDraft(text);
  return reading.ok ? reading.draft : null;
};
const wall = (y: number): Edit => ({
  edit: "bring-walls",
  height: 4,
  runs: [
    {
      corners: [
        [-2, y],
        [2, y],
      ],
      closed: false,
      walls: [{ thickness: 0.1, onstage: "right", openings: [] }],
    },
  ],
});

/** A browser's storage that holds so many letters. */
function makeShelf(room = Number.POSITIVE_INFINITY) {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (n: number) => [...kept.keys()][n] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new Error("full");
      kept.set(key, text);
    },
    removeItem: (key: string) => {
      kept.delete(key);
    },
  };
}

let shelf: ReturnType<typeof makeShelf>;
beforeEach(() => {
  shelf = makeShelf();
});

describe("what is brought", () => {
  it("is kept on a new plan, called as its file is, and undone in one step after a reload", () => {
    const plan = newPlan("m", "the_lamp-room.v2.dxf");
    expect(plan.exercise.title).toBe("the lamp room.v2");
    expect(putOnPlan(shelf, null, plan, wall(2), NOW)).toEqual({ ok: true });
    const work = planOnTable(shelf, read);
    expect(work?.history.draft.exercise.plan.walls).toHaveLength(1);
    expect(work?.history.past).toHaveLength(1);
    if (work) expectSameDraft(undo(work.history).draft, plan);
  });

  it("goes on the plan on the table beside what could be undone there", () => {
    putOnPlan(shelf, null, newPlan("m", "one.dxf"), wall(2), NOW);
    const key = lastOpen(shelf);
    const table = planOnTable(shelf, read);
    expect(table && putOnPlan(shelf, table, table.history.draft, wall(4), NOW)).toEqual({ ok: true });
    expect(lastOpen(shelf)).toBe(key);
    const after = planOnTable(shelf, read);
    expect(after?.history.past).toHaveLength(2);
    expect(after?.history.draft.exercise.plan.walls).toHaveLength(2);
  });

  it("leaves the plan on the table alone when it gets a plan of its own", () => {
    const before = { history: startHistory(newDraft("ft-in")), done: [], undone: [], hand: CHOOSING, measures: null };
    keepPlan(shelf, "1", before, NOW);
    putOnPlan(shelf, null, newPlan("m", "two.dxf"), wall(2), NOW);
    expect(
      keptPlans(shelf)
        .map(({ title }) => title)
        .sort(),
    ).toEqual(["New set", "two"]);
    expect(lastOpen(shelf)).toBe("2");
  });

  it("is told in words where it cannot be put", () => {
    const plan = newPlan("m", ".dxf");
    expect(plan.exercise.title).toBe("New set");
    expect(putOnPlan(null, null, plan, wall(2), NOW)).toMatchObject({ ok: false });
    expect(putOnPlan(makeShelf(10), null, plan, wall(2), NOW)).toMatchObject({ ok: false });
    expect(putOnPlan(shelf, null, plan, { edit: "bring-walls", runs: [], height: 4 }, NOW)).toMatchObject({
      ok: false,
      say: "There is no wall in what was brought.",
    });
    expect(keptPlans(shelf)).toEqual([]);
    expect(planOnTable(shelf, read)).toBeNull();
  });
});

it.each([
  ["The lamp room", "the-lamp-room"],
  ["  Fräulein Ödipus: 2. Akt!", "fräulein-ödipus-2-akt"],
  ["../../etc", "etc"],
  ["???", "plan"],
  ["x".repeat(200), "x".repeat(60)],
])("a file of %s is called %s", (title, name) => {
  expect(fileName(title)).toBe(name);
});
