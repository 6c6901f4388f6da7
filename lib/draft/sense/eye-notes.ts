import type { Exercise } from "../../exercise/exercise";
import { type Interval, without } from "../../geometry/intervals";
import { cross, subtract } from "../../geometry/vector";
import { FOOT_M } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import { insideOutline } from "../../plan/surface-level";
import { wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";
import type { Edit } from "../edit";
import { standingBodies } from "./bodies";
import { listNames, type Note } from "./note";
import { eachOnce } from "./note-place";
import { sayThing } from "./say-thing";

/** An eye this far before the edge of the stage sits in the house, metres: a first row is seldom nearer (common practice, no source). */
const BEFORE_STAGE_M = 6 * FOOT_M;
/** Round distances to move the eye to. */
const ROUND_M = { "ft-in": FOOT_M, m: 0.5 } as const;
/** A gap in the walls round the eye smaller than this is none, radians. */
const NO_GAP = 1e-9;

/** Whether the eye stands where no one in the house can sit: in something, among walls all round it, or over the stage. */
export function eyeNotes(exercise: Exercise): readonly Note[] {
  const { plan, stage, viewer, units } = exercise;
  if (!(viewer.distance > 0)) return [];
  const eye: PlanPoint = [viewer.offset, -viewer.distance];
  const within = standingBodies(plan, stage).filter(({ outline }) => outline.length > 2 && insideOutline(outline, eye));
  const round = wallsRound(exercise, eye);
  const things = eachOnce([...within.map(({ thing }) => thing), ...(round ?? [])]);
  const remedy = farther(exercise, things);
  const words = {
    remedy: `Set the eye ${printLength(remedy.distance, units)} from the plaster line.`,
    edit: { edit: "set-viewer", viewer: { ...viewer, distance: remedy.distance } } satisfies Edit,
  };
  const [first] = things;
  if (first) {
    const among = round ? "walls all round it" : listNames(things.map((thing) => sayThing(plan, thing)));
    return [
      {
        weight: "note",
        where: "viewer",
        things,
        say: `The eye is inside the set, with ${round ? among : `its place in ${among}`}.`,
        ...words,
      },
    ];
  }
  if (viewer.distance >= stage.apron + SLACK_M) return [];
  return [
    {
      weight: "note",
      where: "viewer",
      things: [],
      say: "The eye stands over the stage itself, where nobody sits.",
      ...words,
    },
  ];
}

/** Room for rounding where the eye stands just at the edge of the apron, metres. */
const SLACK_M = 1e-6;

/** The walls, if they close the eye in on every side; openings in them do not count. Null where there is a gap between them. */
function wallsRound({ plan }: Exercise, eye: PlanPoint): readonly Thing[] | null {
  const walls = plan.walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    return line ? [{ wall, line }] : [];
  });
  const covered = walls.flatMap(({ line }): readonly Interval[] => {
    const [a, b] = [subtract(line.from, eye), subtract(line.to, eye)];
    const turn = Math.atan2(cross(a, b), a[0] * b[0] + a[1] * b[1]);
    const start = Math.atan2(a[1], a[0]);
    const [from, to] = turn < 0 ? [start + turn, start] : [start, start + turn];
    // Once for each turn of the circle that a stretch over its end can lie in.
    return [-2 * Math.PI, 0, 2 * Math.PI].map((whole): Interval => [from + whole, to + whole]);
  });
  const gaps = without([-Math.PI, Math.PI], covered).filter(([from, to]) => to - from > NO_GAP);
  return walls.length > 2 && gaps.length === 0 ? walls.map(({ wall }) => ({ kind: "wall", id: wall.id })) : null;
}

/** A round distance before the stage and before all that the eye stands in. */
function farther({ plan, stage, units }: Exercise, things: readonly Thing[]): { readonly distance: number } {
  const corners = new Set(
    plan.walls
      .filter(({ id }) => things.some((thing) => thing.kind === "wall" && thing.id === id))
      .flatMap((wall) => [wall.from, wall.to]),
  );
  const places: readonly PlanPoint[] = [
    ...standingBodies(plan, stage).flatMap(({ outline }) => outline),
    ...[...plan.corners].filter(([name]) => corners.has(name)).map(([, at]) => at),
  ];
  const nearest = places.reduce((least, [, y]) => Math.min(least, y), -stage.apron);
  const step = ROUND_M[units];
  return { distance: Math.ceil((BEFORE_STAGE_M - nearest) / step) * step };
}
