import { capital } from "../plan/first-letter";
import type { Plan } from "../plan/plan";
import { addOpenings, openingNames } from "./add-openings";
import { footNames, spikeFloor } from "./floor-points";
import { REVEAL_FT } from "./generate-openings";
import { wallStyle } from "./generate-walls";
import type { Draw, Idea } from "./idea";
import { inWords } from "./in-words";
import { runWalls } from "./run-walls";

const WALLS_FROM = 3;

/** The plan read back out of the picture: places on the floor alone. */
export function thinkOutReading(draw: Draw): Idea | null {
  return draw.level < WALLS_FROM ? readPoints(draw) : readWalls(draw);
}

function readPoints(draw: Draw): Idea {
  const plan = spikeFloor(draw, draw.most);
  return {
    ...reading(plan, draw.most, footNames(plan)),
    place: "floor",
    brief: (marks) =>
      `The picture shows ${inWords(marks.length, "spike mark")}. Find where each of them is on the plan.`,
  };
}

function readWalls(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const run = runWalls(dice, frame, wallStyle(level, deepest), REVEAL_FT);
  if (!run) return null;
  const walls = run.plan.walls.filter(({ from, to }) => run.corners.includes(from) && run.corners.includes(to));
  const plan = addOpenings(
    dice,
    frame,
    run.plan,
    level < 4 ? [] : ["door"],
    walls.map(({ id }) => id),
  );
  const feet = run.corners.map((corner) => `${corner}.foot`);
  return {
    ...reading(plan, most, [...feet, ...openingNames(plan)]),
    place: "room",
    brief: (marks) =>
      `The picture is all that came from the office. ${capital(inWords(marks.length, "place"))} on the floor: put each where it stands on the plan, corners first.`,
  };
}

function reading(plan: Plan, most: number, names: readonly string[]): Omit<Idea, "brief" | "place"> {
  return {
    plan,
    kind: "picture-to-plan",
    given: [],
    wanted: [{ names, most }],
    skills: ["reading-back", "depth-by-eye"],
  };
}
