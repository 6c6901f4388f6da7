import type { PlanPoint } from "../../stage/frame";

/** A corner of an outline, and whether the upright over it is one of a curved body's. */
export type OutlineCorner = { readonly at: PlanPoint; readonly smooth: boolean };

/**
 * What of an outline lies on one side of the line `y` across the plan, the same way round; empty where nothing does.
 * Convex outlines give an outline; a hollow one that is cut into several pieces keeps them joined along the cut.
 * (Each side of the outline is cut in turn, as Sutherland and Hodgman do.)
 */
export function cutOutline(
  outline: readonly OutlineCorner[],
  y: number,
  keep: "downstage" | "upstage",
): readonly OutlineCorner[] {
  const beyond = ({ at }: OutlineCorner) => (keep === "downstage" ? at[1] - y : y - at[1]);
  const kept = outline.flatMap((corner, i) => {
    const next = outline[(i + 1) % outline.length] ?? corner;
    const [here, there] = [beyond(corner), beyond(next)];
    const own = here <= 0 ? [corner] : [];
    return here * there < 0 ? [...own, { at: crossing(corner.at, next.at, y), smooth: false }] : own;
  });
  return kept.length < 3 ? [] : kept;
}

/** Where the line from a to b crosses `y`; they lie on different sides of it. */
export function crossing(a: PlanPoint, b: PlanPoint, y: number): PlanPoint {
  const share = (y - a[1]) / (b[1] - a[1]);
  return [a[0] + (b[0] - a[0]) * share, y];
}
