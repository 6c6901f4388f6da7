import type { StagePoint } from "../../../stage/frame";
import { floorHeight, type Stage } from "../../../stage/stage";
import { furnitureCorners } from "../../furniture-corners";
import type { Furniture } from "../../plan";
import type { Footing } from "../prism";
import { fromTurned, type TurnedFrame } from "../turned-frame";

/**
 * The room a piece of furniture is built in: u to its right, v away from its front, both from its centre, and w up from
 * the highest of its four feet. Metres. What stands on the floor reaches down from w = 0 to wherever the floor is.
 */
export type Piece = {
  readonly id: string;
  readonly frame: TurnedFrame;
  readonly footing: Footing;
  /** Height of w = 0 in the stage frame. */
  readonly level: number;
  readonly width: number;
  readonly depth: number;
  /** From the highest foot to the level top; not above 0 where a raked floor rises through the top. */
  readonly height: number;
};

/** A point of a piece's own room, metres. */
export type PiecePoint = readonly [u: number, v: number, w: number];

/** A stretch of one of a piece's directions, metres. */
export type Stretch = readonly [from: number, to: number];

export function pieceOf(item: Furniture, stage: Pick<Stage, "rake">): Piece {
  const feet = furnitureCorners(item).map(([, y]) => floorHeight(stage, y) + item.base);
  const top = floorHeight(stage, item.at[1]) + item.base + item.height;
  const level = Math.max(...feet);
  return {
    id: item.id,
    frame: { at: item.at, turn: item.turn },
    footing: { rake: stage.rake, base: item.base },
    level,
    width: item.width,
    depth: item.depth,
    height: top - level,
  };
}

/** A point of a piece's room on the stage. */
export function onStage({ frame, level }: Piece, [u, v, w]: PiecePoint): StagePoint {
  const [x, y] = fromTurned(frame, u, v);
  return [x, y, level + w];
}
