import type { PlanPoint, StagePoint } from "../stage/frame";
import { floorHeight, type Stage } from "../stage/stage";
import { furnitureCorners } from "./furniture-corners";
import type { NamedPoint, NamedPoints, PointGroup, PointRole } from "./named-point";
import type { Plan, Wall } from "./plan";
import { stairNosings } from "./stair-nosings";
import { openingJambs, wallLine } from "./wall-line";

/** Tops nearer in height than this are one top, metres. */
const SAME_HEIGHT_M = 1e-9;

/**
 * Every named point of a plan, in the plan's order: corners, openings, platforms, stairs, furniture, columns, masking.
 * What cannot be placed (a wall without its corner, a nosing of no length) is left out; the sense checks say so.
 */
export function namePoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoints {
  const points = [
    ...cornerPoints(plan, stage),
    ...openingPoints(plan, stage),
    ...platformPoints(plan, stage),
    ...stairPoints(plan, stage),
    ...furniturePoints(plan, stage),
    ...columnPoints(plan, stage),
    ...maskingPoints(plan, stage),
  ];
  return new Map(points.map((point) => [point.name, point]));
}

type Place = { readonly group: PointGroup; readonly element: string; readonly base: number };

function point(place: Place, name: string, role: PointRole, at: StagePoint, over: string | null): NamedPoint {
  // Written out: spreading `place` takes several times as long, which counts where a large plan is edited.
  const { group, element, base } = place;
  return { name, group, role, element, at, over, onFloor: role === "foot", base };
}

/** A foot at a place of the plan and a top straight above it at height `top`. */
function footAndTop(place: Place, name: string, [x, y]: PlanPoint, foot: number, top: number): NamedPoint[] {
  return [
    point(place, `${name}.foot`, "foot", [x, y, foot], null),
    point(place, `${name}.top`, "top", [x, y, top], `${name}.foot`),
  ];
}

function cornerPoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  const meeting = wallsByCorner(plan.walls);
  return [...plan.corners].flatMap(([name, [x, y]]) => {
    const walls = meeting.get(name) ?? [];
    const base = walls.length > 0 ? Math.min(...walls.map((wall) => wall.base)) : 0;
    const place: Place = { group: "corner", element: name, base };
    const foot = floorHeight(stage, y) + base;
    const first = walls[0];
    if (!first) return [point(place, `${name}.foot`, "foot", [x, y, foot], null)];
    const top = (wall: Wall) => wall.base + wall.height;
    if (walls.every((wall) => Math.abs(top(wall) - top(first)) < SAME_HEIGHT_M))
      return footAndTop(place, name, [x, y], foot, top(first));
    return [
      point(place, `${name}.foot`, "foot", [x, y, foot], null),
      ...walls.map((wall) => point(place, `${name}.top.${wall.id}`, "top", [x, y, top(wall)], `${name}.foot`)),
    ];
  });
}

function wallsByCorner(walls: readonly Wall[]): ReadonlyMap<string, readonly Wall[]> {
  const meeting = new Map<string, Wall[]>();
  for (const wall of walls)
    for (const corner of new Set([wall.from, wall.to])) meeting.set(corner, [...(meeting.get(corner) ?? []), wall]);
  return meeting;
}

function openingPoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  return plan.walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    if (!line) return [];
    const place: Place = { group: "opening", element: wall.id, base: wall.base };
    return wall.openings.flatMap((opening) => {
      const jambs = openingJambs(line, opening);
      const ground = floorHeight(stage, jambs.middle[1]) + wall.base;
      return (["start", "end"] as const).flatMap((end) => {
        const [x, y] = jambs[end];
        const name = `${wall.id}.${opening.id}.${end}`;
        const onFloor = opening.sill === 0;
        const sill = onFloor ? floorHeight(stage, y) + wall.base : ground + opening.sill;
        return [
          { ...point(place, `${name}.sill`, "sill", [x, y, sill], null), onFloor },
          point(place, `${name}.head`, "head", [x, y, ground + opening.head], `${name}.sill`),
        ];
      });
    });
  });
}

function platformPoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  return plan.platforms.flatMap((platform) => {
    const first = platform.outline[0];
    if (!first) return [];
    const top = floorHeight(stage, first[1]) + platform.base + platform.height;
    const place: Place = { group: "platform", element: platform.id, base: platform.base };
    return platform.outline.flatMap((vertex, i) =>
      footAndTop(place, `${platform.id}.${i + 1}`, vertex, floorHeight(stage, vertex[1]) + platform.base, top),
    );
  });
}

function stairPoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  return plan.stairs.flatMap((stair) => {
    const place: Place = { group: "stair", element: stair.id, base: stair.base };
    return stairNosings(stair, stage).flatMap((nosing, i) => [
      point(place, `${stair.id}.${i + 1}.start`, "nosing", nosing.start, null),
      point(place, `${stair.id}.${i + 1}.end`, "nosing", nosing.end, null),
    ]);
  });
}

function furniturePoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  return plan.furniture.flatMap((item) => {
    const top = floorHeight(stage, item.at[1]) + item.base + item.height;
    const place: Place = { group: "furniture", element: item.id, base: item.base };
    return furnitureCorners(item).flatMap((corner, i) =>
      footAndTop(place, `${item.id}.${i + 1}`, corner, floorHeight(stage, corner[1]) + item.base, top),
    );
  });
}

function columnPoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  return plan.columns.flatMap((column) => {
    const foot = floorHeight(stage, column.at[1]) + column.base;
    const place: Place = { group: "column", element: column.id, base: column.base };
    return footAndTop(place, `${column.id}.centre`, column.at, foot, foot + column.height);
  });
}

function maskingPoints(plan: Plan, stage: Pick<Stage, "rake">): NamedPoint[] {
  return plan.masking.flatMap((cloth) => {
    const place: Place = { group: "masking", element: cloth.id, base: 0 };
    const { trim } = cloth;
    return cloth.line.flatMap(([x, y], i) => {
      const name = `${cloth.id}.${i + 1}`;
      if (trim === null) return footAndTop(place, name, [x, y], floorHeight(stage, y), cloth.height);
      return [
        point(place, `${name}.trim`, "trim", [x, y, trim], null),
        point(place, `${name}.top`, "top", [x, y, trim + cloth.height], `${name}.trim`),
      ];
    });
  });
}
