import { doorHinges } from "../../../plan/door-hinges";
import type { Opening, Wall } from "../../../plan/plan";
import { openingJambs, type WallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import { floorHeight, type Stage } from "../../../stage/stage";
import type { Body } from "../bodies";

/**
 * A door's leaf: it hangs at `pivot` on the face it swings toward, shut it lies along `shut` and open at a right angle along
 * `open`, both unit directions of the plan; from its foot to its head.
 */
export type Leaf = {
  readonly pivot: PlanPoint;
  readonly shut: PlanPoint;
  readonly open: PlanPoint;
  readonly width: number;
  readonly low: number;
  readonly high: number;
};

/** The leaves of a door; none of any other opening. */
export function leavesOf(wall: Wall, line: WallLine, opening: Opening, stage: Pick<Stage, "rake">): readonly Leaf[] {
  if (opening.kind !== "door") return [];
  const jambs = openingJambs(line, opening);
  const ground = floorHeight(stage, jambs.middle[1]) + wall.base;
  const out = opening.swing === "offstage" ? 1 : -1;
  const face = opening.swing === "offstage" ? wall.thickness : 0;
  const open: PlanPoint = [line.offstage[0] * out, line.offstage[1] * out];
  return doorHinges(line, opening).map((hinge): Leaf => {
    const along = hinge === "start" ? 1 : -1;
    const [x, y] = jambs[hinge];
    return {
      pivot: [x + line.offstage[0] * face, y + line.offstage[1] * face],
      shut: [line.along[0] * along, line.along[1] * along],
      open,
      width: opening.width / opening.leaves,
      low: ground + opening.sill,
      high: ground + opening.head,
    };
  });
}

/** The sweep's arc is drawn by this many straight pieces: half a millimetre from it for a leaf of 1 m. */
const ARC_PIECES = 24;

/** What a leaf sweeps over from shut to open at a right angle. */
export function sweepOf({ pivot, shut, open, width }: Leaf): Body["outline"] {
  const arc = Array.from({ length: ARC_PIECES + 1 }, (_, i): PlanPoint => {
    const angle = (Math.PI / 2) * (i / ARC_PIECES);
    const [u, v] = [width * Math.cos(angle), width * Math.sin(angle)];
    return [pivot[0] + shut[0] * u + open[0] * v, pivot[1] + shut[1] * u + open[1] * v];
  });
  return [pivot, ...arc];
}
