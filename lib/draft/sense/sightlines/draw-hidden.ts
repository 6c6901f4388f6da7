import type { DisplayItem, DisplayList } from "../../../drawing/display-list";
import { makeStroke } from "../../../drawing/make-stroke";
import type { Plan } from "../../../plan/plan";
import { insideOutline } from "../../../plan/surface-level";
import { placeOnWall, type WallLine, wallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import { hatchOutline } from "./hatch-outline";
import type { Sight } from "./sight";

/** A wall is looked at in pieces about this long, and at most so many, metres. */
const PIECE_M = 0.05;
const MOST_PIECES = 240;
/** The place that is looked at lies so far onstage of the wall's face, so that the face itself does not hide it, metres. */
const BEFORE_M = 0.02;
/** How wide the hatching is, and how far its lines are apart, millimetres of paper. */
const BAND_MM = 2.6;
const HATCH_MM = 1.1;

/**
 * What of the walls' onstage faces a seat does not see in the plan, hatched in graphite along them, onstage. What is hidden in
 * height alone, by the header or by furniture, is not in the plan and is not drawn. Plan metres.
 */
export function drawHidden({ seen }: Pick<Sight, "seen">, plan: Plan, scaleRatio: number): DisplayList {
  const mm = scaleRatio / 1000;
  return plan.walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    if (!line) return [];
    return hiddenStretches(line, seen).flatMap(([from, to], i): readonly DisplayItem[] => {
      const onstage = (along: number): PlanPoint => {
        const [x, y] = placeOnWall(line, along);
        return [x - line.offstage[0] * BAND_MM * mm, y - line.offstage[1] * BAND_MM * mm];
      };
      const band = [placeOnWall(line, from), placeOnWall(line, to), onstage(to), onstage(from)];
      const id = `sight.hidden.${wall.id}.${i + 1}`;
      return [
        makeStroke(`${id}.edge`, [onstage(from), onstage(to)], { line: "hidden" }),
        ...hatchOutline(band, HATCH_MM * mm).map((stroke, k) => makeStroke(`${id}.hatch.${k + 1}`, stroke, {})),
      ];
    });
  });
}

/** Stretches of a wall that lie in nothing of what is seen, metres along it. */
export function hiddenStretches(line: WallLine, seen: Sight["seen"]): readonly (readonly [number, number])[] {
  const pieces = Math.max(1, Math.min(MOST_PIECES, Math.ceil(line.length / PIECE_M)));
  const long = line.length / pieces;
  const stretches: [number, number][] = [];
  for (let i = 0; i < pieces; i++) {
    const [x, y] = placeOnWall(line, (i + 0.5) * long);
    const before: PlanPoint = [x - line.offstage[0] * BEFORE_M, y - line.offstage[1] * BEFORE_M];
    if (seen.some((outline) => insideOutline(outline, before))) continue;
    const last = stretches.at(-1);
    if (last && last[1] === i * long) last[1] = (i + 1) * long;
    else stretches.push([i * long, (i + 1) * long]);
  }
  return stretches;
}
