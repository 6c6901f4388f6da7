import type { LengthUnits } from "../measure/length";
import type { Column, Furniture, Masking, Opening, Plan, Platform, Stair, Wall } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import type { WrittenPlan } from "./exercise-schema";
import { writeLength } from "./write-length";

/** Degrees that differ from a whole number by rounding alone are that number. */
const WHOLE_DEG = 1e-9;

type WrittenLength = number | string;
type WrittenPlace = [WrittenLength, WrittenLength];
type Writer = {
  readonly length: (metres: number) => WrittenLength;
  readonly place: (at: PlanPoint) => WrittenPlace;
};

/** A plan as its file writes it: every member that is not as it would be read when absent. */
export function writePlan(plan: Plan, units: LengthUnits): WrittenPlan {
  const length = (metres: number) => writeLength(metres, units);
  const write: Writer = { length, place: ([x, y]) => [length(x), length(y)] };
  return {
    ...(plan.corners.size === 0
      ? {}
      : { corners: Object.fromEntries([...plan.corners].map(([name, at]) => [name, write.place(at)])) }),
    ...some(
      "walls",
      plan.walls.map((wall) => writeWall(wall, write)),
    ),
    ...some(
      "platforms",
      plan.platforms.map((item) => writePlatform(item, write)),
    ),
    ...some(
      "stairs",
      plan.stairs.map((item) => writeStair(item, write)),
    ),
    ...some(
      "furniture",
      plan.furniture.map((item) => writeFurniture(item, write)),
    ),
    ...some(
      "columns",
      plan.columns.map((item) => writeColumn(item, write)),
    ),
    ...some(
      "masking",
      plan.masking.map((item) => writeMasking(item, write)),
    ),
  };
}

function some<Name extends string, Item>(name: Name, items: readonly Item[]): { [key in Name]?: Item[] } {
  return (items.length === 0 ? {} : { [name]: [...items] }) as { [key in Name]?: Item[] };
}

function writeBase({ base }: { readonly base: number }, write: Writer): { base?: WrittenLength } {
  return base === 0 ? {} : { base: write.length(base) };
}

function writeWall(wall: Wall, write: Writer) {
  return {
    id: wall.id,
    from: wall.from,
    to: wall.to,
    height: write.length(wall.height),
    ...(wall.thickness === 0 ? {} : { thickness: write.length(wall.thickness) }),
    ...writeBase(wall, write),
    ...(wall.onstage === "right" ? {} : { onstage: wall.onstage }),
    ...(wall.openings.length === 0 ? {} : { openings: wall.openings.map((opening) => writeOpening(opening, write)) }),
  };
}

function writeOpening(opening: Opening, { length }: Writer) {
  return {
    id: opening.id,
    kind: opening.kind,
    at: length(opening.at),
    width: length(opening.width),
    ...(opening.sill === 0 ? {} : { sill: length(opening.sill) }),
    head: length(opening.head),
    ...(opening.depth === null ? {} : { depth: length(opening.depth) }),
    ...(opening.leaves === 1 ? {} : { leaves: opening.leaves }),
    ...(opening.hinge === null ? {} : { hinge: opening.hinge }),
    ...(opening.kind === "door" || opening.swing === "onstage" ? { swing: opening.swing } : {}),
  };
}

function writePlatform(item: Platform, write: Writer) {
  return {
    id: item.id,
    outline: item.outline.map(write.place),
    height: write.length(item.height),
    ...writeBase(item, write),
  };
}

function writeStair(item: Stair, write: Writer) {
  const nosing: [WrittenPlace, WrittenPlace] = [write.place(item.nosing[0]), write.place(item.nosing[1])];
  return {
    id: item.id,
    nosing,
    steps: item.steps,
    tread: write.length(item.tread),
    riser: write.length(item.riser),
    ...writeBase(item, write),
  };
}

function writeFurniture(item: Furniture, write: Writer) {
  const turnDeg = writeDegrees(item.turn);
  return {
    id: item.id,
    kind: item.kind,
    at: write.place(item.at),
    ...(turnDeg === 0 ? {} : { turn: turnDeg }),
    width: write.length(item.width),
    depth: write.length(item.depth),
    height: write.length(item.height),
    ...writeBase(item, write),
  };
}

function writeDegrees(angle: number): number {
  const deg = (angle * 180) / Math.PI;
  const whole = Math.round(deg);
  return Math.abs(deg - whole) < WHOLE_DEG ? whole : deg;
}

function writeColumn(item: Column, write: Writer) {
  return {
    id: item.id,
    at: write.place(item.at),
    diameter: write.length(item.diameter),
    height: write.length(item.height),
    ...writeBase(item, write),
  };
}

function writeMasking(item: Masking, write: Writer) {
  const line: [WrittenPlace, WrittenPlace] = [write.place(item.line[0]), write.place(item.line[1])];
  return {
    id: item.id,
    kind: item.kind,
    line,
    ...(item.trim === null ? {} : { trim: write.length(item.trim) }),
    height: write.length(item.height),
  };
}
