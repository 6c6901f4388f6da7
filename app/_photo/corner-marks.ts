import type { FourPoints, OwnLines } from "./worker/messages";

type Place = readonly [number, number];

/** The corners of the opening in the order they are set, and the student's own two lines. */
export const CORNERS = ["upper left", "upper right", "lower right", "lower left"] as const;
export const OWN_LINES = ["your horizon", "the foot of your back wall"] as const;
export type Grip = (typeof CORNERS)[number] | (typeof OWN_LINES)[number];

/** The photograph is laid on the board so wide, in the board's millimetres: an arrow's step is then as fine as on a sheet. */
const BOARD_MM = 250;

/** Where the handles stand before they are dragged, shares of the photograph from its upper left corner. */
const START: Readonly<Record<Grip, Place>> = {
  "upper left": [0.2, 0.25],
  "upper right": [0.8, 0.25],
  "lower right": [0.8, 0.7],
  "lower left": [0.2, 0.7],
  "your horizon": [0.5, 0.5],
  "the foot of your back wall": [0.5, 0.6],
};

export type Grips = Readonly<Record<Grip, Place>>;

/** The photograph's size on the board, millimetres, and how many of its own pixels are one. */
export type BoardSize = { readonly width: number; readonly height: number; readonly pixelsPerMm: number };

export function boardSize({
  width,
  height,
  scale,
}: {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
}): BoardSize {
  return { width: BOARD_MM, height: (BOARD_MM * height) / width, pixelsPerMm: (width * scale) / BOARD_MM };
}

/** The handles of a photograph before anything is dragged, on the board: right and up, so that down is below nothing. */
export function startGrips({ width, height }: BoardSize): Grips {
  const places = Object.entries(START).map(([grip, [right, down]]) => [grip, [right * width, -down * height]]);
  return Object.fromEntries(places) as Grips;
}

/** The handles in the photograph's own pixels. */
export function photoPoints(
  grips: Grips,
  { pixelsPerMm }: BoardSize,
): { readonly corners: FourPoints; readonly ownLines: OwnLines } {
  const at = (grip: Grip): FourPoints[number] => [grips[grip][0] * pixelsPerMm, -grips[grip][1] * pixelsPerMm];
  const [a, b, c, d] = CORNERS;
  return {
    corners: [at(a), at(b), at(c), at(d)],
    ownLines: { horizon: at("your horizon"), backWallFoot: at("the foot of your back wall") },
  };
}
