import { leftOf, subtract, unit } from "../../geometry/vector";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import type { Plan, Stair } from "../plan";
import { landsOnPlatform } from "../stair-landing";
import type { Solid } from "./solid";
import { type FaceSketch, solidOfFaces } from "./solid-of-faces";

/**
 * A flight as solid steps: risers, treads, its two sides and its back, closed underneath by the floor, which its foot follows on a
 * rake. Its top riser ends at the platform it lands on; with none it has a tread of its own there. Steps that the floor has
 * risen over are left out; nothing when the nosing has no length.
 */
export function stairSolid(plan: Pick<Plan, "platforms">, stair: Stair, stage: Pick<Stage, "rake">): Solid {
  const [first, second] = stair.nosing;
  const along = unit(subtract(second, first));
  const { id, steps, tread, riser, base } = stair;
  if (!along || !(steps > 0 && tread > 0 && riser > 0)) return { faces: [], lines: [] };
  const [bx, by] = leftOf(along);
  const ground = floorHeight(stage, first[1]) + base;
  const landed = landsOnPlatform(plan, stair, stage);
  const treads = landed ? steps - 1 : steps;
  const back = (landed ? steps - 1 : steps) * tread;
  const level = (step: number) => ground + step * riser;
  const place = ([x, y]: PlanPoint, v: number): PlanPoint => [x + bx * v, y + by * v];
  const at = (end: PlanPoint, v: number, z: number): StagePoint => {
    const [x, y] = place(end, v);
    return [x, y, z];
  };
  const floor = (end: PlanPoint, v: number) => floorHeight(stage, place(end, v)[1]) + base;
  const footPath = (from: readonly [PlanPoint, number], to: readonly [PlanPoint, number]): readonly StagePoint[] => {
    const [a, b] = [at(...from, floor(...from)), at(...to, floor(...to))];
    if (stage.rake === 0 || a[1] * b[1] >= 0) return [a, b];
    const share = a[1] / (a[1] - b[1]);
    return [a, [a[0] + (b[0] - a[0]) * share, 0, base], b];
  };
  const [ax, ay] = along;
  const outward = { downstairs: [-bx, -by, 0], up: [0, 0, 1], back: [bx, by, 0] } as const;

  const sketches: FaceSketch[] = [];
  const face = (name: string, outline: readonly StagePoint[], outer: FaceSketch["outer"]) =>
    sketches.push({ id: `${id}.${name}`, element: id, kind: "stair", outline, outer });
  for (let i = 1; i <= steps; i++) {
    const v = (i - 1) * tread;
    const low = i === 1 ? footPath([first, 0], [second, 0]) : [at(first, v, level(i - 1)), at(second, v, level(i - 1))];
    face(`riser.${i}`, [...low, at(second, v, level(i)), at(first, v, level(i))], outward.downstairs);
    if (i > treads) continue;
    const far = v + tread;
    const ring = [at(first, v, level(i)), at(second, v, level(i)), at(second, far, level(i)), at(first, far, level(i))];
    face(`tread.${i}`, ring, outward.up);
  }
  const side = (name: string, end: PlanPoint, outer: FaceSketch["outer"]) => {
    const profile = Array.from({ length: treads }, (_, i) => [
      at(end, i * tread, level(i + 1)),
      at(end, (i + 1) * tread, level(i + 1)),
    ]).flat();
    if (profile.length > 0) face(name, [...profile, ...[...footPath([end, 0], [end, back])].reverse()], outer);
  };
  side("side.start", first, [-ax, -ay, 0]);
  side("side.end", second, [ax, ay, 0]);
  if (treads > 0)
    face(
      "back",
      [...footPath([first, back], [second, back]), at(second, back, level(treads)), at(first, back, level(treads))],
      outward.back,
    );
  return solidOfFaces(sketches);
}
