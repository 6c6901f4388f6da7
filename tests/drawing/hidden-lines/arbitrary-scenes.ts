import fc from "fast-check";
import { intersectionLines } from "@/lib/drawing/hidden-lines/intersection-lines";
import type { StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";
import { box, face, join, line, pushed, type Scene } from "./scene";

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Whole steps make things touch, line up and be seen edge-on; half the numbers are such. */
const half = (min: number, max: number) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(2 * min), max: Math.floor(2 * max) }).map((n) => n / 2),
    real(min, max),
  );
const steps = (min: number, max: number) => fc.integer({ min: 2 * min, max: 2 * max }).map((n) => n / 2);

export const anyEye: fc.Arbitrary<Viewer> = fc.record({
  distance: half(4, 12),
  eyeHeight: half(0.5, 4),
  offset: half(-3, 3),
});

const anyPlace: fc.Arbitrary<StagePoint> = fc.tuple(half(-4, 4), half(-1, 8), half(0, 4));

/** Lines that belong to nothing: a cable, a rail. */
const anyRods: fc.Arbitrary<Scene> = fc
  .array(fc.tuple(anyPlace, anyPlace), { minLength: 1, maxLength: 4 })
  .map((ends) => ({ faces: [], lines: ends.map(([from, to], i) => line(`rod${i}`, from, to)) }));

/** An upright flat turned any way, with windows. */
const anyFlat: fc.Arbitrary<Scene> = fc
  .record({
    at: fc.tuple(half(-4, 2), half(0, 5)),
    turn: fc.oneof(
      fc.integer({ min: 0, max: 11 }).map((n) => (n * Math.PI) / 12),
      real(0, Math.PI),
    ),
    width: half(3, 7),
    height: half(1, 4),
    windows: fc.array(fc.tuple(real(0.1, 0.4), real(0.6, 0.9), real(0.1, 0.4), real(0.6, 0.9)), { maxLength: 3 }),
  })
  .map(({ at: [x, y], turn, width, height, windows }) => {
    const on = (across: number, up: number): StagePoint => [
      x + across * Math.cos(turn),
      y + across * Math.sin(turn),
      up,
    ];
    const ring = (left: number, right: number, bottom: number, top: number) => [
      on(left, bottom),
      on(right, bottom),
      on(right, top),
      on(left, top),
    ];
    const share = width / Math.max(1, windows.length);
    const holes = windows.map(([left, right, bottom, top], i) =>
      ring((i + left) * share, (i + right) * share, bottom * height, top * height).reverse(),
    );
    const flat = face("flat", ring(0, width, 0, height), holes);
    const lines = [flat.outline, ...holes].flatMap((each) =>
      each.map((from, i) => line("side", from, each[(i + 1) % each.length] as StagePoint, [0])),
    );
    return { faces: [flat], lines };
  });

const anyBox: fc.Arbitrary<Scene> = fc
  .record({ x: steps(-3, 3), y: steps(0, 6), w: steps(1, 2), d: steps(1, 2), h: steps(1, 3) })
  .map(({ x, y, w, d, h }) => box("box", [x, x + w], [y, y + d], [0, h]));

function floorOf(rake: number): Scene {
  const at = (x: number, y: number): StagePoint => [x, y, rake * y];
  return { faces: [face("floor", [at(-6, -1), at(6, -1), at(6, 10), at(-6, 10)])], lines: [] };
}

const anyRakedBoxes: fc.Arbitrary<Scene> = fc
  .tuple(real(0.04, 0.13), fc.array(anyBox, { minLength: 2, maxLength: 4 }))
  .map(([rake, boxes]) => {
    const raised = boxes.map(({ faces }) => {
      const ring = [...(faces[4]?.outline ?? [])].reverse().map(([x, y]): StagePoint => [x, y, rake * y]);
      return pushed("box", ring, [0, 0, faces[5]?.outline[0]?.[2] ?? 1]);
    });
    return join(floorOf(rake), ...raised);
  });

/** A slanting board: a triangle or a parallelogram anywhere, with its sides. */
const anyBoard: fc.Arbitrary<Scene> = fc
  .tuple(anyPlace, anyPlace, anyPlace, fc.boolean())
  .filter(([a, b, c]) => Math.abs(spread(a, b, c)) > 0.5)
  .map(([a, b, c, whole]) => {
    const d: StagePoint = [a[0] + c[0] - b[0], a[1] + c[1] - b[1], a[2] + c[2] - b[2]];
    const ring = whole ? [a, b, c, d] : [a, b, c];
    const lines = ring.map((from, i) => line("side", from, ring[(i + 1) % ring.length] as StagePoint, [0]));
    return { faces: [face("board", ring)], lines };
  });

/** The area of the parallelogram of three corners. */
function spread(a: StagePoint, b: StagePoint, c: StagePoint): number {
  const [u, v] = [[b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const, [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const];
  return Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);
}

/** A room that reaches past the eye: floor, ceiling and side walls that begin far downstage, and boxes beside and behind it. */
const anySurrounding: fc.Arbitrary<Scene> = fc
  .tuple(
    fc.array(fc.tuple(half(-4, 3), half(-16, -2), half(-1, 3)), { minLength: 2, maxLength: 4 }),
    fc.array(anyBox, { minLength: 1, maxLength: 2 }),
    half(4.5, 6),
  )
  .map(([near, boxes, width]) => {
    const wall = (x: number) =>
      face("side wall", [
        [x, -20, 0],
        [x, 9, 0],
        [x, 9, 5],
        [x, -20, 5],
      ]);
    const level = (z: number) =>
      face("level", [
        [-width, -20, z],
        [width, -20, z],
        [width, 9, z],
        [-width, 9, z],
      ]);
    const shell = { faces: [wall(-width), wall(width), level(-0.5), level(5)], lines: [] };
    const rails = [-1.25, 1.25].map((x) => line("rail", [x, -20, 0.75], [x, 8, 0.75]));
    const beside = near.map(([x, y, z]) => box("near", [x, x + 1.5], [y, y + 3], [z, z + 0.5]));
    return join(shell, { faces: [], lines: rails }, ...beside, ...boxes);
  });

const several = (one: fc.Arbitrary<Scene>, minLength: number, maxLength: number) =>
  fc.array(one, { minLength, maxLength }).map((all) => join(...all));

/** With the lines in which the faces pass through one another. */
function pierced(scene: Scene): Scene {
  return { faces: scene.faces, lines: [...scene.lines, ...intersectionLines(scene.faces)] };
}

export const anySceneOf: Readonly<Record<string, fc.Arbitrary<Scene>>> = {
  "flats with windows": fc.tuple(several(anyFlat, 2, 5), anyRods).map((all) => pierced(join(...all))),
  "boxes that touch, on a floor": several(anyBox, 2, 5).map((boxes) => pierced(join(floorOf(0), boxes))),
  "boxes on a raked floor": anyRakedBoxes,
  "boards through one another": fc.tuple(several(anyBoard, 3, 7), anyRods).map((all) => pierced(join(...all))),
  "a room round the eye": anySurrounding,
};
