import fc from "fast-check";
import type { PlanPoint, StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";

/** A finite number in a range; never -0, which only differs from 0 in a comparison of bits. */
export function real(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true }).map((n) => (n === 0 ? 0 : n));
}

/** An eye in a house of any usual size, above the stage floor, on or off the centre line. Metres. */
export const anyViewer: fc.Arbitrary<Viewer> = fc.record({
  distance: real(1.5, 60),
  eyeHeight: real(0.3, 8),
  offset: real(-8, 8),
});

/** The historic rakes go to about 1:18 (Wikipedia, Rake (theatre)); twice that leaves no stage out. */
export const anyRake = real(0, 1 / 9);

/** A place of the plan in front of the eye: how far before the plaster line it may lie follows the eye. */
export function anyPlace(viewer: Viewer, nearest = 0.8): fc.Arbitrary<PlanPoint> {
  return fc.tuple(real(-20, 20), real(-nearest * viewer.distance, 50));
}

/** A point over the stage or below it, in front of the eye. */
export function anyPoint(viewer: Viewer): fc.Arbitrary<StagePoint> {
  return fc.tuple(anyPlace(viewer), real(-3, 15)).map(([[x, y], z]) => [x, y, z]);
}

/** An eye, with what is drawn for it. */
export function withViewer<T>(make: (viewer: Viewer) => fc.Arbitrary<T>): fc.Arbitrary<readonly [Viewer, T]> {
  return anyViewer.chain((viewer) => fc.tuple(fc.constant(viewer), make(viewer)));
}
