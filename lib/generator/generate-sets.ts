import type { FurnitureKind, OpeningKind, Plan } from "../plan/plan";
import { addFurniture, boxNames } from "./add-furniture";
import { addPlatform, nosingNames } from "./add-levels";
import { addOpenings, openingNames } from "./add-openings";
import { isPlayable } from "./clear-stage";
import { CALLED, REVEAL_FT } from "./generate-openings";
import { wallStyle } from "./generate-walls";
import type { Draw, Idea } from "./idea";
import { listed } from "./in-words";
import { runWalls } from "./run-walls";

const KINDS: readonly FurnitureKind[] = ["table", "sofa", "desk", "chest", "counter", "bed", "piano", "stove", "bench"];
const OPENINGS: readonly (readonly OpeningKind[])[] = [
  ["door"],
  ["door"],
  ["door", "window"],
  ["door", "window"],
  ["door", "window", "arch"],
];
const PIECES = [1, 1, 2, 2, 3] as const;
/** From this level on the set has a platform as well. */
const PLATFORM_FROM = 4;
/** It stands upstage, so that the room before it stays free, feet. */
const PLATFORM_NEAREST_FT = 9;
/** How the marks are shared out: corners of walls, openings, platform, furniture; hundredths. */
const SHARES = { walls: 45, openings: 25, platform: 15 } as const;
const TRIES = 30;

/** A whole set: walls with their openings, a platform, furniture. */
export function thinkOutSets(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const style = level === 1 ? { ...wallStyle(2, deepest), shapes: ["box"] as const } : wallStyle(level, deepest);
  const run = runWalls(dice, frame, style, REVEAL_FT);
  if (!run) return null;
  const inRun = run.plan.walls.filter(({ from, to }) => run.corners.includes(from) && run.corners.includes(to));
  const kinds = OPENINGS[level - 1] ?? [];
  const open = addOpenings(
    dice,
    frame,
    run.plan,
    kinds,
    inRun.map(({ id }) => id),
  );
  const openings = open.walls.flatMap((wall) => wall.openings);
  if (openings.length < kinds.length) return null;
  const stepped = level >= PLATFORM_FROM ? addOne(draw, open) : open;
  if (level >= PLATFORM_FROM && stepped.platforms.length === 0) return null;
  const count = PIECES[level - 1] ?? 1;
  const plan = addFurniture(dice, frame, stepped, {
    kinds: KINDS,
    count,
    deepest: deepest - 4,
    turnDeg: level < 3 ? 0 : 30,
    atWalls: true,
  });
  if (plan.furniture.length < count) return null;
  const first = run.corners[0] ?? "";
  const given = level === 1 ? [`${first}.foot`, `${first}.top`] : level === 2 ? [`${first}.foot`] : [];
  const share = (percent: number) => Math.floor((most * percent) / 100);
  const corners = ["foot", "top"].flatMap((role) => run.corners.map((corner) => `${corner}.${role}`));
  const pieces = plan.furniture.map(({ id }) => ({
    names: boxNames(id),
    most: Math.ceil(share(level < PLATFORM_FROM ? 30 : 20) / count),
  }));
  const platform = plan.platforms.map(({ id }) => ({ names: boxNames(id), most: share(SHARES.platform) }));
  return {
    plan,
    kind: "plan-to-picture",
    given,
    wanted: [
      { names: corners, most: share(SHARES.walls) },
      { names: openingNames(plan), most: share(SHARES.openings) },
      ...platform,
      ...plan.stairs.map((stair) => ({ names: nosingNames(stair), most: 2 })),
      ...pieces,
    ],
    skills: [
      "depth-by-eye",
      "raking-wall",
      "height",
      "opening",
      "furniture",
      ...(plan.platforms.length > 0 ? ["platform"] : []),
    ],
    place: "room",
    brief: () =>
      `A whole set: walls, ${listed([...openings.map(({ kind }) => CALLED[kind]), ...plan.platforms.map(() => "a platform"), ...plan.furniture.map(({ kind }) => kind)])}. Place what is asked in that order, feet before tops.`,
  };
}

function addOne({ dice, frame, deepest }: Draw, plan: Plan): Plan {
  for (let i = 0; i < TRIES; i += 1) {
    const next = addPlatform(dice, frame, plan, {
      id: "P1",
      nearest: PLATFORM_NEAREST_FT,
      deepest,
      risers: [2, 3],
      flight: dice.pick(["front", "none"] as const),
      splayed: false,
    });
    if (isPlayable(next, frame)) return next;
  }
  return plan;
}
