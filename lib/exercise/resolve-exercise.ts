import { type LengthUnits, parseLength } from "../measure/length";
import { parseScale } from "../measure/scale";
import { namePoints } from "../plan/name-points";
import type { Opening, Plan } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import type { Stage } from "../stage/stage";
import { distanceForBackWallRise, type Viewer } from "../stage/viewer";
import type { Exercise } from "./exercise";
import type { WrittenExercise, WrittenPlan } from "./exercise-schema";
import { orderMarks } from "./order-marks";
import type { Problem } from "./problem";

export type ExerciseReading =
  | { readonly ok: true; readonly exercise: Exercise }
  | { readonly ok: false; readonly problems: readonly Problem[] };

type Written = number | string;
type Metres = (written: Written) => number;

/** Lengths to metres and defaults filled in, for an exercise of the right form. */
export function resolveExercise(written: WrittenExercise): ExerciseReading {
  const metres = metresIn(written.units);
  const stage = resolveStage(written.stage, metres);
  const viewer = resolveViewer(written.viewer, stage, metres);
  if (!viewer) return { ok: false, problems: [backWallRiseProblem(stage)] };
  const plan = resolvePlan(written.plan, metres);
  const { task } = written;
  const given = task.given ?? [];
  return {
    ok: true,
    exercise: {
      id: written.id,
      version: written.version ?? 1,
      title: written.title,
      brief: written.brief ?? "",
      scenario: written.scenario ?? "",
      unit: written.unit,
      level: written.level,
      skills: written.skills ?? [],
      notes: written.notes ?? "",
      units: written.units,
      scale: written.scale,
      scaleRatio: parseScale(written.scale) as number,
      stage,
      viewer,
      plan,
      task: {
        kind: task.kind,
        marks: task.marks ?? orderMarks(namePoints(plan, stage), { stage, viewer, given, kind: task.kind }),
        given,
        goOnFrom: task.goOnFrom ?? "true",
        dimensions: task.dimensions ?? "printed",
        tools: task.tools ?? ["straightedge"],
        hints: task.hints ?? "allowed",
        strictness: task.strictness ?? "thumbnail",
      },
    },
  };
}

/** Reads lengths that the schema has passed already. */
function metresIn(units: LengthUnits): Metres {
  return (written) => {
    const parsed = parseLength(written, units);
    if (!parsed.ok) throw new Error(`A length reached the engine unchecked: ${parsed.reason}.`);
    return parsed.metres;
  };
}

function resolveStage(written: WrittenExercise["stage"], metres: Metres): Stage {
  return {
    opening: { width: metres(written.opening.width), height: metres(written.opening.height) },
    depth: metres(written.depth),
    apron: metres(written.apron ?? 0),
    rake: readRake(written.rake ?? 0),
  };
}

/** Rise over run, from a ratio or from `1:20`. */
function readRake(written: number | string): number {
  return typeof written === "number" ? written : 1 / Number(written.slice(2));
}

function resolveViewer(written: WrittenExercise["viewer"], stage: Stage, metres: Metres): Viewer | null {
  const eyeHeight = metres(written.eyeHeight);
  const distance =
    written.distance !== undefined
      ? metres(written.distance)
      : distanceForBackWallRise(stage, eyeHeight, metres(written.backWallRise as Written));
  return distance === null ? null : { distance, eyeHeight, offset: metres(written.offset ?? 0) };
}

function backWallRiseProblem(stage: Stage): Problem {
  const floor = stage.rake === 0 ? "above 0" : "above the rise of the floor at the back wall (rake times depth)";
  return {
    where: "/viewer/backWallRise",
    message: "no eye shows the back wall's foot at this height",
    hint: `make it ${floor} and below the eye height`,
  };
}

function resolvePlan(written: WrittenPlan, metres: Metres): Plan {
  const place = ([x, y]: readonly [Written, Written]): PlanPoint => [metres(x), metres(y)];
  const base = (item: { base?: Written | undefined }) => metres(item.base ?? 0);
  return {
    corners: new Map(Object.entries(written.corners ?? {}).map(([name, at]) => [name, place(at)])),
    walls: (written.walls ?? []).map((wall) => ({
      id: wall.id,
      from: wall.from,
      to: wall.to,
      height: metres(wall.height),
      thickness: metres(wall.thickness ?? 0),
      base: base(wall),
      onstage: wall.onstage ?? "right",
      openings: (wall.openings ?? []).map((opening) => resolveOpening(opening, metres)),
    })),
    platforms: (written.platforms ?? []).map((item) => ({
      id: item.id,
      outline: item.outline.map(place),
      height: metres(item.height),
      base: base(item),
    })),
    stairs: (written.stairs ?? []).map((item) => ({
      id: item.id,
      nosing: [place(item.nosing[0]), place(item.nosing[1])],
      steps: item.steps,
      tread: metres(item.tread),
      riser: metres(item.riser),
      base: base(item),
    })),
    furniture: (written.furniture ?? []).map((item) => ({
      id: item.id,
      kind: item.kind,
      at: place(item.at),
      turn: ((item.turn ?? 0) * Math.PI) / 180,
      width: metres(item.width),
      depth: metres(item.depth),
      height: metres(item.height),
      base: base(item),
    })),
    columns: (written.columns ?? []).map((item) => ({
      id: item.id,
      at: place(item.at),
      diameter: metres(item.diameter),
      height: metres(item.height),
      base: base(item),
    })),
    masking: (written.masking ?? []).map((item) => ({
      id: item.id,
      kind: item.kind,
      line: [place(item.line[0]), place(item.line[1])],
      trim: item.trim === undefined ? null : metres(item.trim),
      height: metres(item.height),
    })),
  };
}

type WrittenOpening = NonNullable<NonNullable<WrittenPlan["walls"]>[number]["openings"]>[number];

function resolveOpening(written: WrittenOpening, metres: Metres): Opening {
  return {
    id: written.id,
    kind: written.kind,
    at: metres(written.at),
    width: metres(written.width),
    sill: metres(written.sill ?? 0),
    head: metres(written.head),
    depth: written.depth === undefined ? null : metres(written.depth),
    leaves: written.leaves ?? 1,
    hinge: written.hinge ?? null,
    swing: written.swing ?? "offstage",
  };
}
