import { cross, distance, subtract, unit } from "../../../geometry/vector";
import { type Affine, chainAffine } from "../affine";
import { type PlaceFrame, type PointedLine, placeFrame } from "../place/place-frame";

/** What is pointed at on a photograph of a plan, its pixels right and up from its lower left corner; `length` in metres. */
export type TracePlaces = {
  readonly centreLine: PointedLine;
  readonly plasterLine: PointedLine;
  readonly size: PointedLine;
  readonly length: number;
};

export type TraceFrame =
  | {
      readonly ok: true;
      /** From pixels right and up to metres of the plan. */
      readonly toPlan: Affine;
      readonly metresPerPixel: number;
      /** How far the pointed centre line leans from square to the plaster line, radians: above 0 toward stage left as it goes upstage. */
      readonly lean: number;
      /** How much of that may come from pointing alone, radians. */
      readonly byPointing: number;
      /** How wrong the scale may be by pointing alone, a share of it. */
      readonly scaleWithin: number;
    }
  | {
      readonly ok: false;
      readonly say: string;
      /** The lines are so far out of square that the photograph was taken at a slant, or the places are on other lines. */
      readonly slant: boolean;
    };

/** A place is pointed at no nearer than this, pixels of the photograph: the lines of a plan are about as wide. */
const POINTED_PX = 2;
/** Lines out of square by more than this are not laid under, radians: 20' upstage that would be over a foot. */
const MOST_LEAN = (3 * Math.PI) / 180;
const DEGREES = 180 / Math.PI;

/**
 * Where a photograph lies under a plan. The plaster line's places come out on y = 0, the origin is where the two lines meet, and
 * the two places of the size come out `length` apart; nothing is stretched or sheared, so that a centre line which is not square
 * leans. What decides nothing, and lines that no pointing puts so far out of square, are told in a sentence.
 */
export function traceFrame({ centreLine, plasterLine, size, length }: TracePlaces): TraceFrame {
  const upstage = unit(subtract(centreLine[1], centreLine[0]));
  const along = unit(subtract(plasterLine[1], plasterLine[0]));
  const lean = upstage && along ? leanOf(upstage, along) : 0;
  if (Math.abs(lean) > MOST_LEAN)
    return {
      ok: false,
      slant: true,
      say:
        `The two lines are ${Math.round(Math.abs(lean) * DEGREES)} degrees out of square, and on a stage they are square. ` +
        "Either a place is not on its line, and is set again, or the photograph was taken at a slant, and is straightened first.",
    };
  const scale = { by: "length", from: size[0], to: size[1], length } as const;
  const frame: PlaceFrame = placeFrame({ kind: "unknown", likely: [] }, scale, centreLine, plasterLine);
  if (!frame.ok) return { ok: false, slant: false, say: frame.say };
  return {
    ok: true,
    toPlan: frame.toPlan,
    metresPerPixel: frame.metres,
    lean,
    byPointing: turnByPointing(centreLine) + turnByPointing(plasterLine),
    scaleWithin: (2 * POINTED_PX) / distance(...size),
  };
}

/** From pixels as a picture has them, right and down from its upper left corner, to metres of the plan. */
export function pixelsToPlan(toPlan: Affine, heightPx: number): Affine {
  return chainAffine(toPlan, [1, 0, 0, -1, 0, heightPx]);
}

/** Radians from square, signed as `TraceFrame` has it; the plaster line may be pointed at from either side. */
function leanOf(upstage: readonly [number, number], along: readonly [number, number]): number {
  const across = cross(along, upstage);
  const toward = along[0] * upstage[0] + along[1] * upstage[1];
  return Math.atan2(across < 0 ? -toward : toward, Math.abs(across));
}

/** How far a line turns when its two ends are pointed at to opposite sides of it. */
function turnByPointing(line: PointedLine): number {
  return Math.atan2(2 * POINTED_PX, distance(...line));
}
