import type { FurnitureKind, OpeningKind, Plan } from "../plan/plan";
import { addFurniture, cornerByCorner } from "./add-furniture";
import { addPlatform, nosingNames } from "./add-levels";
import { addOpenings, jambByJamb } from "./add-openings";
import { isPlayable } from "./clear-stage";
import { CALLED, REVEAL_FT } from "./generate-openings";
import { wallStyle } from "./generate-walls";
import type { Draw, Idea } from "./idea";
import { listed } from "./in-words";
import type { RunStyle } from "./run-shapes";
import { runWalls } from "./run-walls";

const KINDS: readonly FurnitureKind[] = ["table", "sofa", "desk", "chest", "counter", "bed", "piano", "stove", "bench"];
const OPENINGS: readonly (readonly OpeningKind[])[] = [
  ["door"],
  ["door"],
  ["door", "window"],
  ["door", "window"],
  ["door", "window", "arch"],
];
const PIECES = [1, 1, 2, 2, 2] as const;
/** From this level on the set has a platform as well. */
const PLATFORM_FROM = 4;
/** It stands upstage, so that the room before it stays free, feet. */
const PLATFORM_NEAREST_FT = 9;
/** Marks on the openings together, and on each thing that stands on the stage; the corners of the walls get the rest. */
const ON_OPENINGS = [2, 2, 3, 4, 4] as const;
const PER_THING = [3, 3, 2, 2, 2] as const;
const TRIES = 60;

/** Rooms with floor enough for what stands in them: where there is a platform, wider upstage. */
const ROOMS: readonly Partial<RunStyle>[] = [
  { shapes: ["box"], deep: [9, 12], splay: [0, 2] },
  { shapes: ["box"] },
  {},
  { shapes: ["cut-corner", "jog", "box"], deep: [14, 18], splay: [1, 3.5] },
  { shapes: ["cut-corner-and-jog", "bay", "cut-corner"], deep: [15, 19], splay: [1, 3.5] },
];

/** A whole set: walls with their openings, a platform, furniture. */
export function thinkOutSets(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const run = runWalls(dice, frame, { ...wallStyle(level, deepest), ...ROOMS[level - 1] }, REVEAL_FT);
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
  const corners = ["foot", "top"].flatMap((role) => run.corners.map((corner) => `${corner}.${role}`));
  const perThing = PER_THING[level - 1] ?? 2;
  const onOpenings = ON_OPENINGS[level - 1] ?? 2;
  const onWalls = most - onOpenings - perThing * (plan.furniture.length + plan.platforms.length);
  const pieces = plan.furniture.map(({ id }) => ({ names: cornerByCorner(id), most: perThing }));
  const platform = plan.platforms.map(({ id }) => ({ names: cornerByCorner(id), most: perThing }));
  return {
    plan,
    kind: "plan-to-picture",
    given,
    wanted: [
      { names: corners, most: onWalls },
      { names: jambByJamb(plan), most: onOpenings },
      ...platform,
      ...pieces,
      ...plan.stairs.map((stair) => ({ names: nosingNames(stair), most: 2 })),
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
      small: true,
      splayed: false,
    });
    if (isPlayable(next, frame)) return next;
  }
  return plan;
}
