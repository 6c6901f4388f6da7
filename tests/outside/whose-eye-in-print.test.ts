import { describe, expect, it } from "vitest";
import type { DrawingPlace, MarkedDrawing } from "@/lib/perspective/whose-eye/marked-drawing";
import { whoseEye } from "@/lib/perspective/whose-eye/whose-eye";
import { drawing } from "../perspective/whose-eye/drawn-stage";
import { type PublishedCase, publishedCase, sourceOf, viewerOf } from "./published-cases";
import { expectWithin } from "./within";

/** Where the source has a point in its picture, in its own unit of length. */
function placeOf({ points }: PublishedCase, name: string): DrawingPlace {
  const at = points?.[name]?.picture;
  if (!at) throw new Error(`The published case has no point ${name}.`);
  return [at[0], at[1]];
}

/** The eye of a drawing whose unit of length is the stage's own: then heights and distances on paper are those of the stage. */
function eyeOf(marked: Partial<MarkedDrawing>) {
  const answer = whoseEye(drawing(marked), "ft-in");
  if (answer.kind !== "told") throw new Error(answer.say);
  const { horizon, cvp, distanceMm, eyeHeight } = answer.figures;
  if (!horizon || !cvp || !distanceMm || !eyeHeight) throw new Error(answer.untold.join(" "));
  return { horizon, cvp, distance: distanceMm, eyeHeight };
}

const NORTHERN = publishedCase("northern-01-back-wall");
const STOREY = publishedCase("storey-06-fig55-square-B");

/** One standard deviation of a corner measured on the plate: the case's tolerance is three. */
const PLATE_FT = STOREY.tolerance / 3;

describe("whose eye drew this, of drawings in print", () => {
  it(`the floor of the handout's opening, 36 ft wide and 36 deep, was drawn for its eye: ${sourceOf(NORTHERN)}`, () => {
    const corners = [
      [-18, 0],
      [18, 0],
      placeOf(NORTHERN, "backRightFloor"),
      placeOf(NORTHERN, "backLeftFloor"),
    ] as const;
    const { horizon, cvp, distance, eyeHeight } = eyeOf({
      rectangle: { corners, proportion: 1 },
      length: { ends: [corners[0], corners[1]], metres: 36, lies: "plaster line" },
      sigmaMm: 0.01,
    });
    const viewer = viewerOf(NORTHERN);
    expectWithin(horizon.value, viewer.eyeHeight, 1e-6);
    expectWithin(eyeHeight.value, viewer.eyeHeight, 1e-6);
    expectWithin(cvp.value, viewer.offset, 1e-6);
    expectWithin(distance.value, viewer.distance, 1e-6);
  });

  it(`a square on an engraving gives the plate's own distance and horizon, as near as it was measured: ${sourceOf(STOREY)}`, () => {
    const [a, b, c, d] = ["nearL", "nearR", "farR", "farL"].map((name) => placeOf(STOREY, name));
    if (!a || !b || !c || !d) throw new Error("A corner is missing.");
    const { horizon, cvp, distance, eyeHeight } = eyeOf({
      rectangle: { corners: [a, b, c, d], proportion: 1 },
      length: { ends: [a, b], metres: 3, lies: "floor" },
      sigmaMm: PLATE_FT,
    });
    const viewer = viewerOf(STOREY);
    // Each within two of its own standard deviations, and none of them so wide that anything would do.
    for (const [figure, truth, widest] of [
      [horizon, viewer.eyeHeight, 1],
      [cvp, viewer.offset, 1],
      [distance, viewer.distance, 3],
      [eyeHeight, viewer.eyeHeight, 1],
    ] as const) {
      expectWithin(figure.value, truth, 2 * figure.give);
      expect(figure.give).toBeLessThan(widest);
    }
  });
});
