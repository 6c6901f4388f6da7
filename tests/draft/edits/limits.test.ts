import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refuseName } from "@/lib/draft/edits/names";
import { newDraft } from "@/lib/draft/new-draft";
import { readDraft } from "@/lib/draft/read-draft";
import { writeDraft } from "@/lib/draft/write-draft";
import { isReservedName } from "@/lib/exercise/limits";
import { name } from "@/lib/exercise/schema-parts";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { edited, refusal } from "./five-walls";

const run = (y: number, count: number): readonly PlanPoint[] =>
  Array.from({ length: count }, (_, i) => [i / 100, y] as const);
const walls = (y: number, count: number) =>
  ({ edit: "add-walls", corners: run(y, count), closed: false, height: 3, thickness: 0 }) as const;

describe("what a draft may hold", () => {
  it("is what its file may hold: as many parts, and no more", () => {
    // 1000 corners and 999 walls are 1999 parts; one more point makes 2000.
    const full = edited(newDraft("m"), walls(1, 1000), { edit: "add-point", at: [0, 2] });
    expect(readDraft(JSON.stringify(writeDraft(full))).ok).toBe(true);
    expect(refusal(full, { edit: "add-point", at: [0, 3] })).toMatch(/at most 2,000 parts/);
    const fewer = edited(full, { edit: "take-away", things: [{ kind: "corner", id: "A" }] });
    expect(refusal(fewer, { edit: "add-point", at: [0, 3] })).toBe("");
  });

  it("is the same names as in the file", () => {
    const letters = fc.string({
      unit: fc.constantFrom("a", "Z", "7", "é", "ß", "-", "_", " ", ".", "'", "/", ""),
      maxLength: 70,
    });
    const reserved = fc.constantFrom("constructor", "toString", "__proto__", "prototype", "valueOf");
    fc.assert(
      fc.property(fc.oneof(letters, fc.string({ maxLength: 6 }), reserved), (word) => {
        const inFile = name.safeParse(word).success && !isReservedName(word);
        expect(refuseName(word, new Set()) === null, word).toBe(inFile);
      }),
      seeded,
    );
  });

  it("is flights of 1 to 100 risers, as in the file", () => {
    const stair = (steps: number) =>
      ({
        edit: "add-stair",
        stair: {
          nosing: [
            [0, 1],
            [1, 1],
          ],
          steps,
          tread: 0.3,
          riser: 0.15,
          base: 0,
        },
      }) as const;
    expect(refusal(newDraft("m"), stair(100))).toBe("");
    for (const steps of [0, 101, 2.5]) expect(refusal(newDraft("m"), stair(steps))).toMatch(/1 to 100 risers/);
    const draft = edited(newDraft("m"), stair(3));
    expect(refusal(draft, { edit: "change-stair", id: "S1", change: { steps: 0 } })).toMatch(/1 to 100 risers/);
  });
});

/** Asked of one edit of 300 walls on a machine of its own, and how much longer a busy one may take, milliseconds. */
const MOST_MS = 2;
const BUSY = 2;

describe("an edit among 300 walls", () => {
  it("takes no time that one would see", () => {
    const rows = Array.from({ length: 10 }, (_, i) => walls(1 + i / 2, 31));
    const draft = edited(newDraft("m"), ...rows);
    expect(draft.exercise.plan.walls.length).toBe(300);
    const times = Array.from({ length: 100 }, (_, i) => {
      const started = performance.now();
      edited(draft, { edit: "move-corner", id: "Z", to: [1, 2 + i / 1000] });
      return performance.now() - started;
    });
    expect(Math.min(...times)).toBeLessThan(MOST_MS * BUSY);
  });
});
