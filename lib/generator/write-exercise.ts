import type { Exercise } from "../exercise/exercise";
import type { WrittenExercise, WrittenPlan } from "../exercise/exercise-schema";
import { FOOT_M, INCH_M } from "../measure/length";
import { printLength } from "../measure/print-length";
import type { Furniture, Opening, Plan, Wall } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";

type Write = (metres: number) => number | string;

/** A length as an author writes it in feet: 12, 8'-6", 9". To the inch. */
function writeFeet(metres: number): number | string {
  const inches = Math.round(metres / INCH_M);
  return inches % 12 === 0 ? inches / 12 : printLength((inches / 12) * FOOT_M, "ft-in");
}

/** A length as an author writes it in metres: 9, 5.4 down to 100 mm, 750 mm otherwise. To the millimetre. */
function writeMetres(metres: number): number | string {
  const mm = Math.round(metres * 1000);
  return mm % 100 === 0 ? mm / 1000 : `${mm} mm`;
}

/** An exercise as its file writes it: the reverse of reading it. What is absent by default is left out. */
export function writeExercise(exercise: Exercise): WrittenExercise {
  const { stage, viewer, task } = exercise;
  const write: Write = exercise.units === "ft-in" ? writeFeet : writeMetres;
  return {
    format: "plasterline.exercise/1",
    id: exercise.id,
    version: exercise.version,
    title: exercise.title,
    brief: exercise.brief,
    scenario: exercise.scenario,
    unit: exercise.unit,
    level: exercise.level,
    skills: [...exercise.skills],
    notes: exercise.notes,
    units: exercise.units,
    scale: exercise.scale,
    stage: {
      opening: { width: write(stage.opening.width), height: write(stage.opening.height) },
      depth: write(stage.depth),
      apron: write(stage.apron),
      ...(stage.rake === 0 ? {} : { rake: `1:${Math.round(1 / stage.rake)}` }),
    },
    viewer: {
      distance: write(viewer.distance),
      eyeHeight: write(viewer.eyeHeight),
      ...(viewer.offset === 0 ? {} : { offset: write(viewer.offset) }),
    },
    plan: writePlan(exercise.plan, write),
    task: {
      kind: task.kind,
      marks: [...task.marks],
      ...(task.given.length === 0 ? {} : { given: [...task.given] }),
      ...(task.goOnFrom === "true" ? {} : { goOnFrom: task.goOnFrom }),
      dimensions: task.dimensions,
      ...(task.hints === "allowed" ? {} : { hints: task.hints }),
      strictness: task.strictness,
    },
  };
}

function writePlan(plan: Plan, write: Write): WrittenPlan {
  const place = ([x, y]: PlanPoint): [number | string, number | string] => [write(x), write(y)];
  const base = (metres: number) => (metres === 0 ? {} : { base: write(metres) });
  const some = <Name extends string, Item>(name: Name, items: readonly Item[]) =>
    (items.length === 0 ? {} : { [name]: [...items] }) as { [key in Name]?: Item[] };
  return {
    ...(plan.corners.size === 0
      ? {}
      : { corners: Object.fromEntries([...plan.corners].map(([name, at]) => [name, place(at)])) }),
    ...some(
      "walls",
      plan.walls.map((wall) => writeWall(wall, write)),
    ),
    ...some(
      "platforms",
      plan.platforms.map((item) => ({
        id: item.id,
        outline: item.outline.map(place),
        height: write(item.height),
        ...base(item.base),
      })),
    ),
    ...some(
      "stairs",
      plan.stairs.map((item) => ({
        id: item.id,
        nosing: [place(item.nosing[0]), place(item.nosing[1])] as [
          [number | string, number | string],
          [number | string, number | string],
        ],
        steps: item.steps,
        tread: write(item.tread),
        riser: write(item.riser),
        ...base(item.base),
      })),
    ),
    ...some(
      "furniture",
      plan.furniture.map((item) => writeFurniture(item, write)),
    ),
  };
}

function writeWall(wall: Wall, write: Write) {
  return {
    id: wall.id,
    from: wall.from,
    to: wall.to,
    height: write(wall.height),
    ...(wall.thickness === 0 ? {} : { thickness: write(wall.thickness) }),
    ...(wall.base === 0 ? {} : { base: write(wall.base) }),
    ...(wall.openings.length === 0 ? {} : { openings: wall.openings.map((opening) => writeOpening(opening, write)) }),
  };
}

function writeOpening(opening: Opening, write: Write) {
  return {
    id: opening.id,
    kind: opening.kind,
    at: write(opening.at),
    width: write(opening.width),
    ...(opening.sill === 0 ? {} : { sill: write(opening.sill) }),
    head: write(opening.head),
    ...(opening.depth === null ? {} : { depth: write(opening.depth) }),
    ...(opening.leaves === 1 ? {} : { leaves: opening.leaves }),
    ...(opening.hinge === null ? {} : { hinge: opening.hinge }),
    ...(opening.kind === "door" ? { swing: opening.swing } : {}),
  };
}

function writeFurniture(item: Furniture, write: Write) {
  const turnDeg = Math.round((item.turn * 180) / Math.PI);
  return {
    id: item.id,
    kind: item.kind,
    at: [write(item.at[0]), write(item.at[1])] as [number | string, number | string],
    ...(turnDeg === 0 ? {} : { turn: turnDeg }),
    width: write(item.width),
    depth: write(item.depth),
    height: write(item.height),
  };
}
