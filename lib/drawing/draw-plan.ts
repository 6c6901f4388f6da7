import type { Exercise } from "../exercise/exercise";
import { between } from "../geometry/vector";
import type { Plan } from "../plan/plan";
import type { Drawn } from "./clear-lettering";
import type { DisplayItem, DisplayList } from "./display-list";
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
import { drawLoosePoint, letterCorner } from "./plan-symbols/letter-corner";

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
  for (const [name, at] of plan.corners) items.push(letterCorner(plan, name, at, clearOfCuts(drawn)));
  for (const platform of plan.platforms) items.push(...letterPlatform(platform, units, drawn));
  for (const platform of plan.platforms) items.push(...letterGuards(plan, platform, stage, drawn));
  for (const stair of plan.stairs) items.push(...letterStair(stair, stage, drawn));
  for (const piece of plan.furniture) items.push(...letterFurniture(piece, drawn));
  for (const cloth of plan.masking) items.push(letterMasking(cloth, units, drawn));
  items.push(...letterCaution(plan, stage, units, drawn));
  return items;
}

/** The same, with a line along the middle of every cut wall, so that a letter does not settle in the tone between its faces. */
export function clearOfCuts({ items, scaleRatio }: Drawn): Drawn {
  const middles = items.flatMap((item) => {
    if (item.kind !== "stroke" || !item.fillOnly) return [];
    const [a, b, c, d] = item.points;
    return a && b && c && d ? [makeStroke(`${item.id}.middle`, [between(a, d, 0.5), between(b, c, 0.5)])] : [];
  });
  return { items: [...items, ...middles], scaleRatio };
}

/** A cross at each corner that no wall uses: a plain point on the floor. */
function loosePoints(plan: Plan, scaleRatio: number): DisplayItem[] {
  const used = new Set(plan.walls.flatMap((wall) => [wall.from, wall.to]));
  return [...plan.corners].flatMap(([name, at]) => (used.has(name) ? [] : drawLoosePoint(name, at, scaleRatio)));
}
