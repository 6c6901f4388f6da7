import type { Bounds } from "@/app/_sheet/view";
import { tenThousandths, toPaper } from "@/app/_sheet/view";
import type { BroughtPoint } from "@/lib/draft/bring/brought";
import type { BroughtBounds } from "@/lib/draft/bring/brought-bounds";

/** The longer side of what is shown, metres of the board: whatever its own unit is, it is looked at as a plan of this size. */
const LONGER_SIDE_M = 10;
/** What the board is drawn at; with the size above it is some 20 cm of paper. */
export const BOARD_RATIO = 50;
/** Room round what is shown, as a share of its longer side. */
const ROOM = 0.04;

/** Where something lies that is pointed at: from its own unit and frame, y up, to metres of the board about its middle. */
export type Board = {
  readonly middle: BroughtPoint;
  /** Metres of the board in one of its own units. */
  readonly metres: number;
  readonly bounds: Bounds;
};

type BoardPoint = readonly [x: number, y: number];

/** Lays out what is between two corners. What has no size at all is taken for one unit wide. */
export function layBoard({ least, most }: BroughtBounds): Board {
  const longer = Math.max(most[0] - least[0], most[1] - least[1]) || 1;
  const metres = LONGER_SIDE_M / longer;
  const [across, up] = [((most[0] - least[0]) / 2) * metres, ((most[1] - least[1]) / 2) * metres];
  const room = ROOM * LONGER_SIDE_M;
  return {
    middle: [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2],
    metres,
    bounds: { left: -across - room, right: across + room, bottom: -up - room, top: up + room },
  };
}

export function toBoard({ middle, metres }: Board, at: BroughtPoint): BoardPoint {
  return [(at[0] - middle[0]) * metres, (at[1] - middle[1]) * metres];
}

export function fromBoard({ middle, metres }: Board, at: BoardPoint): BroughtPoint {
  return [middle[0] + at[0] / metres, middle[1] + at[1] / metres];
}

/** Own coordinates, y up, to those of the drawing's group, y down. */
export function toSheet(board: Board, at: BroughtPoint): readonly [x: number, y: number] {
  return toPaper(toBoard(board, at), BOARD_RATIO);
}

/** A share of the way across and up what is shown, in words for readers of the screen. */
export function sayShare(board: Board, at: BroughtPoint): string {
  const [x, y] = toBoard(board, at);
  const { left, right, bottom, top } = board.bounds;
  const percent = (value: number, from: number, to: number) =>
    Math.round(tenThousandths((value - from) / (to - from)) * 100);
  return `${percent(x, left, right)} percent across, ${percent(y, bottom, top)} percent up.`;
}
