import type { PlaneBox } from "../clear-lettering";

/** White paper round a drawing, in the unit its letters are measured in (millimetres of paper, or what stands for them). */
export type Margins = { readonly side: number; readonly top: number; readonly foot: number };

/** A drawing fitted into a room: how large a metre of it is, in the room's own unit, and the scale its letters are laid out for. */
export type Fitted = {
  readonly perMetre: number;
  /** Stage metres to paper metres at which one "millimetre" of lettering is `letterUnit` of the room. */
  readonly scaleRatio: number;
  /** What of the drawing the room shows, metres: the box, its margins, and what is left over, shared on both sides. */
  readonly window: PlaneBox;
};

export type FitOptions = {
  readonly width: number;
  readonly height: number;
  /** What a millimetre of lettering is in the room's unit: 1 on paper, so many pixels on a screen. */
  readonly letterUnit: number;
  /** At most this large, as where two drawings share one scale. */
  readonly mostPerMetre?: number;
};

/** Never zero, so that a room not yet laid out has a drawing all the same. */
const LEAST_PER_METRE = 0.1;

/**
 * The largest size at which a box of a drawing fits a room with its margins. The margins grow with the letters and not with
 * the drawing, so both are found in one step. A room too small for its margins gets a drawing of the least size.
 */
export function fitDrawing([left, bottom, right, top]: PlaneBox, margins: Margins, options: FitOptions): Fitted {
  const { width, height, letterUnit, mostPerMetre = Number.POSITIVE_INFINITY } = options;
  const across = (width - 2 * margins.side * letterUnit) / (right - left);
  const up = (height - (margins.top + margins.foot) * letterUnit) / (top - bottom);
  const perMetre = Math.max(Math.min(across, up, mostPerMetre), LEAST_PER_METRE);
  const centre = (left + right) / 2;
  const half = width / perMetre / 2;
  const foot = (margins.foot * letterUnit) / perMetre;
  const spare = height / perMetre - (top - bottom) - ((margins.top + margins.foot) * letterUnit) / perMetre;
  const low = bottom - foot - spare / 2;
  return {
    perMetre,
    scaleRatio: (1000 * letterUnit) / perMetre,
    window: [centre - half, low, centre + half, low + height / perMetre],
  };
}
