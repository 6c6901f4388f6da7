import type { Stage } from "../../stage/stage";
import { archHead } from "../arch-head";
import type { Opening } from "../plan";
import { curvePieces } from "./curve-pieces";
import { openingGround, type WallSpace } from "./wall-space";

/**
 * The rim of an opening on its wall's face, from the foot of the start jamb over the head to the foot of the end jamb, in
 * metres along the wall and up. Where it stands on the floor its feet are left out: they follow the floor, whichever face of
 * the wall is meant.
 */
export type OpeningRim = {
  readonly opening: Opening;
  readonly points: readonly RimPoint[];
  readonly start: number;
  readonly end: number;
  /** Height of the sill; null where the opening stands on the floor. */
  readonly sill: number | null;
  readonly head: number;
  /** Its head is the wall's top: nothing is left above it. */
  readonly open: boolean;
};

export type RimPoint = readonly [u: number, z: number];

/** What is thinner than this is not there, metres. */
const LEAST_M = 1e-6;

/** The openings of a wall that can be cut, in order along it: inside the wall, above its foot, and none over another. */
export function openingRims(space: WallSpace, stage: Pick<Stage, "rake">): readonly OpeningRim[] {
  const rims = [...space.wall.openings]
    .sort((a, b) => a.at - b.at)
    .flatMap((opening) => openingRim(space, stage, opening) ?? []);
  return rims.filter((rim, i) => !rims.slice(0, i).some((other) => overlap(rim, other)));
}

function openingRim(space: WallSpace, stage: Pick<Stage, "rake">, opening: Opening): OpeningRim | null {
  const start = Math.max(0, opening.at);
  // The wall's own end where the opening ends with it, so that no sliver is left beside it.
  const right = opening.at + opening.width;
  const end = right > space.line.length - LEAST_M ? space.line.length : right;
  const ground = openingGround(space, stage, opening);
  const onFloor = opening.sill === 0;
  const feet = [space.foot(start, 0), space.foot(end, 0)] as const;
  const low = onFloor ? Math.max(...feet) : ground + opening.sill;
  const open = ground + opening.head > space.top - LEAST_M;
  const head = open ? space.top : ground + opening.head;
  if (!(end - start > LEAST_M && head - low > LEAST_M)) return null;
  const sill = onFloor ? null : low;
  const upper =
    opening.kind === "arch"
      ? archPoints(start, end, low, head)
      : ([
          [start, head],
          [end, head],
        ] as const);
  const points: readonly RimPoint[] = sill === null ? upper : [[start, sill], ...upper, [end, sill]];
  return { opening, points, start, end, sill, head, open };
}

function archPoints(start: number, end: number, low: number, crown: number): readonly RimPoint[] {
  const width = end - start;
  const { curve } = archHead({ width }, low, crown, curvePieces(Math.max(width / 2, crown - low)) / 2);
  return curve.map(([u, z]) => [start + u, z]);
}

/** Openings one over the other are both cut; openings into each other are not both possible. */
function overlap(a: OpeningRim, b: OpeningRim): boolean {
  const apart =
    a.end <= b.start || b.end <= a.start || a.head <= (b.sill ?? -Infinity) || b.head <= (a.sill ?? -Infinity);
  return !apart;
}
