import { fromPx, type Plane, type PointOn, type PxPoint, toPx, type View } from "./view";

/**
 * How a pointer has hold of a mark. `pressed`: the button or finger is down on it. `held`: it was picked up with a tap and
 * follows until the tap that puts it down. Nothing here knows where the mark should be.
 */
export type Hold =
  | { readonly kind: "free" }
  | {
      readonly kind: "pressed";
      readonly grip: PxPoint;
      readonly start: PxPoint;
      readonly moved: boolean;
      readonly pickUp: boolean;
    }
  | { readonly kind: "held" };

export const FREE: Hold = { kind: "free" };

/** Within this of a mark a press takes hold of it; outside, the press brings the mark there. */
const REACH_PX: Readonly<Record<string, number>> = { mouse: 12, pen: 16, touch: 24 };
/** A tap may tremble by this much. */
const TREMBLE_PX = 5;

export type Held<P extends Plane> = {
  readonly hold: Hold;
  /** Where the mark goes now; null leaves it. */
  readonly at: PointOn<P> | null;
};

/** The pointer comes down. */
export function press<P extends Plane>(
  hold: Hold,
  view: View<P>,
  px: PxPoint,
  mark: PointOn<P> | null,
  device: string,
): Held<P> {
  const markPx = mark && toPx(view, mark);
  const near = markPx !== null && Math.hypot(px[0] - markPx[0], px[1] - markPx[1]) <= (REACH_PX[device] ?? 24);
  if (hold.kind !== "held" && near && markPx) {
    const grip: PxPoint = [markPx[0] - px[0], markPx[1] - px[1]];
    return { hold: { kind: "pressed", grip, start: px, moved: false, pickUp: true }, at: null };
  }
  return { hold: { kind: "pressed", grip: [0, 0], start: px, moved: false, pickUp: false }, at: fromPx(view, px) };
}

/** The pointer moves, down or hovering. */
export function move<P extends Plane>(hold: Hold, view: View<P>, px: PxPoint): Held<P> {
  if (hold.kind === "free") return { hold, at: null };
  if (hold.kind === "held") return { hold, at: fromPx(view, px) };
  const moved = hold.moved || Math.hypot(px[0] - hold.start[0], px[1] - hold.start[1]) > TREMBLE_PX;
  if (!moved) return { hold, at: null };
  return { hold: { ...hold, moved }, at: fromPx(view, [px[0] + hold.grip[0], px[1] + hold.grip[1]]) };
}

/** The pointer goes up: a tap on a mark picks it up, anything else puts it down. */
export function release(hold: Hold): Hold {
  return hold.kind === "pressed" && hold.pickUp && !hold.moved ? { kind: "held" } : FREE;
}
