import type { PhotoPoint } from "@/lib/photo/pixels";
import type { Camera } from "./camera";
import type { Conditions } from "./conditions";
import type { Dice } from "./dice";

/** How much of the light reaches the sensor at a place of the photograph, 0 to 1. */
export type LightField = (at: PhotoPoint) => number;

/** Width of the shadow's hand and of its soft edge, in shares of the photograph's short side. */
const HAND = 0.16;
const SOFT = 0.035;

/** Uneven room light, the lens's loss towards the corners, and the shadow of the hand that holds the camera. */
export function lightField({ width, height }: Camera, conditions: Conditions, dice: Dice): LightField {
  const { evenness, dimDeg, vignette, shadow } = conditions;
  const half = Math.hypot(width, height) / 2;
  const dim = (dimDeg * Math.PI) / 180;
  const short = Math.min(width, height);
  // The arm comes in from an edge, and ends in the picture.
  const enters = dice.between(0, 2 * Math.PI);
  const tip = [width * dice.between(0.3, 0.7), height * dice.between(0.3, 0.7)] as const;
  const root = [tip[0] + 2 * half * Math.cos(enters), tip[1] + 2 * half * Math.sin(enters)] as const;
  return ([x, y]) => {
    const [u, v] = [(x - width / 2) / half, (y - height / 2) / half];
    const share = (u * Math.cos(dim) + v * Math.sin(dim) + 1) / 2;
    const gradient = 1 - (1 - evenness) * share;
    const lost = 1 - vignette * (u * u + v * v) ** 1.5;
    if (shadow >= 1) return gradient * lost;
    const off = fromSegment([x, y], tip, root) / short;
    const inside = 1 / (1 + Math.exp((off - HAND) / (SOFT / 2)));
    return gradient * lost * (1 - (1 - shadow) * inside);
  };
}

function fromSegment([x, y]: PhotoPoint, a: readonly [number, number], b: readonly [number, number]): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
}
