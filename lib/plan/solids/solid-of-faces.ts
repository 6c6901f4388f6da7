import type { Vector3 } from "../../geometry/matrix3";
import { type Plane, planeOf } from "../../geometry/plane";
import { dot3 } from "../../geometry/vector3";
import type { StagePoint } from "../../stage/frame";
import type { Face, Solid, SolidLine } from "./solid";

/** A face as it is being built: its rings may run either way round. */
export type FaceSketch = Omit<Face, "holes"> & {
  readonly holes?: readonly (readonly StagePoint[])[];
  /** Some direction to its outer side. */
  readonly outer: Vector3;
  /** Faces of one curved surface share a name; the edge between two of them is smooth. */
  readonly curve?: string;
  /** Where two such faces go on from each other in one plane, no line is drawn. */
  readonly seamless?: true;
};

/** A line on a face that is no edge of it. */
export type DetailSketch = {
  readonly id: string;
  readonly from: StagePoint;
  readonly to: StagePoint;
  /** The face's id. */
  readonly on: string;
};

/** Corners nearer than this are one, metres. */
const SAME_CORNER_M = 1e-7;
/** Faces whose normals part by a smaller sine than this lie in one plane. */
const ONE_PLANE = 1e-9;

/**
 * Faces and what is drawn on them as a solid: rings turned as promised, and every side of a ring a line, shared by the faces
 * that have the same side. A face that encloses nothing is left out, with its details.
 */
export function solidOfFaces(sketches: readonly FaceSketch[], details: readonly DetailSketch[] = []): Solid {
  const kept = sketches.flatMap((sketch) => {
    const outline = withoutRepeats(sketch.outline);
    const plane = planeOf(outline);
    return plane ? [{ sketch, ...turned(sketch, outline, plane) }] : [];
  });
  const faces = kept.map(({ face }) => face);
  const sides = new Map<string, { from: StagePoint; to: StagePoint; of: { id: string; place: number }[] }>();
  faces.forEach(({ id, outline, holes }, place) => {
    for (const [r, ring] of [outline, ...holes].entries())
      for (const [i, from] of ring.entries()) {
        const to = ring[(i + 1) % ring.length] as StagePoint;
        const key = [cornerKey(from), cornerKey(to)].sort().join(" ");
        const own = { id: `${id}.${r === 0 ? "" : `hole.${r}.`}${i + 1}`, place };
        const side = sides.get(key);
        if (side) side.of.push(own);
        else sides.set(key, { from, to, of: [own] });
      }
  });
  const edges = [...sides.values()].flatMap(({ from, to, of }): SolidLine[] =>
    // Where more than two faces meet in a line, as three walls at a corner, it is a line of each two of them.
    of.flatMap(({ id, place }, i): SolidLine[] => {
      if (i % 2 === 1) return [];
      const other = of[i + 1]?.place;
      const [one, next] = [kept[place] as Kept, other === undefined ? undefined : kept[other]];
      if (next && goOn(one, next)) return [];
      const smooth = one.sketch.curve !== undefined && one.sketch.curve === next?.sketch.curve;
      const between = other === undefined ? [place] : [place, other];
      return [{ id, element: one.sketch.element, from, to, faces: between, kind: smooth ? "smooth" : "edge" }];
    }),
  );
  const places = new Map(faces.map(({ id }, place) => [id, place]));
  const drawn = details.flatMap(({ on, ...detail }): SolidLine[] => {
    const place = places.get(on);
    const element = place === undefined ? undefined : faces[place]?.element;
    return place === undefined || element === undefined ? [] : [{ ...detail, element, faces: [place], kind: "detail" }];
  });
  return { faces, lines: [...edges, ...drawn] };
}

type Kept = { readonly sketch: FaceSketch; readonly face: Face; readonly normal: Vector3 };

function turned(sketch: FaceSketch, outline: readonly StagePoint[], plane: Plane): Omit<Kept, "sketch"> {
  const { id, element, kind, outer, holes = [] } = sketch;
  const flip = dot3(plane.normal, outer) < 0;
  const [nx, ny, nz] = plane.normal;
  const normal: Vector3 = flip ? [-nx, -ny, -nz] : plane.normal;
  const clockwise = holes.flatMap((hole) => {
    const ring = withoutRepeats(hole);
    const own = planeOf(ring);
    return own ? [dot3(own.normal, normal) > 0 ? [...ring].reverse() : ring] : [];
  });
  return { normal, face: { id, element, kind, outline: flip ? [...outline].reverse() : outline, holes: clockwise } };
}

function goOn(one: Kept, other: Kept): boolean {
  return (
    one.sketch.seamless === true && other.sketch.seamless === true && dot3(one.normal, other.normal) > 1 - ONE_PLANE
  );
}

function withoutRepeats(ring: readonly StagePoint[]): readonly StagePoint[] {
  return ring.filter((point, i) => cornerKey(point) !== cornerKey(ring.at(i - 1) ?? point) || ring.length === 1);
}

function cornerKey([x, y, z]: StagePoint): string {
  const short = (value: number) => Math.round(value / SAME_CORNER_M);
  return `${short(x)},${short(y)},${short(z)}`;
}
