import {
  type Bounds,
  fitPxPerMetre,
  fromPx,
  middle,
  type Plane,
  type PxPoint,
  type PxSize,
  type View,
  viewAbout,
} from "./view";

/** One pane: its size on the screen, what must fit it, and how far the student has gone into it. */
export type PaneState<P extends Plane = Plane> = {
  readonly plane: P;
  readonly size: PxSize;
  readonly bounds: Bounds;
  /** Pixels of a metre when the whole drawing is shown; null to fit this pane alone. */
  readonly wholePxPerMetre: number | null;
  /** 1 shows the whole drawing. */
  readonly factor: number;
  readonly centre: readonly [number, number];
};

const MOST_ZOOM = 24;
export const ZOOM_STEP = 1.5;

/** A pane that shows the whole of its drawing. */
export function newPane<P extends Plane>(plane: P, bounds: Bounds): PaneState<P> {
  return { plane, size: { width: 0, height: 0 }, bounds, wholePxPerMetre: null, factor: 1, centre: middle(bounds) };
}

export function viewOfPane<P extends Plane>(pane: PaneState<P>): View<P> {
  const whole = pane.wholePxPerMetre ?? fitPxPerMetre(pane.bounds, pane.size);
  return viewAbout(pane.plane, pane.centre, whole * pane.factor, pane.size);
}

/** Zooms so that what lies under a pixel stays there. */
export function zoomPane<P extends Plane>(pane: PaneState<P>, by: number, about: PxPoint): PaneState<P> {
  const factor = Math.min(Math.max(pane.factor * by, 1), MOST_ZOOM);
  const before = viewOfPane(pane);
  const still = fromPx(before, about);
  const ratio = pane.factor / factor;
  const centre: readonly [number, number] = [
    still[0] + (pane.centre[0] - still[0]) * ratio,
    still[1] + (pane.centre[1] - still[1]) * ratio,
  ];
  return keepOnSheet({ ...pane, factor, centre });
}

/** Moves the drawing by so many pixels, right and down. */
export function panPane<P extends Plane>(pane: PaneState<P>, right: number, down: number): PaneState<P> {
  const { pxPerMetre } = viewOfPane(pane);
  return keepOnSheet({
    ...pane,
    centre: [pane.centre[0] - right / pxPerMetre, pane.centre[1] + down / pxPerMetre],
  });
}

/** Shows the whole drawing again. */
export function wholePane<P extends Plane>(pane: PaneState<P>): PaneState<P> {
  return { ...pane, factor: 1, centre: middle(pane.bounds) };
}

/** The drawing cannot be pushed off its pane: the middle stays over it, and the whole drawing stays centred. */
function keepOnSheet<P extends Plane>(pane: PaneState<P>): PaneState<P> {
  if (pane.factor === 1) return wholePane(pane);
  const { left, right, bottom, top } = pane.bounds;
  return {
    ...pane,
    centre: [Math.min(Math.max(pane.centre[0], left), right), Math.min(Math.max(pane.centre[1], bottom), top)],
  };
}
