import type { Unit } from "../exercise/exercise";
import type { LengthUnits } from "../measure/length";
import { parseScale } from "../measure/scale";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";
import type { Dice } from "./dice";
import type { Demands } from "./levels";
import { type Ruler, takeRuler } from "./ruler";

/** What stands before there is a set: the stage, the eye, the sheet's scale and the author's ruler. */
export type Frame = {
  readonly ruler: Ruler;
  readonly scale: string;
  readonly scaleRatio: number;
  readonly stage: Stage;
  readonly viewer: Viewer;
};

type Stock = {
  readonly widths: readonly number[];
  readonly heights: readonly number[];
  readonly depths: readonly number[];
};

/** Openings and depths of small and middling houses, feet; of the metric ones every width and depth is a whole metre or a half. */
const STOCK: Readonly<Record<LengthUnits, Stock>> = {
  "ft-in": { widths: [28, 30, 32, 34, 36], heights: [15, 16, 17, 18], depths: [22, 24, 26, 28, 30] },
  m: { widths: [80 / 3, 30, 100 / 3], heights: [50 / 3, 55 / 3], depths: [70 / 3, 80 / 3, 30] },
};

/** Small things want a larger drawing; the sheet stays on the board all the same. */
const SCALES: Readonly<Record<LengthUnits, { readonly usual: readonly string[]; readonly fine: string }>> = {
  "ft-in": { usual: ["1/4in=1ft", "3/8in=1ft"], fine: "3/8in=1ft" },
  m: { usual: ["1:50"], fine: "1:25" },
};
const FINE_UNITS: readonly Unit[] = ["openings", "furniture", "levels", "sets"];
/** At the larger scale only the smaller openings fit the board, feet. */
const WIDEST_FINE_FT = 32;

/** Tangent of 30 degrees: the opening is kept within a cone of 60 degrees about the line of sight. */
const CONE_TANGENT = 1 / Math.sqrt(3);
/** The eye's least distance, in widths of the opening. */
const NEAREST_WIDTHS = 0.9;
/** How far behind the nearest place the eye may stand, feet. */
const STANDS_BACK_FT = 6;

/** Historic rakes run from 1:18 to 1:48; these are round ones among them, steep where the rake is what is practised. */
const RAKES = [20, 24, 30, 36, 48] as const;
const STEEP_RAKES = [18, 20] as const;

/** Chooses stage, eye and scale for a unit's demands. */
export function chooseFrame(dice: Dice, unit: Unit, demands: Demands): Frame {
  const units = dice.pick(["ft-in", "m"] as const);
  const ruler = takeRuler(units);
  const fine = FINE_UNITS.includes(unit);
  const stock = STOCK[units];
  const width = dice.pick(stock.widths.filter((feet) => !fine || feet <= WIDEST_FINE_FT));
  const scale = fine ? SCALES[units].fine : dice.pick(SCALES[units].usual);
  const stage: Stage = {
    opening: { width: ruler.place(width), height: ruler.place(dice.pick(stock.heights)) },
    depth: ruler.place(dice.pick(stock.depths)),
    apron: ruler.place(unit === "stage" ? dice.whole(5, 6) : dice.whole(3, 5)),
    rake: dice.chance(demands.raked) ? 1 / dice.pick(unit === "stage" ? STEEP_RAKES : RAKES) : 0,
  };
  const offset = dice.chance(demands.offCentre) ? dice.side() * dice.whole(2, Math.floor(width / 8)) : 0;
  const sideways = { eyeHeight: ruler.place(dice.half(...demands.horizon)), offset: ruler.place(offset) };
  const nearest = Math.max(nearestEye(stage, sideways), NEAREST_WIDTHS * stage.opening.width);
  const distance = ruler.place(Math.ceil(ruler.feet(nearest) + 1 / 3) + dice.whole(0, STANDS_BACK_FT));
  const scaleRatio = parseScale(scale) as number;
  return { ruler, scale, scaleRatio, stage, viewer: { ...sideways, distance } };
}

/** The nearest an eye may stand for the whole opening to lie within the cone, metres: the farthest corner decides. */
function nearestEye({ opening }: Pick<Stage, "opening">, eye: Pick<Viewer, "eyeHeight" | "offset">): number {
  const across = opening.width / 2 + Math.abs(eye.offset);
  const up = Math.max(eye.eyeHeight, opening.height - eye.eyeHeight);
  return Math.sqrt(across * across + up * up) / CONE_TANGENT;
}
