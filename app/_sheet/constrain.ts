import type { Bounds } from "./view";

export const COMPASS = ["left", "right", "up", "down"] as const;
export type Compass = (typeof COMPASS)[number];

/** How far one press of an arrow moves a mark, millimetres of paper. */
export const NUDGE_STEPS_MM = { fine: 0.2, plain: 1, coarse: 5 } as const;
export type NudgeStep = keyof typeof NUDGE_STEPS_MM;

const DIRECTIONS: Readonly<Record<Compass, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  up: [0, 1],
  down: [0, -1],
};

/**
 * Where a mark may stand: on its drawing, within the bounds; the same rule for pointer, touch and keys. It knows nothing
 * of where the mark should be, so it can draw it nowhere.
 */
export function constrain(at: readonly [number, number], bounds: Bounds): readonly [number, number] {
  return [within(at[0], bounds.left, bounds.right), within(at[1], bounds.bottom, bounds.top)];
}

/** One step of a mark, metres of the drawing. */
export function nudge(
  at: readonly [number, number],
  toward: Compass,
  stepMm: number,
  scaleRatio: number,
  bounds: Bounds,
): readonly [number, number] {
  const step = (stepMm * scaleRatio) / 1000;
  const [across, up] = DIRECTIONS[toward];
  return constrain([at[0] + across * step, at[1] + up * step], bounds);
}

function within(value: number, least: number, most: number): number {
  return Number.isFinite(value) ? Math.min(Math.max(value, least), most) : (least + most) / 2;
}
