import type { StagePoint } from "../../stage/frame";
import type { Face, FaceKind, Solid, SolidLine } from "./solid";

export type SweepOptions = {
  /** Faces are named `id.end.1`, `id.end.2`, `id.side.1` (along the profile's first side) and so on. */
  readonly id: string;
  readonly element: string;
  readonly kind: FaceKind;
  /** A flat ring of at least three points, counter-clockwise seen from the side away from which it moves. */
  readonly profile: readonly StagePoint[];
  /** Where it moves to. */
  readonly by: readonly [dx: number, dy: number, dz: number];
  /** The profile's corners, counted from 0, whose lines along the sweep lie between facets of a curve. */
  readonly smooth?: readonly number[];
  /** Lines to leave out: `end.1`, `end.2` or `along` for all such, `along.3` for one. The faces stay. */
  readonly hide?: readonly string[];
};

/** The closed body that a profile passes through as it moves straight, metres, stage frame; nothing for fewer than three points. */
export function sweep(options: SweepOptions): Solid {
  const { id, element, kind, profile, by, smooth = [], hide = [] } = options;
  if (profile.length < 3) return { faces: [], lines: [] };
  const moved = profile.map(([x, y, z]): StagePoint => [x + by[0], y + by[1], z + by[2]]);
  const next = (i: number) => (i + 1) % profile.length;
  const at = (ring: readonly StagePoint[], i: number) => ring[i] as StagePoint;
  const face = (name: string, outline: readonly StagePoint[]): Face => ({
    id: `${id}.${name}`,
    element,
    kind,
    outline,
    holes: [],
  });
  const faces = [
    face("end.1", profile),
    face("end.2", [...moved].reverse()),
    ...profile.map((_, i) =>
      face(`side.${i + 1}`, [at(profile, next(i)), at(profile, i), at(moved, i), at(moved, next(i))]),
    ),
  ];
  const side = (i: number) => 2 + ((i + profile.length) % profile.length);
  const lines = profile.flatMap((_, i): SolidLine[] => {
    const line = (name: string, from: StagePoint, to: StagePoint, between: readonly number[]): SolidLine[] =>
      hide.some((part) => name === part || name.startsWith(`${part}.`))
        ? []
        : [{ id: `${id}.${name}`, element, from, to, faces: between, kind: "edge" }];
    return [
      ...line(`end.1.${i + 1}`, at(profile, i), at(profile, next(i)), [0, side(i)]),
      ...line(`end.2.${i + 1}`, at(moved, i), at(moved, next(i)), [1, side(i)]),
      ...line(`along.${i + 1}`, at(profile, i), at(moved, i), [side(i - 1), side(i)]).map((along) =>
        smooth.includes(i) ? { ...along, kind: "smooth" as const } : along,
      ),
    ];
  });
  return { faces, lines };
}
