import type { PicturePoint, PlanPoint } from "@/lib/stage/frame";

/** A point of a pane on the screen: pixels from its upper left corner, y down. */
export type PxPoint = readonly [x: number, y: number] & { readonly frame?: "px" };

/** The two drawings of a sheet. */
export type Plane = "picture" | "plan";

/** A point of a drawing, metres, second coordinate up. The phantom frame keeps picture and plan apart. */
export type PointOn<P extends Plane> = P extends "picture" ? PicturePoint : PlanPoint;

/** How a drawing stands in its pane: where its [0, 0] is, and how big a metre of it is. */
export type View<P extends Plane = Plane> = {
  readonly plane: P;
  readonly origin: PxPoint;
  readonly pxPerMetre: number;
};

/** A rectangle of a drawing, metres. */
export type Bounds = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** The size of a pane, pixels. */
export type PxSize = { readonly width: number; readonly height: number };

/** Never zero, so that a pane not yet laid out has a view all the same. */
const LEAST_PX_PER_METRE = 0.1;

/** Drawing metres to pane pixels. */
export function toPx<P extends Plane>(view: View<P>, at: PointOn<P>): PxPoint {
  return [view.origin[0] + at[0] * view.pxPerMetre, view.origin[1] - at[1] * view.pxPerMetre];
}

/** Pane pixels to drawing metres: the inverse of `toPx`. */
export function fromPx<P extends Plane>(view: View<P>, px: PxPoint): PointOn<P> {
  const at: readonly [number, number] = [
    (px[0] - view.origin[0]) / view.pxPerMetre,
    (view.origin[1] - px[1]) / view.pxPerMetre,
  ];
  return at as PointOn<P>;
}

/** The largest size of a metre at which the bounds fit the pane. */
export function fitPxPerMetre(bounds: Bounds, size: PxSize): number {
  const across = size.width / (bounds.right - bounds.left);
  const up = size.height / (bounds.top - bounds.bottom);
  return Math.max(Math.min(across, up), LEAST_PX_PER_METRE);
}

/** The view that puts a point of the drawing in the middle of the pane. */
export function viewAbout<P extends Plane>(
  plane: P,
  centre: readonly [number, number],
  pxPerMetre: number,
  size: PxSize,
): View<P> {
  return {
    plane,
    pxPerMetre,
    origin: [size.width / 2 - centre[0] * pxPerMetre, size.height / 2 + centre[1] * pxPerMetre],
  };
}

/** Drawing metres to paper millimetres, y down: the units of everything inside a pane's drawing group. */
export function toPaper(at: readonly [number, number], scaleRatio: number): readonly [x: number, y: number] {
  return [tenThousandths((at[0] * 1000) / scaleRatio), tenThousandths((-at[1] * 1000) / scaleRatio)];
}

/** Server and browser may differ in the last digits of a sine; what they both write on the page must not. */
export function tenThousandths(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}

/** Screen pixels of a millimetre of paper. */
export function pxPerMm(view: View, scaleRatio: number): number {
  return (view.pxPerMetre * scaleRatio) / 1000;
}

/** The matrix of an SVG group whose contents are in paper millimetres. */
export function paperMatrix(view: View, scaleRatio: number): string {
  const k = pxPerMm(view, scaleRatio);
  return `matrix(${k} 0 0 ${k} ${view.origin[0]} ${view.origin[1]})`;
}

export function middle(bounds: Bounds): readonly [number, number] {
  return [(bounds.left + bounds.right) / 2, (bounds.bottom + bounds.top) / 2];
}
