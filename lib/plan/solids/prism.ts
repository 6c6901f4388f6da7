import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight } from "../../stage/stage";
import { crossing, cutOutline, type OutlineCorner } from "./cut-outline";
import type { Face, FaceKind, Solid, SolidLine } from "./solid";

/** The stage floor as a prism stands on it: level before the plaster line, raked upstage of it, all of it `base` higher. */
export type Footing = { readonly rake: number; readonly base: number };

export type PrismOptions = {
  /** Faces are named `id.top`, `id.bottom`, `id.side.1` (from the outline's first corner to its second) and so on. */
  readonly id: string;
  readonly element: string;
  readonly kind: FaceKind;
  /** Counter-clockwise seen from above, its sides not crossing. */
  readonly outline: readonly PlanPoint[];
  /** A level, or the floor its foot follows. */
  readonly bottom: number | Footing;
  readonly top: number;
  /** Uprights between facets of a curved side: all of them, or those over these corners of the outline, counted from 0. */
  readonly smooth?: boolean | readonly number[];
  /**
   * Lines to leave out because they would only repeat those of a part it stands against: `top`, `bottom` or `upright` for
   * all such, `top.3` for one. The faces stay.
   */
  readonly hide?: readonly string[];
};

/** Heights nearer than this are one height, metres: far below a pencil line, far above rounding. */
const SAME_HEIGHT_M = 1e-9;

/**
 * An upright body over an outline, metres, stage frame, closed on all sides. On a footing that is raked its foot follows
 * the floor, bending at the plaster line, and what of it would lie under the floor is cut away. Nothing left, a top that
 * is not above the bottom, or fewer than three corners: no faces and no lines.
 */
export function prism(options: PrismOptions): Solid {
  const { id, element, kind, top, bottom, smooth = false, hide = [] } = options;
  const footing: Footing = typeof bottom === "number" ? { rake: 0, base: bottom } : bottom;
  const corners = options.outline.map((at, i) => ({ at, smooth: isSmooth(smooth, i) }));
  const outline = aboveFloor(corners, footing, top);
  if (outline.length < 3) return { faces: [], lines: [] };

  const down = (at: PlanPoint): StagePoint => [at[0], at[1], footing.base + floorHeight(footing, at[1])];
  const up = ([x, y]: PlanPoint): StagePoint => [x, y, top];
  const onTop = ({ at }: OutlineCorner) => top - down(at)[2] <= SAME_HEIGHT_M;
  const face = (name: string, ring: readonly StagePoint[]): Face => ({
    id: `${id}.${name}`,
    element,
    kind,
    outline: ring,
    holes: [],
  });

  const faces: Face[] = [
    face(
      "top",
      outline.map(({ at }) => up(at)),
    ),
  ];
  const before = footing.rake === 0 ? outline : cutOutline(outline, 0, "downstage");
  const beyond = footing.rake === 0 ? [] : cutOutline(outline, 0, "upstage");
  const under = [...ifAny(before, "downstage"), ...ifAny(beyond, "upstage")];
  const bottoms = new Map(under.map(({ part }, i) => [part, i + 1]));
  for (const { part, ring } of under) {
    const name = under.length > 1 ? `bottom.${part}` : "bottom";
    faces.push(face(name, ring.map(({ at }) => down(at)).reverse()));
  }
  const bottomUnder = (a: PlanPoint, b: PlanPoint) =>
    bottoms.get(a[1] + b[1] > 0 ? "upstage" : "downstage") ?? (bottoms.size > 0 ? 1 : 0);

  const sides = outline.map((corner, i) => {
    const next = outline[(i + 1) % outline.length] ?? corner;
    const folds = footing.rake !== 0 && corner.at[1] * next.at[1] < 0 ? [crossing(corner.at, next.at, 0)] : [];
    const foot = [corner.at, ...folds, next.at];
    if (onTop(corner) && onTop(next)) return { foot, place: null };
    const ring = [
      ...foot.map(down).filter((_, k) => !(k === 0 && onTop(corner)) && !(k === foot.length - 1 && onTop(next))),
      up(next.at),
      up(corner.at),
    ];
    faces.push(face(`side.${i + 1}`, ring));
    return { foot, place: faces.length - 1 };
  });

  const lines: SolidLine[] = [];
  const hidden = (name: string) => hide.some((part) => name === part || name.startsWith(`${part}.`));
  const line = (name: string, from: StagePoint, to: StagePoint, between: readonly number[], smoothly = false) => {
    if (!hidden(name))
      lines.push({ id: `${id}.${name}`, element, from, to, faces: between, kind: smoothly ? "smooth" : "edge" });
  };
  sides.forEach(({ foot, place }, i) => {
    const corner = outline[i] as OutlineCorner;
    const next = outline[(i + 1) % outline.length] as OutlineCorner;
    const last = sides.at(i - 1)?.place ?? null;
    line(`top.${i + 1}`, up(corner.at), up(next.at), [0, place ?? bottomUnder(corner.at, next.at)]);
    if (!onTop(corner))
      line(
        `upright.${i + 1}`,
        down(corner.at),
        up(corner.at),
        [last, place].flatMap((p) => p ?? []),
        corner.smooth,
      );
    if (place === null) return;
    for (const [k, from] of foot.slice(0, -1).entries()) {
      const to = foot[k + 1] as PlanPoint;
      line(foot.length > 2 ? `bottom.${i + 1}.${k + 1}` : `bottom.${i + 1}`, down(from), down(to), [
        bottomUnder(from, to),
        place,
      ]);
    }
  });
  return { faces, lines };
}

function isSmooth(smooth: boolean | readonly number[], corner: number): boolean {
  return typeof smooth === "boolean" ? smooth : smooth.includes(corner);
}

function ifAny(ring: readonly OutlineCorner[], part: "downstage" | "upstage") {
  return ring.length < 3 || ring.every(({ at }) => at[1] === 0) ? [] : [{ part, ring }];
}

/** What of the outline lies where the floor is below the top. */
function aboveFloor(corners: readonly OutlineCorner[], { rake, base }: Footing, top: number): readonly OutlineCorner[] {
  const low = corners.some(({ at }) => base + floorHeight({ rake }, at[1]) < top - SAME_HEIGHT_M);
  if (!low) return [];
  const high = corners.some(({ at }) => base + floorHeight({ rake }, at[1]) > top);
  return high && rake > 0 ? cutOutline(corners, (top - base) / rake, "downstage") : corners;
}
