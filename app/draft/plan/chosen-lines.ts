import type { Thing } from "@/lib/draft/draft";
import type { DisplayItem, DisplayList } from "@/lib/drawing/display-list";
import { drawPlace } from "@/lib/drawing/draw-place";
import { makeStroke } from "@/lib/drawing/make-stroke";
import { drawPlatform } from "@/lib/drawing/plan-symbols/draw-platform";
import type { Exercise } from "@/lib/exercise/exercise";
import { furnitureCorners } from "@/lib/plan/furniture-corners";
import { stairNosings } from "@/lib/plan/stair-nosings";
import { openingJambs, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import { openingDimensions, wallDimension } from "./live-lines";

type Sheet = Pick<Exercise, "plan" | "units" | "scaleRatio" | "stage">;

/** Half the width of the square round a chosen point, millimetres of paper. */
const POINT_MM = 2.2;

/** What lies under what is chosen, as with a broad soft pencil: the line or the outline of each thing. */
export function chosenLines(chosen: readonly Thing[], sheet: Sheet): DisplayList {
  return chosen.flatMap((thing): DisplayItem[] => {
    const outline = outlineOf(thing, sheet);
    if (!outline) return [];
    const closed = thing.kind !== "wall" && thing.kind !== "opening" && thing.kind !== "masking";
    const id = `chosen.${thing.kind}.${thing.kind === "opening" ? `${thing.wall}.` : ""}${thing.id}`;
    return [makeStroke(id, outline, { closed, weight: "extra-thick" })];
  });
}

/** The dimensions of the one thing that is chosen, in blue. */
export function chosenDimensions(chosen: readonly Thing[], sheet: Sheet): DisplayList {
  const [only] = chosen;
  if (!only || chosen.length > 1) return [];
  const { plan } = sheet;
  if (only.kind === "corner") {
    const at = plan.corners.get(only.id);
    return at ? drawPlace(sheet, at, only.id) : [];
  }
  if (only.kind !== "wall" && only.kind !== "opening") return [];
  const wall = plan.walls.find(({ id }) => id === (only.kind === "wall" ? only.id : only.wall));
  if (!wall) return [];
  if (only.kind === "wall") return wallDimension(wall, sheet);
  const opening = wall.openings.find(({ id }) => id === only.id);
  return opening ? openingDimensions(wall, opening, sheet) : [];
}

function outlineOf(thing: Thing, { plan, stage, scaleRatio }: Sheet): readonly PlanPoint[] | null {
  const named = <Item extends { readonly id: string }>(items: readonly Item[]) =>
    items.find(({ id }) => id === thing.id) ?? null;
  const round = (at: PlanPoint, r: number): PlanPoint[] => [
    [at[0] - r, at[1] - r],
    [at[0] + r, at[1] - r],
    [at[0] + r, at[1] + r],
    [at[0] - r, at[1] + r],
  ];
  switch (thing.kind) {
    case "corner": {
      const at = plan.corners.get(thing.id);
      return at ? round(at, (POINT_MM * scaleRatio) / 1000) : null;
    }
    case "wall": {
      const wall = named(plan.walls);
      const line = wall && wallLine(plan, wall);
      return line ? [line.from, line.to] : null;
    }
    case "opening": {
      const wall = plan.walls.find(({ id }) => id === thing.wall);
      const opening = wall?.openings.find(({ id }) => id === thing.id);
      const line = wall && wallLine(plan, wall);
      const jambs = line && opening ? openingJambs(line, opening) : null;
      return jambs ? [jambs.start, jambs.end] : null;
    }
    case "platform": {
      const platform = named(plan.platforms);
      return platform ? (drawPlatform(platform).points as readonly PlanPoint[]) : null;
    }
    case "stair": {
      const stair = named(plan.stairs);
      const nosings = stair ? stairNosings(stair, stage) : [];
      const [first, last] = [nosings[0], nosings.at(-1)];
      if (!first || !last) return null;
      return [first.start, first.end, last.end, last.start].map(([x, y]): PlanPoint => [x, y]);
    }
    case "furniture": {
      const item = named(plan.furniture);
      return item ? furnitureCorners(item) : null;
    }
    case "column": {
      const column = named(plan.columns);
      return column ? round(column.at, column.diameter / 2) : null;
    }
    case "masking":
      return named(plan.masking)?.line ?? null;
  }
}
