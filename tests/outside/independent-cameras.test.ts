import fc from "fast-check";
import { glMatrix, mat4, vec4 } from "gl-matrix";
import { Matrix4, PerspectiveCamera, Vector3, Vector4 } from "three";
import { describe, expect, it } from "vitest";
import { project } from "@/lib/perspective/project";
import type { PicturePoint, StagePoint } from "@/lib/stage/frame";
import { eyePoint, type Viewer } from "@/lib/stage/viewer";
import { anyPoint, anyViewer, real } from "../perspective/arbitraries";
import { seeded } from "../seeded";
import { expectWithin } from "./within";

/** gl-matrix keeps single precision unless it is told otherwise; three.js keeps double. */
glMatrix.setMatrixArrayType(Array);

/** How far the two may differ, as a share of the picture place's own size: some thousands of roundings of a double. */
const SAME_PLACE = 1e-12;

type Opening = { readonly width: number; readonly height: number };

/** The edges of the opening as seen from the eye, metres on the picture plane: its window, off the axis for most eyes. */
function windowOf({ eyeHeight, offset }: Viewer, { width, height }: Opening) {
  return {
    left: -width / 2 - offset,
    right: width / 2 - offset,
    bottom: -eyeHeight,
    top: height - eyeHeight,
  };
}

/** From the camera's window, -1 to 1 both ways, back to metres of the opening. */
function onOpening([u, v]: readonly [number, number], { width, height }: Opening): PicturePoint {
  return [(u * width) / 2, ((v + 1) * height) / 2];
}

/** A camera's near plane, as a share of the eye's distance: nearer than anything the random scenes hold. */
const NEAR = 0.1;
const FAR_M = 1000;

function threeCamera(viewer: Viewer, opening: Opening): PerspectiveCamera {
  const camera = new PerspectiveCamera();
  camera.up.set(0, 0, 1);
  camera.position.fromArray(eyePoint(viewer));
  camera.lookAt(viewer.offset, 0, viewer.eyeHeight);
  camera.updateMatrixWorld();
  const { left, right, top, bottom } = windowOf(viewer, opening);
  const near = NEAR * viewer.distance;
  camera.projectionMatrix = new Matrix4().makePerspective(
    left * NEAR,
    right * NEAR,
    top * NEAR,
    bottom * NEAR,
    near,
    FAR_M,
  );
  return camera;
}

function byThree(viewer: Viewer, opening: Opening, point: StagePoint): PicturePoint {
  const { x, y } = new Vector3(...point).project(threeCamera(viewer, opening));
  return onOpening([x, y], opening);
}

function byGlMatrix(viewer: Viewer, opening: Opening, [x, y, z]: StagePoint): PicturePoint {
  const { left, right, top, bottom } = windowOf(viewer, opening);
  const view = mat4.lookAt(mat4.create(), [...eyePoint(viewer)], [viewer.offset, 0, viewer.eyeHeight], [0, 0, 1]);
  const lens = mat4.frustum(
    mat4.create(),
    left * NEAR,
    right * NEAR,
    bottom * NEAR,
    top * NEAR,
    NEAR * viewer.distance,
    FAR_M,
  );
  const [u = Number.NaN, v = Number.NaN, , w = Number.NaN] = vec4.transformMat4(
    vec4.create(),
    [x, y, z, 1],
    mat4.multiply(mat4.create(), lens, view),
  );
  return onOpening([u / w, v / w], opening);
}

const anyOpening: fc.Arbitrary<Opening> = fc.record({ width: real(4, 20), height: real(3, 12) });

const anyScene = fc.tuple(anyViewer, anyOpening).chain(([viewer, opening]) =>
  fc.record({
    viewer: fc.constant(viewer),
    opening: fc.constant(opening),
    points: fc.array(anyPoint(viewer), { minLength: 1, maxLength: 20 }),
  }),
);

function expectSamePlace(viewer: Viewer, opening: Opening, point: StagePoint, other: PicturePoint) {
  const seen = project(viewer, point);
  if (!seen.seen) throw new Error("The point is not seen.");
  const size = opening.width + opening.height + Math.hypot(...seen.at);
  expectWithin(seen.at[0], other[0], SAME_PLACE * size);
  expectWithin(seen.at[1], other[1], SAME_PLACE * size);
}

describe("the projection against cameras that are not ours", () => {
  it.each([
    { name: "three.js 0.187, PerspectiveCamera with an off-axis frustum", camera: byThree },
    { name: "gl-matrix 3.4, lookAt and frustum", camera: byGlMatrix },
  ])("$name puts every point of a random scene in the same place", ({ camera }) => {
    fc.assert(
      fc.property(anyScene, ({ viewer, opening, points }) => {
        for (const point of points) expectSamePlace(viewer, opening, point, camera(viewer, opening, point));
      }),
      seeded,
    );
  });

  it("three.js 0.187, PerspectiveCamera by its field of view alone, for an eye before the middle of the opening", () => {
    const centred = fc.tuple(real(1.5, 60), anyOpening).chain(([distance, opening]) => {
      const viewer: Viewer = { distance, eyeHeight: opening.height / 2, offset: 0 };
      return fc.record({ viewer: fc.constant(viewer), opening: fc.constant(opening), point: anyPoint(viewer) });
    });
    fc.assert(
      fc.property(centred, ({ viewer, opening, point }) => {
        const fovDeg = (2 * Math.atan(opening.height / (2 * viewer.distance)) * 180) / Math.PI;
        const camera = new PerspectiveCamera(fovDeg, opening.width / opening.height, 0.1, FAR_M);
        camera.up.set(0, 0, 1);
        camera.position.fromArray(eyePoint(viewer));
        camera.lookAt(0, 0, viewer.eyeHeight);
        camera.updateMatrixWorld();
        const { x, y } = new Vector3(...point).project(camera);
        expectSamePlace(viewer, opening, point, onOpening([x, y], opening));
      }),
      seeded,
    );
  });

  it("what three.js holds to be behind the camera is not seen, and only that", () => {
    const scene = anyViewer.chain((viewer) =>
      fc.tuple(fc.constant(viewer), fc.tuple(real(-20, 20), real(-3 * viewer.distance, 50), real(-3, 15))),
    );
    fc.assert(
      fc.property(scene, ([viewer, point]) => {
        const camera = threeCamera(viewer, { width: 10, height: 6 });
        const seenBy = new Vector4(...point, 1)
          .applyMatrix4(camera.matrixWorldInverse)
          .applyMatrix4(camera.projectionMatrix);
        // On the eye's own level the camera's turn leaves a rounding error either way.
        fc.pre(Math.abs(seenBy.w) > 1e-9);
        expect(project(viewer, point).seen).toBe(seenBy.w > 0);
      }),
      seeded,
    );
  });
});
