import { missInSigmas } from "./drawn-line";
import type { LevelGroup } from "./fit-horizon";
import { fitMeeting } from "./fit-meeting";
import type { DrawingLine, FloorRectangle } from "./marked-drawing";

/** How a floor rectangle is drawn. */
export type RectangleView =
  /** Two of its sides run along the plaster line, drawn level; `firstIsAcross` says whether its first side is one of them. */
  | { readonly kind: "one-point"; readonly firstIsAcross: boolean }
  /** It is turned: both pairs of sides run away from the viewer. */
  | { readonly kind: "two-point" }
  /** Its corners are not in order round it, or three of them stand in line. */
  | { readonly kind: "no outline" }
  /** No pair of its sides meets: it is drawn as on a plan. */
  | { readonly kind: "not foreshortened" };

/** Sides are level when they miss that by fewer sigmas than this: those of a turned sheet or rectangle miss it by more. */
const LEVEL_SIGMAS = 3;

/** A corner's turn of less than this sine is none. */
const FLAT_SINE = 1e-3;

export type Pairs = readonly [first: LevelGroup, second: LevelGroup];

/** The two pairs of opposite sides of a rectangle, the pair of its first side first, and where each meets; that is taken from `kept` where it is known. */
export function pairsOfSides({ corners: [a, b, c, d] }: FloorRectangle, sigma: number, kept?: Pairs | null): Pairs {
  const pair = (one: DrawingLine, other: DrawingLine, known: LevelGroup | undefined): LevelGroup => {
    const lines = [
      { ends: one, sigma },
      { ends: other, sigma },
    ];
    return { lines, meeting: known?.meeting ?? fitMeeting(lines) };
  };
  return [pair([a, b], [d, c], kept?.[0]), pair([b, c], [a, d], kept?.[1])];
}

/** How a rectangle of the floor is drawn, by where its pairs of sides meet. */
export function readRectangle(rectangle: FloorRectangle, [first, second]: Pairs): RectangleView {
  if (!isOutline(rectangle)) return { kind: "no outline" };
  const isLevel = ({ lines }: LevelGroup) =>
    lines.every((side) => Math.abs(missInSigmas(side, [1, 0, 0])) < LEVEL_SIGMAS);
  // Sides drawn level were meant level, though a slip may let them meet somewhere far away.
  const [firstIsAcross, secondIsAcross] = [isLevel(first), isLevel(second)];
  if (firstIsAcross !== secondIsAcross && (firstIsAcross ? second : first).meeting.kind === "point")
    return { kind: "one-point", firstIsAcross };
  const meets = [first, second].some(({ meeting }) => meeting.kind === "point");
  return meets ? { kind: "two-point" } : { kind: "not foreshortened" };
}

/** Whether the corners run round one way, as the picture of any rectangle before the eye does. */
function isOutline({ corners }: FloorRectangle): boolean {
  const turns = corners.map((corner, i) => {
    const next = corners[(i + 1) % 4] as typeof corner;
    const last = corners[(i + 2) % 4] as typeof corner;
    const [ux, uy, vx, vy] = [next[0] - corner[0], next[1] - corner[1], last[0] - next[0], last[1] - next[1]];
    return (ux * vy - uy * vx) / (Math.hypot(ux, uy) * Math.hypot(vx, vy));
  });
  return turns.every((turn) => turn > FLAT_SINE) || turns.every((turn) => turn < -FLAT_SINE);
}
