import { Matrix4, PerspectiveCamera, Vector3 } from "three";
import { bench, describe } from "vitest";
import { project } from "@/lib/perspective/project";
import type { StagePoint } from "@/lib/stage/frame";
import { eyePoint, type Viewer } from "@/lib/stage/viewer";

const POINTS = 100_000;
const viewer: Viewer = { distance: 11, eyeHeight: 2.4, offset: 0.7 };
const opening = { width: 10, height: 6 };

/** Places spread over the stage without a pattern of rows: multiples of irrational steps, wrapped. */
const points: readonly StagePoint[] = Array.from({ length: POINTS }, (_, i) => [
  ((i * Math.SQRT2) % 1) * 16 - 8,
  ((i * Math.sqrt(3)) % 1) * 14 - 2,
  ((i * Math.sqrt(5)) % 1) * 5,
]);

function offAxisCamera(): PerspectiveCamera {
  const near = 0.1;
  const share = near / viewer.distance;
  const camera = new PerspectiveCamera();
  camera.up.set(0, 0, 1);
  camera.position.fromArray(eyePoint(viewer));
  camera.lookAt(viewer.offset, 0, viewer.eyeHeight);
  camera.updateMatrixWorld();
  camera.projectionMatrix = new Matrix4().makePerspective(
    (-opening.width / 2 - viewer.offset) * share,
    (opening.width / 2 - viewer.offset) * share,
    (opening.height - viewer.eyeHeight) * share,
    -viewer.eyeHeight * share,
    near,
    1000,
  );
  return camera;
}

const camera = offAxisCamera();

/** Both are timed at the same job: every point to picture metres, and the sum of them, so that none is left undone. */
function sumByUs(): number {
  const call = project; // what the bench's own loader adds to each use of an import is not ours to be timed
  let sum = 0;
  for (const point of points) {
    const seen = call(viewer, point);
    if (seen.seen) sum += seen.at[0] + seen.at[1];
  }
  return sum;
}

function sumByThree(): number {
  const place = new Vector3();
  let sum = 0;
  for (const [x, y, z] of points) {
    place.set(x, y, z).project(camera);
    sum += (place.x * opening.width) / 2 + ((place.y + 1) * opening.height) / 2;
  }
  return sum;
}

const [ours, theirs] = [sumByUs(), sumByThree()];
if (!(Math.abs(ours - theirs) <= 1e-9 * POINTS)) throw new Error(`The projections differ: ${ours} and ${theirs}.`);

describe(`projection of ${POINTS} points`, () => {
  bench("project", () => {
    sumByUs();
  });

  bench("three.js Vector3.project", () => {
    sumByThree();
  });
});
