import type { Strictness, Task, Unit } from "../exercise/exercise";

export const LEVELS = [1, 2, 3, 4, 5] as const;
export type Level = (typeof LEVELS)[number];

/** What a level asks of the student, whatever the unit. */
export type Demands = {
  readonly strictness: Strictness;
  readonly dimensions: Task["dimensions"];
  readonly hints: Task["hints"];
  readonly goOnFrom: Task["goOnFrom"];
  /** The eye's height over the stage floor, feet, least and most: a low horizon packs the floor. */
  readonly horizon: readonly [least: number, most: number];
  /** How much of the stage's depth may be used. */
  readonly reach: number;
  /** How often in a hundred the eye stands off the centre line, and the stage is raked. */
  readonly offCentre: number;
  readonly raked: number;
};

const EASY = { dimensions: "printed", hints: "allowed", goOnFrom: "true" } as const;

const DEMANDS: Readonly<Record<Level, Demands>> = {
  1: { ...EASY, strictness: "thumbnail", horizon: [8.5, 10], reach: 0.55, offCentre: 0, raked: 0 },
  2: { ...EASY, strictness: "thumbnail", horizon: [8, 9.5], reach: 0.65, offCentre: 0, raked: 0 },
  3: { ...EASY, strictness: "thumbnail", horizon: [7, 9], reach: 0.75, offCentre: 50, raked: 0 },
  4: { ...EASY, strictness: "sketch", dimensions: "rule", horizon: [6.5, 8.5], reach: 0.85, offCentre: 75, raked: 0 },
  5: {
    strictness: "sketch",
    dimensions: "rule",
    hints: "none",
    goOnFrom: "own",
    horizon: [5.5, 8],
    reach: 0.95,
    offCentre: 90,
    raked: 50,
  },
};

/** What the level asks in this unit: stage is about the eye and the rake, and furniture and platforms stand on a level floor. */
export function demandsOf(unit: Unit, level: Level): Demands {
  const demands = DEMANDS[level];
  if (unit === "stage") return { ...demands, offCentre: level >= 3 ? 100 : 0, raked: level >= 4 ? 100 : 0 };
  if (unit === "furniture" || unit === "levels") return { ...demands, raked: 0 };
  return demands;
}

type Count = readonly [fewest: number, most: number];

const MARKS: Readonly<Record<Unit, readonly [Count, Count, Count, Count, Count]>> = {
  floor: [
    [4, 4],
    [5, 5],
    [6, 7],
    [7, 8],
    [8, 9],
  ],
  walls: [
    [4, 4],
    [5, 7],
    [7, 9],
    [9, 11],
    [10, 14],
  ],
  openings: [
    [4, 4],
    [5, 7],
    [6, 8],
    [8, 10],
    [10, 13],
  ],
  furniture: [
    [4, 5],
    [6, 8],
    [8, 10],
    [10, 12],
    [12, 15],
  ],
  levels: [
    [4, 6],
    [6, 8],
    [8, 10],
    [10, 12],
    [12, 15],
  ],
  stage: [
    [4, 5],
    [5, 6],
    [6, 7],
    [7, 9],
    [9, 12],
  ],
  reading: [
    [4, 4],
    [5, 5],
    [5, 6],
    [6, 7],
    [7, 9],
  ],
  sets: [
    [7, 9],
    [9, 11],
    [11, 13],
    [14, 17],
    [17, 20],
  ],
};

/** How many marks an exercise of this unit and level asks. */
export function marksAsked(unit: Unit, level: Level): Count {
  return MARKS[unit][level - 1] as Count;
}
