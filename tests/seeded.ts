/** Random cases a property tries when nothing is said. */
const USUAL_RUNS = 200;

const asked = process.env.SEEDS === undefined ? USUAL_RUNS : Number(process.env.SEEDS);
if (!(Number.isInteger(asked) && asked > 0)) throw new Error(`SEEDS must be a whole number of runs, not ${asked}.`);

/** Settings of every seeded property: the same cases each time, more of them where `SEEDS` asks for a longer run. */
export const seeded = { seed: 1435, numRuns: asked } as const;
