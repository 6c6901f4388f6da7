import type { StagePoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import type { Opening } from "../plan";
import { type OpeningRim, openingRims } from "./opening-rim";
import type { Solid } from "./solid";
import { solidOfFaces } from "./solid-of-faces";
import type { WallSpace } from "./wall-space";

/** Widths of a sash's frame and of its glazing bars, metres; common practice, no source. */
const FRAME_M = 0.055;
const BAR_M = 0.035;
/** A sash takes up no more than this share of its opening with its frame and bar. */
const MOST_SHARE = 0.4;
/** The board under a window, metres: how far it stands out from the wall and past the jambs, and how thick it is. */
const BOARD = { out: 0.06, past: 0.06, thick: 0.04 } as const;

/**
 * What fills a window: a sash with a cross of bars through its middle, open between them, in the middle of the wall's thickness;
 * and a board under it on the onstage face, its top level with the sill.
 */
export function windowSash(space: WallSpace, stage: Pick<Stage, "rake">, opening: Opening): readonly Solid[] {
  const rim = openingRims(space, stage).find((one) => one.opening === opening);
  if (!rim) return [];
  const low = rim.sill ?? Math.max(space.foot(rim.start, 0), space.foot(rim.end, 0));
  return [sash(space, rim, low), ...(rim.sill === null ? [] : [board(space, rim, rim.sill)])];
}

function sash(space: WallSpace, { opening, start, end, head }: OpeningRim, low: number): Solid {
  const { wall } = space;
  const v = wall.thickness / 2;
  const [width, height] = [end - start, head - low];
  const size = Math.min(1, (MOST_SHARE * Math.min(width, height)) / (2 * FRAME_M + BAR_M));
  const [frame, bar] = [FRAME_M * size, BAR_M * size];
  const rect = (u0: number, u1: number, z0: number, z1: number): readonly StagePoint[] => [
    space.at(u0, v, z0),
    space.at(u1, v, z0),
    space.at(u1, v, z1),
    space.at(u0, v, z1),
  ];
  const lights = (from: number, to: number) =>
    [
      [from + frame, (from + to - bar) / 2],
      [(from + to + bar) / 2, to - frame],
    ] as const;
  const holes = lights(start, end).flatMap(([u0, u1]) => lights(low, head).map(([z0, z1]) => rect(u0, u1, z0, z1)));
  const [x, y] = space.line.offstage;
  return solidOfFaces([
    {
      id: `${wall.id}.${opening.id}.sash`,
      element: wall.id,
      kind: "leaf",
      outline: rect(start, end, low, head),
      holes,
      outer: [-x, -y, 0],
    },
  ]);
}

function board(space: WallSpace, { opening, start, end }: OpeningRim, sill: number): Solid {
  const { wall, line } = space;
  const [u0, u1] = [Math.max(0, start - BOARD.past), Math.min(line.length, end + BOARD.past)];
  const low = Math.max(sill - BOARD.thick, space.foot(u0, 0), space.foot(u1, 0));
  if (!(low < sill)) return { faces: [], lines: [] };
  const at = (u: number, v: number, z: number) => space.at(u, v, z);
  const id = `${wall.id}.${opening.id}.board`;
  const part = { element: wall.id, kind: "reveal" } as const;
  const [x, y] = line.offstage;
  const [ax, ay] = line.along;
  const out = -BOARD.out;
  return solidOfFaces([
    {
      ...part,
      id: `${id}.top`,
      outline: [at(u0, 0, sill), at(u1, 0, sill), at(u1, out, sill), at(u0, out, sill)],
      outer: [0, 0, 1],
    },
    {
      ...part,
      id: `${id}.front`,
      outline: [at(u0, out, low), at(u1, out, low), at(u1, out, sill), at(u0, out, sill)],
      outer: [-x, -y, 0],
    },
    {
      ...part,
      id: `${id}.under`,
      outline: [at(u0, 0, low), at(u1, 0, low), at(u1, out, low), at(u0, out, low)],
      outer: [0, 0, -1],
    },
    {
      ...part,
      id: `${id}.start`,
      outline: [at(u0, 0, low), at(u0, out, low), at(u0, out, sill), at(u0, 0, sill)],
      outer: [-ax, -ay, 0],
    },
    {
      ...part,
      id: `${id}.end`,
      outline: [at(u1, 0, low), at(u1, out, low), at(u1, out, sill), at(u1, 0, sill)],
      outer: [ax, ay, 0],
    },
  ]);
}
