import type { DisplayItem } from "@/lib/drawing/display-list";
import { clearOfCuts } from "@/lib/drawing/draw-plan";
import { drawColumn } from "@/lib/drawing/plan-symbols/draw-column";
import { drawDatumLines } from "@/lib/drawing/plan-symbols/draw-datum-lines";
import { drawFurniture, letterFurniture } from "@/lib/drawing/plan-symbols/draw-furniture";
import { drawGuards, letterGuards } from "@/lib/drawing/plan-symbols/draw-guards";
import { drawMasking, letterMasking } from "@/lib/drawing/plan-symbols/draw-masking";
import { drawPlatform, letterPlatform } from "@/lib/drawing/plan-symbols/draw-platform";
import { drawStageBox } from "@/lib/drawing/plan-symbols/draw-stage-box";
import { drawStair, letterStair } from "@/lib/drawing/plan-symbols/draw-stair";
import { drawWall } from "@/lib/drawing/plan-symbols/draw-wall";
import { drawLoosePoint, letterCorner } from "@/lib/drawing/plan-symbols/letter-corner";
import type { Wall } from "@/lib/plan/plan";
import type { Layer, Remember } from "../layers/remember";
import { allOf, type Drawn, type Touched } from "../layers/touched";

/**
 * The plan as `drawPlan` draws it, thing by thing, so that only what changed is drawn anew. A name looks for its place between
 * the lines of its own thing alone: on a plan that is being drawn it must not wander as other things move.
 */
export function planLayers(
  { plan, stage, units, scaleRatio }: Omit<Drawn, "viewer">,
  remember: Remember,
  touched: Touched = allOf(plan),
): readonly Layer[] {
  const at = wallsByCorner(touched.near);
  const wallsAt = (corner: string): readonly Wall[] => at.get(corner) ?? [];
  /** What a wall's drawing hangs on: itself, the walls it meets, and where they all end. */
  const wallDeps = (wall: Wall) =>
    [...wallsAt(wall.from), ...wallsAt(wall.to)].flatMap((each) => [
      each,
      plan.corners.get(each.from),
      plan.corners.get(each.to),
    ]);
  const walls = touched.walls.map((wall) =>
    remember(`wall.${wall.id}`, [wall, ...wallDeps(wall)], () => {
      const near = { ...plan, walls: [...new Set([...wallsAt(wall.from), ...wallsAt(wall.to)])] };
      return drawWall(near, wall);
    }),
  );
  const drawnWalls = new Map(walls.map((layer, i) => [touched.walls[i], layer.list]));
  const surfaces = [plan.platforms, plan.stairs, plan.walls, plan.corners, stage.rake, scaleRatio];
  return [
    remember("stage", [stage, scaleRatio], () => drawStageBox(stage, scaleRatio)),
    ...touched.platforms.map((each) =>
      remember(`platform.${each.id}`, [each, ...surfaces], () => [
        drawPlatform(each),
        ...drawGuards(plan, each, stage, scaleRatio),
      ]),
    ),
    ...touched.stairs.map((each) =>
      remember(`stair.${each.id}`, [each, ...surfaces], () => drawStair(plan, each, stage, scaleRatio)),
    ),
    ...touched.furniture.map((each) => remember(`furniture.${each.id}`, [each], () => drawFurniture(each))),
    ...touched.columns.map((each) => remember(`column.${each.id}`, [each], () => drawColumn(each))),
    remember("datum", [stage, scaleRatio], () => drawDatumLines(stage, scaleRatio).map(nameInside)),
    ...touched.masking.map((each) => remember(`masking.${each.id}`, [each], () => drawMasking(each))),
    ...walls,
    ...touched.corners.map(([name, place]) => {
      const meeting = wallsAt(name);
      const lists = meeting.map((wall) => drawnWalls.get(wall));
      return remember(`corner.${name}`, [place, scaleRatio, ...lists], () => {
        const near = { ...plan, walls: meeting };
        const loose = meeting.length === 0 ? drawLoosePoint(name, place, scaleRatio) : [];
        const items = [...loose, ...lists.flatMap((list) => list ?? [])];
        return [...loose, letterCorner(near, name, place, clearOfCuts({ items, scaleRatio }))];
      });
    }),
    ...touched.platforms.map((each) =>
      remember(`platform.${each.id}.name`, [each, ...surfaces], () => {
        const drawn = { items: [drawPlatform(each)], scaleRatio };
        return [...letterPlatform(each, units, drawn), ...letterGuards(plan, each, stage, drawn)];
      }),
    ),
    ...touched.stairs.map((each) =>
      remember(`stair.${each.id}.name`, [each, ...surfaces], () =>
        letterStair(each, stage, { items: drawStair(plan, each, stage, scaleRatio), scaleRatio }),
      ),
    ),
    ...touched.furniture.map((each) =>
      remember(`furniture.${each.id}.name`, [each, scaleRatio], () =>
        letterFurniture(each, { items: drawFurniture(each), scaleRatio }),
      ),
    ),
    ...touched.masking.map((each) =>
      remember(`masking.${each.id}.name`, [each, units, scaleRatio], () => [
        letterMasking(each, units, { items: drawMasking(each), scaleRatio }),
      ]),
    ),
  ];
}

function wallsByCorner(walls: readonly Wall[]): ReadonlyMap<string, readonly Wall[]> {
  const at = new Map<string, Wall[]>();
  for (const wall of walls)
    for (const corner of [wall.from, wall.to]) {
      const there = at.get(corner);
      if (there) there.push(wall);
      else at.set(corner, [wall]);
    }
  return at;
}

/** The plaster line's name goes under the line, not past its end, so that a narrow pane has room for the plan. */
function nameInside(item: DisplayItem): DisplayItem {
  if (item.kind !== "lettering" || item.id !== "plan.stage.plaster-line.name") return item;
  return { ...item, anchor: "end", shiftMm: [-item.shiftMm[0], item.shiftMm[1]] };
}
