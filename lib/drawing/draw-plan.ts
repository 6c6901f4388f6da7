import type { Exercise } from "../exercise/exercise";
import { between } from "../geometry/vector";
import type { Plan } from "../plan/plan";
import { wallLine } from "../plan/wall-line";
import { type Drawn, letterName } from "./clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint } from "./display-list";
import { makeStroke } from "./make-stroke";
import { drawColumn } from "./plan-symbols/draw-column";
import { drawDatumLines } from "./plan-symbols/draw-datum-lines";
import { drawFurniture, letterFurniture } from "./plan-symbols/draw-furniture";
import { drawGuards, letterGuards } from "./plan-symbols/draw-guards";
import { drawMasking, letterMasking } from "./plan-symbols/draw-masking";
import { drawPlatform, letterPlatform } from "./plan-symbols/draw-platform";
import { drawStageBox } from "./plan-symbols/draw-stage-box";
import { drawStair, letterStair } from "./plan-symbols/draw-stair";
import { drawWall } from "./plan-symbols/draw-wall";
import { letterCaution } from "./plan-symbols/letter-caution";

/** Directions this short have no side to them: the walls at the corner cancel each other. */
const NO_SIDE = 1e-6;
/** Arms of the cross at a corner no wall uses, millimetres of paper. */
const CROSS_ARM_MM = 1.2;

/**
 * The ground plan of an exercise as a drafter draws it: a display list in plan metres, [x, y] with y up the sheet.
 *
 * Usage: `drawPlan(exercise)`, then give each stroke to `handPath` or `ruledPath` by its `hand`, in order, or the whole
 * to `toSvg`. Ids are unique and start with `plan.`, then `stage`, `wall`, `corner`, `platform`, `stair`, `furniture`,
 * `column` or `masking` and the element's own id, so that a sheet can find and brighten one element; the caution of a plan that
 * marks drops is `plan.caution`. Lettering is laid out for the
 * exercise's own scale. A teaching sketch is not a construction drawing: local codes and licensed practice decide.
 */
export function drawPlan(exercise: Pick<Exercise, "plan" | "stage" | "units" | "scaleRatio">): DisplayList {
  const { plan, stage, units, scaleRatio } = exercise;
  const items: DisplayItem[] = [
    ...drawStageBox(stage, scaleRatio),
    ...plan.platforms.map(drawPlatform),
    ...plan.platforms.flatMap((platform) => drawGuards(plan, platform, stage, scaleRatio)),
    ...plan.stairs.flatMap((stair) => drawStair(plan, stair, stage, scaleRatio)),
    ...plan.furniture.flatMap(drawFurniture),
    ...plan.columns.flatMap(drawColumn),
    ...drawDatumLines(stage, scaleRatio),
    ...plan.masking.flatMap(drawMasking),
    ...plan.walls.flatMap((wall) => drawWall(plan, wall)),
    ...loosePoints(plan, scaleRatio),
  ];
  // Lettering comes last, each piece clear of all that stands before it: names first, since marks are asked by them.
  const drawn = { items, scaleRatio };
  for (const [name, at] of plan.corners) {
    const away = awayFromStage(plan, name);
    items.push(letterName(`plan.corner.${name}.name`, pastWall(plan, name, at, away), away, name, clearOfCuts(drawn)));
  }
  for (const platform of plan.platforms) items.push(...letterPlatform(platform, units, drawn));
  for (const platform of plan.platforms) items.push(...letterGuards(plan, platform, stage, drawn));
  for (const stair of plan.stairs) items.push(...letterStair(stair, stage, drawn));
  for (const piece of plan.furniture) items.push(...letterFurniture(piece, drawn));
  for (const cloth of plan.masking) items.push(letterMasking(cloth, units, drawn));
  items.push(...letterCaution(plan, stage, units, drawn));
  return items;
}

/** The same, with a line along the middle of every cut wall, so that a letter does not settle in the tone between its faces. */
function clearOfCuts({ items, scaleRatio }: Drawn): Drawn {
  const middles = items.flatMap((item) => {
    if (item.kind !== "stroke" || !item.fillOnly) return [];
    const [a, b, c, d] = item.points;
    return a && b && c && d ? [makeStroke(`${item.id}.middle`, [between(a, d, 0.5), between(b, c, 0.5)])] : [];
  });
  return { items: [...items, ...middles], scaleRatio };
}

/** A cross at each corner that no wall uses: a plain point on the floor. */
function loosePoints(plan: Plan, scaleRatio: number): DisplayItem[] {
  const arm = (CROSS_ARM_MM * scaleRatio) / 1000;
  const used = new Set(plan.walls.flatMap((wall) => [wall.from, wall.to]));
  return [...plan.corners].flatMap(([name, [x, y]]) =>
    used.has(name)
      ? []
      : [
          makeStroke(
            `plan.corner.${name}.across`,
            [
              [x - arm, y],
              [x + arm, y],
            ],
            { weight: "thick" },
          ),
          makeStroke(
            `plan.corner.${name}.up`,
            [
              [x, y - arm],
              [x, y + arm],
            ],
            { weight: "thick" },
          ),
        ],
  );
}

/** Which way a corner's name goes: offstage, between the walls that meet there; past the end of a wall that stands alone. */
function awayFromStage(plan: Plan, corner: string): DrawingPoint {
  const walls = plan.walls.filter((wall) => wall.from === corner || wall.to === corner);
  const lines = walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    return line ? [{ line, outward: wall.from === corner ? -1 : 1 }] : [];
  });
  const only = lines.length === 1 ? lines[0] : undefined;
  const [x, y] = only
    ? add(only.line.offstage, only.line.along, only.outward)
    : lines.reduce<DrawingPoint>((sum, { line }) => add(sum, line.offstage, 1), [0, 0]);
  return Math.hypot(x, y) > NO_SIDE ? [x, y] : [1, 1];
}

/** The corner's place on the back of the walls that meet there: its letter stands beyond their thickness. */
function pastWall(plan: Plan, corner: string, at: DrawingPoint, away: DrawingPoint): DrawingPoint {
  const walls = plan.walls.filter((wall) => wall.from === corner || wall.to === corner);
  const thickest = Math.max(0, ...walls.map(({ thickness }) => thickness));
  return add(at, away, thickest / Math.hypot(...away));
}

function add(a: DrawingPoint, b: DrawingPoint, times: number): DrawingPoint {
  return [a[0] + b[0] * times, a[1] + b[1] * times];
}
