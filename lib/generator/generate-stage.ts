import { BLANK_PLAN } from "../plan/blank-plan";
import { capital } from "../plan/first-letter";
import { footNames, spikeFloor } from "./floor-points";
import type { Draw, Idea } from "./idea";
import { inWords } from "./in-words";
import { runWalls } from "./run-walls";

/** Marks on the apron, before the plaster line. */
const BEFORE = [2, 2, 3, 2, 2] as const;
/** On a rake the other marks are this far upstage, where the rise is more than the hand's error, feet. */
const RAKED_FROM_FT = 7;
const WALLS_FROM = 5;

/** The stage itself: the apron before the plaster line, the eye off the centre line, the rake. */
export function thinkOutStage(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const before = BEFORE[level - 1] ?? 2;
  const run =
    level >= WALLS_FROM
      ? runWalls(dice, frame, {
          shapes: ["box", "corner"],
          deep: [10, Math.min(16, deepest)],
          splay: [2, 5],
          skew: 2,
          returns: false,
        })
      : null;
  if (level >= WALLS_FROM && !run) return null;
  const spikes = spikeFloor(draw, run ? 0 : most - before, before, frame.stage.rake > 0 ? RAKED_FROM_FT : undefined);
  const taken = run?.corners ?? [];
  // The letters on the apron go on after those of the walls.
  const letters = "ABCDEFGHJKLMN".slice(taken.length);
  const points = [...spikes.corners.values()].map((at, i) => [letters[i] as string, at] as const);
  const floor = { ...BLANK_PLAN, corners: new Map(points) };
  const plan = run ? { ...run.plan, corners: new Map([...run.plan.corners, ...points]) } : floor;
  const walls = taken.map((corner) => `${corner}.foot`);
  const tops = taken.map((corner) => `${corner}.top`);
  const { viewer, stage } = frame;
  return {
    plan,
    kind: "plan-to-picture",
    given: [],
    wanted: [{ names: [...footNames(floor), ...walls, ...tops], most }],
    skills: [
      "apron",
      "depth-by-eye",
      ...(viewer.offset === 0 ? [] : ["off-centre-eye"]),
      ...(stage.rake === 0 ? [] : ["rake"]),
    ],
    mustTell: frame.stage.rake > 0 && !run ? ["flat-floor"] : [],
    place: run ? "room" : "floor",
    brief: (marks) => {
      const eye =
        viewer.offset === 0
          ? ""
          : ` The eye sits to the ${viewer.offset > 0 ? "right" : "left"} of the centre line, and the CVP with it.`;
      const rake =
        stage.rake === 0 ? "" : ` The floor rises one in ${Math.round(1 / stage.rake)} upstage of the plaster line.`;
      return `${capital(inWords(marks.length, "mark"))}, ${inWords(before, "of them", "of them")} on the apron: before the plaster line things are drawn larger than true size, and below it.${eye}${rake}`;
    },
  };
}
