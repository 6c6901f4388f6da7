import { between3, subtract3 } from "../../geometry/vector3";
import type { StagePoint } from "../../stage/frame";
import type { OpeningRim, RimPoint } from "./opening-rim";
import type { FaceSketch } from "./solid-of-faces";
import type { UV, WallSpace } from "./wall-space";

/**
 * The thickness of the wall as one sees it in an opening, from its drawn face to `depth` offstage: jambs, head and sill; of an
 * arch its soffit, curved. On the floor there is no sill. Outer sides face into the opening.
 */
export function revealFaces(id: string, space: WallSpace, rim: OpeningRim, depth: number): readonly FaceSketch[] {
  const { points, start, end, sill, open, opening } = rim;
  const [first, last] = [points[0] as RimPoint, points.at(-1) as RimPoint];
  const middle = space.at((start + end) / 2, depth / 2, (first[1] + rim.head) / 2);
  const quad = (name: string, outline: readonly StagePoint[], on?: string): FaceSketch => ({
    id: `${id}.${name}`,
    element: space.wall.id,
    kind: "reveal",
    outline,
    outer: subtract3(middle, between3(outline[0] as StagePoint, outline.at(-2) as StagePoint, 0.5)),
    ...(on ? { curve: on } : {}),
  });
  // An arch's jambs go on into its soffit without an edge.
  const arched = opening.kind === "arch";
  const curve = arched ? `${id}.head` : undefined;
  const strip = (name: string, [u0, z0]: RimPoint, [u1, z1]: RimPoint, on?: string) =>
    quad(name, [space.at(u0, 0, z0), space.at(u1, 0, z1), space.at(u1, depth, z1), space.at(u0, depth, z0)], on);
  const jamb = (name: string, u: number, z: number) => {
    const near: UV = [u, 0];
    return quad(name, [space.at(u, 0, z), ...space.footPath(near, [u, depth]), space.at(u, depth, z)], curve);
  };
  const upper = sill === null ? points : points.slice(1, -1);
  const heads = upper.slice(1).map((point, i) => {
    const before = upper[i] as RimPoint;
    return strip(arched ? `head.${i + 1}` : "head", before, point, curve);
  });
  const rise = [upper[0], upper.at(-1)] as [RimPoint, RimPoint];
  const jambs =
    sill === null
      ? [jamb("jamb.start", start, rise[0][1]), jamb("jamb.end", end, rise[1][1])]
      : [strip("jamb.start", first, rise[0], curve), strip("jamb.end", rise[1], last, curve)];
  const ledge = sill === null ? [] : [strip("sill", last, first)];
  return [...jambs, ...(open ? [] : heads), ...ledge];
}

/** The back of a niche, `depth` offstage of the drawn face. */
export function nicheBack(id: string, space: WallSpace, rim: OpeningRim, depth: number): FaceSketch {
  const rise = rim.points.map(([u, z]) => space.at(u, depth, z));
  const foot = rim.sill === null ? space.footPath([rim.start, depth], [rim.end, depth]) : [];
  const [x, y] = space.line.offstage;
  return {
    id: `${id}.back`,
    element: space.wall.id,
    kind: "reveal",
    outline: [...foot, ...[...rise].reverse()],
    outer: [-x, -y, 0],
  };
}
