import { type Dice, throwDice } from "./dice";

/** How a photograph is taken, and of what hand's drawing. All of it is test equipment: lengths of paper in mm, of photograph in pixels. */
export type Conditions = {
  readonly megapixels: number;
  readonly frame: "portrait" | "landscape";
  /** From straight above, and which way the camera leans: degrees clockwise from the sheet's right. */
  readonly tiltDeg: number;
  readonly leanDeg: number;
  /** How the camera is turned about its own axis, degrees. */
  readonly turnDeg: number;
  /** Focal length in diagonals of the photograph: 0.6 is a telephone's usual lens. */
  readonly focal: number;
  /** The share of the frame that the paper fills. */
  readonly fill: number;
  /** How far the paper's middle lies from the frame's, in shares of the frame; it is cut off where it goes over the edge. */
  readonly off: readonly [right: number, down: number];
  /** Radial distortion, as `PageFit` has it. */
  readonly k1: number;
  /** How high the paper's edge curls over its middle, millimetres, and the direction that stays straight, degrees. */
  readonly curlMm: number;
  readonly curlDeg: number;
  /** Light of the dimmest part of the frame over that of the brightest, 0 to 1, and where the dim side lies, degrees. */
  readonly evenness: number;
  readonly dimDeg: number;
  /** Light lost in the frame's corners, 0 to 1. */
  readonly vignette: number;
  /** What light is left in the shadow of the hand that holds the camera; 1 for no shadow. */
  readonly shadow: number;
  /** How bright white paper comes out where it is brightest, 0 to 1. */
  readonly exposure: number;
  readonly blurPx: number;
  readonly motionPx: number;
  readonly motionDeg: number;
  /** Sensor noise at white, in levels of 255. */
  readonly noise: number;
  readonly jpegQuality: number;
  /** The marker that a thumb lies on. */
  readonly thumbOn: number | null;
  /** How the JPEG is stored, by its EXIF orientation: 1 is upright; 3, 6 and 8 have to be turned. */
  readonly orientation: 1 | 3 | 6 | 8;
  readonly pencil: Pencil;
};

export type Pencil = {
  /** How dark a stroke is at its darkest, 0 to 1. */
  readonly darkness: number;
  readonly widthMm: number;
  /** Sideways wandering of a line, millimetres, and how far its ends miss their points. */
  readonly wobbleMm: number;
  readonly endMm: number;
  /** How far lines may run past a corner, millimetres. */
  readonly overshootMm: number;
  /** Shares of lines drawn twice or three times, and rubbed out beside the final line. */
  readonly restated: number;
  readonly erased: number;
  /** Patches of hatching, letters beside points, smudges of the hand. */
  readonly hatching: number;
  readonly lettering: number;
  readonly smudges: number;
};

export const CLEAR_PENCIL: Pencil = {
  darkness: 0.75,
  widthMm: 0.45,
  wobbleMm: 0.1,
  endMm: 0.1,
  overshootMm: 0.8,
  restated: 0,
  erased: 0,
  hatching: 0,
  lettering: 0,
  smudges: 0,
};

/** A hard pencil held lightly. */
export const FAINT_PENCIL: Pencil = { ...CLEAR_PENCIL, darkness: 0.28, widthMm: 0.4 };

/** A sheet lying flat in good light, photographed from above with some care. */
export const GOOD_PHOTOGRAPH: Conditions = {
  megapixels: 4,
  frame: "portrait",
  tiltDeg: 5,
  leanDeg: 80,
  turnDeg: 2,
  focal: 0.6,
  fill: 0.92,
  off: [0, 0],
  k1: 0,
  curlMm: 0,
  curlDeg: 0,
  evenness: 0.85,
  dimDeg: 30,
  vignette: 0.15,
  shadow: 1,
  exposure: 0.85,
  blurPx: 0.6,
  motionPx: 0,
  motionDeg: 0,
  noise: 2,
  jpegQuality: 88,
  thumbOn: null,
  orientation: 1,
  pencil: CLEAR_PENCIL,
};

export type Difficulty = {
  readonly megapixels: number;
  readonly faint: boolean;
  /** Whether the paper lies flat. */
  readonly flat: boolean;
};

/** A photograph as they come: each condition drawn from the seed, up to the worst that a student would still hand in. */
export function conditionsBySeed(seed: number, { megapixels, faint, flat }: Difficulty): Conditions {
  const dice = throwDice(seed, "conditions");
  const frame = dice.chance(0.8) ? "portrait" : "landscape";
  const sideways = frame === "landscape";
  const dark = faint ? dice.between(0.2, 0.35) : dice.between(0.55, 0.85);
  const size = Math.sqrt(megapixels / 12);
  return {
    megapixels,
    frame,
    tiltDeg: dice.between(0, 35) * Math.sqrt(dice.next()),
    leanDeg: dice.between(0, 360),
    turnDeg: (sideways ? dice.pick([90, -90]) : dice.pick([0, 0, 0, 180])) + dice.normal(6),
    focal: dice.between(0.55, 0.8),
    fill: dice.between(0.82, 0.96),
    off: [dice.between(-0.015, 0.015), dice.between(-0.015, 0.015)],
    k1: dice.between(-0.025, 0.025),
    curlMm: flat ? 0 : dice.between(1, 6),
    curlDeg: dice.between(-20, 20) + dice.pick([0, 90]),
    evenness: dice.between(0.5, 0.95),
    dimDeg: dice.between(0, 360),
    vignette: dice.between(0.05, 0.35),
    shadow: dice.chance(0.4) ? dice.between(0.55, 0.85) : 1,
    exposure: dice.between(0.65, 0.95),
    // A blur of the hand and the lens belongs to the picture, whatever its number of pixels.
    blurPx: size * dice.between(0.6, 1.5),
    motionPx: dice.chance(0.3) ? size * dice.between(1, 4) : 0,
    motionDeg: dice.between(0, 180),
    noise: dice.between(1.5, 5),
    jpegQuality: Math.round(dice.between(60, 95)),
    thumbOn: dice.chance(0.2) ? dice.pick([0, 1, 2, 3, 4, 5, 6, 7]) : null,
    orientation: dice.pick([1, 1, 3, 6, 8] as const),
    pencil: pencilBySeed(dice, dark),
  };
}

function pencilBySeed(dice: Dice, darkness: number): Pencil {
  return {
    darkness,
    widthMm: dice.between(0.35, 0.6),
    wobbleMm: dice.between(0.05, 0.2),
    endMm: dice.between(0.05, 0.15),
    overshootMm: dice.between(0, 1.2),
    restated: dice.pick([0, 0, 0.2, 0.4]),
    erased: dice.pick([0, 0, 0.2, 0.4]),
    hatching: dice.pick([0, 0, 1, 2]),
    lettering: dice.pick([0, 0, 0.5, 1]),
    smudges: dice.pick([0, 0, 1, 2]),
  };
}
