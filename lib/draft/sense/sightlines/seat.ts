import { FOOT_M, INCH_M } from "../../../measure/length";
import type { PlanPoint } from "../../../stage/frame";
import type { Stage } from "../../../stage/stage";
import type { Viewer } from "../../../stage/viewer";

/** A seat of the house, by the eye of who sits in it: its place in the plan, and its height above the stage floor at the plaster line. */
export type Seat = {
  readonly id: string;
  readonly name: string;
  readonly at: PlanPoint;
  readonly eyeHeight: number;
};

/** Eye of a seated person over the floor: between the means of men, 1234 mm, and women, 1136 mm (ANSUR II, popliteal and sitting eye height). */
const SEATED_EYE_M = 1.185;
/** The rest is common practice, no source: a stage 3'-6" over the first row, which sits 8 ft before it and is as wide as the opening. */
const STAGE_OVER_HOUSE_M = 42 * INCH_M;
const FIRST_ROW_M = 8 * FOOT_M;
/** The last row lies 2.5 times the opening's width away and is half as wide again; the house rises 1 in 10 to it. */
const LAST_ROW = { away: 2.5, wide: 1.5 } as const;
const HOUSE_SLOPE = 0.1;
/** The balcony's front row lies 1.75 times the opening's width away, its eye a fifth of the opening's height over its head. */
const BALCONY = { away: 1.75, wide: 1.25, high: 1.2 } as const;

/**
 * Seats to try a set from: both ends of the first row, of the last row and of the balcony's front row. Starting points, worked
 * out from the opening and never nearer than the rows allow; the author sets the house's own. Left and right are the audience's.
 */
export function usualSeats(stage: Stage, viewer: Viewer): readonly Seat[] {
  const { width, height } = stage.opening;
  const first = stage.apron + FIRST_ROW_M;
  const last = Math.max(LAST_ROW.away * width, viewer.distance, first);
  const balcony = Math.max(BALCONY.away * width, first);
  const low = SEATED_EYE_M - STAGE_OVER_HOUSE_M;
  const rows = [
    { id: "first", name: "End of the first row", away: first, wide: 1, eyeHeight: low },
    {
      id: "last",
      name: "End of the last row",
      away: last,
      wide: LAST_ROW.wide,
      eyeHeight: low + (last - first) * HOUSE_SLOPE,
    },
    {
      id: "balcony",
      name: "End of the balcony's front row",
      away: balcony,
      wide: BALCONY.wide,
      eyeHeight: height * BALCONY.high,
    },
  ];
  return rows.flatMap(({ id, name, away, wide, eyeHeight }) =>
    ([-1, 1] as const).map((side): Seat => {
      const hand = side < 0 ? "left" : "right";
      return { id: `${id}-${hand}`, name: `${name}, house ${hand}`, at: [(side * wide * width) / 2, -away], eyeHeight };
    }),
  );
}
