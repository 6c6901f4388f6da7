import { describe, it } from "vitest";
import { vanishingPoint } from "@/lib/perspective/vanishing-point";
import { expectedOf, publishedCase, sourceOf } from "./published-cases";
import { expectWithin } from "./within";

/** How far from the CVP level lines at an angle to the axis vanish, for an eye at a distance. */
function reach(angleDeg: number, distance: number): number {
  const angle = (angleDeg * Math.PI) / 180;
  const vanishing = vanishingPoint({ distance, eyeHeight: 0, offset: 0 }, [Math.sin(angle), Math.cos(angle), 0]);
  if (!vanishing) throw new Error("The line has no vanishing point.");
  return vanishing[0];
}

/** The width an angle of view covers on the picture plane. */
function widthCovered(fullAngleDeg: number, distance: number): number {
  return 2 * reach(fullAngleDeg / 2, distance);
}

/** What an allowance in degrees of full angle means as a width. */
function widthOf(toleranceDeg: number, fullAngleDeg: number, distance: number): number {
  return widthCovered(fullAngleDeg + toleranceDeg, distance) - widthCovered(fullAngleDeg, distance);
}

const views = publishedCase("storey-04-cone-60-and-28");
describe(`${views.id}: ${sourceOf(views)}`, () => {
  it.each([
    { name: "D/width at 60 deg", angle: 60 },
    { name: "D/width at 28 deg", angle: 28 },
  ])("$name", ({ name, angle }) => {
    const { value, tolerance } = expectedOf(views, name);
    expectWithin(1 / widthCovered(angle, 1), value, tolerance);
  });

  it("a distance of two widths covers the width in 28.07 degrees", () => {
    const { value, tolerance } = expectedOf(views, "angle for D=2 widths (deg)");
    expectWithin(widthCovered(value, 2), 1, widthOf(tolerance, value, 2));
  });
});

const square = publishedCase("cousin-01-distance-double");
describe(`${square.id}: ${sourceOf(square)}`, () => {
  it("a square of 20 ft from 40 ft fills the same angle", () => {
    const { value, tolerance } = expectedOf(square, "full angle of a 20ft width at 40ft (deg)");
    expectWithin(widthCovered(value, 40), 20, widthOf(tolerance, value, 40));
  });
});

const circle = publishedCase("cone-01-circle-of-vision");
describe(`${circle.id}: ${sourceOf(circle)}`, () => {
  it("lines 30 degrees off the axis vanish 0.577 D from the CVP", () => {
    const { value, tolerance } = expectedOf(circle, "radius / D");
    expectWithin(reach(30, 1), value, tolerance);
  });

  it("from 34.12 ft the circle passes through the corners of a 36 x 16 ft opening", () => {
    const { value, tolerance } = expectedOf(circle, "min D for the 36x16 opening, centred eye");
    expectWithin(reach(30, value), Math.hypot(18, 8), reach(30, tolerance));
  });

  it("from 36 ft those corners lie in a cone of 57.37 degrees", () => {
    const { value, tolerance } = expectedOf(circle, "cone to the corner of the northern grid at D=36 (full deg)");
    expectWithin(widthCovered(value, 36), 2 * Math.hypot(18, 8), widthOf(tolerance, value, 36));
  });
});

const article = publishedCase("tdt1978-03-cone");
describe(`${article.id}: ${sourceOf(article)}`, () => {
  it("an opening of 32 ft from 40 ft fills 43.6 degrees", () => {
    const { value, tolerance } = expectedOf(article, "horizontal full angle");
    expectWithin(widthCovered(value, 40), 32, widthOf(tolerance, value, 40));
  });

  it("its corner farthest from an eye at 4 ft lies 29.5 degrees off the axis", () => {
    const { value, tolerance } = expectedOf(article, "half angle to farthest corner");
    expectWithin(reach(value, 40), Math.hypot(16, 16), reach(value + tolerance, 40) - reach(value, 40));
  });
});

const net = publishedCase("leonardo-04-drawing-net");
describe(`${net.id}: ${sourceOf(net)}`, () => {
  it("a net 3 braccia wide, 7 from the eye, fills 24.19 degrees", () => {
    const { value, tolerance } = expectedOf(net, "full horizontal angle of net (deg)");
    expectWithin(widthCovered(value, 7), 3, widthOf(tolerance, value, 7));
  });
});
