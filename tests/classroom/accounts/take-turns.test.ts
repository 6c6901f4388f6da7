import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { takeTurns } from "@/lib/classroom/accounts/take-turns";

describe("taking turns", () => {
  it("never runs more at a time than it may, runs all in the order they came, and goes on after one that failed", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 4 }),
        fc.array(fc.record({ ticks: fc.integer({ min: 1, max: 5 }), fails: fc.boolean() }), { maxLength: 20 }),
        async (most, tasks) => {
          const inTurn = takeTurns(most);
          let [running, mostRunning] = [0, 0];
          const begun: number[] = [];
          const done = await Promise.allSettled(
            tasks.map(({ ticks, fails }, i) =>
              inTurn(async () => {
                begun.push(i);
                running += 1;
                mostRunning = Math.max(mostRunning, running);
                for (let tick = 0; tick < ticks; tick++) await Promise.resolve();
                running -= 1;
                if (fails) throw new Error(`${i}`);
                return i;
              }),
            ),
          );
          expect(begun).toEqual(tasks.map((_, i) => i));
          expect(mostRunning).toBe(Math.min(most, tasks.length));
          expect(done.map(({ status }) => status === "rejected")).toEqual(tasks.map(({ fails }) => fails));
        },
      ),
      { numRuns: 200, seed: 20261125 },
    );
  });
});
