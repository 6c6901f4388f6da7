import { vi } from "vitest";

/** Random cases a property tries when nothing is said. */
const USUAL_RUNS = 200;

/** Time allowed for a case, and for a test however few it has, milliseconds. */
const CASE_MS = 50;
const TEST_MS = 10_000;

const asked = process.env.SEEDS === undefined ? USUAL_RUNS : Number(process.env.SEEDS);
if (!(Number.isInteger(asked) && asked > 0)) throw new Error(`SEEDS must be a whole number of runs, not ${asked}.`);

// A longer run is given longer, in whichever test file imports this.
vi.setConfig({ testTimeout: Math.max(TEST_MS, asked * CASE_MS) });

/** Settings of every seeded property: the same cases each time, more of them where `SEEDS` asks for a longer run. */
export const seeded = { seed: 1435, numRuns: asked } as const;
