import type { Edge, EdgeKind } from "../plan/edge";
import type { NamedPoints } from "../plan/named-point";
import type { Plan } from "../plan/plan";
import type { PicturePoint } from "../stage/frame";
import type { DrawingPoint, LineType, LineWeight, Pencil, Stroke } from "./display-list";
import { makeStroke } from "./make-stroke";
import { dressOpening } from "./picture-parts/dress-opening";

/** How one drawing of the set differs from another: its pencil, its line, and the name its ids start with. */
export type EdgeStyle = {
  readonly id: string;
  readonly pencil: Pencil;
  readonly line: LineType;
  readonly hand: boolean;
  readonly faint: boolean;
  /** Left out: walls and platforms thick, the rest thin. */
  readonly weight?: LineWeight;
};

/** The student's own lines. */
export const OWN_LINES: EdgeStyle = { id: "own", pencil: "graphite", line: "solid", hand: true, faint: false };
/** What is drawn on the sheet from the start. */
export const GIVEN_LINES: EdgeStyle = { id: "given", pencil: "graphite", line: "solid", hand: true, faint: false };
/** Where the lines should have been: red and dashed, so that they differ by more than colour. */
export const TRUE_LINES: EdgeStyle = { id: "true", pencil: "red", line: "hidden", hand: false, faint: false };

const WEIGHT: Readonly<Record<EdgeKind, LineWeight>> = {
  foot: "thick",
  top: "thick",
  upright: "thick",
  platform: "thick",
  opening: "thin",
  stair: "thin",
  furniture: "thin",
  column: "thin",
  masking: "thin",
};

/** The set that edges belong to, for what is not a straight edge: arch heads and glazing bars. */
export type EdgeSet = { readonly plan: Pick<Plan, "walls">; readonly points: NamedPoints };

/**
 * The edges of the set both of whose ends have a place in the picture, as strokes in picture metres, [X, Z]. Serves the
 * student's marks, the true points and the given ones alike: only `places` and `style` differ.
 *
 * Usage: `drawEdges(listEdges(plan, points), places, OWN_LINES, { plan, points })`. Without the last argument, arches have
 * straight heads and windows no bars. Ids are `own.B.foot~C.foot` and, for an opening's curves and bars,
 * `own.W1.window.bar.level`.
 */
export function drawEdges(
  edges: readonly Edge[],
  places: ReadonlyMap<string, PicturePoint>,
  style: EdgeStyle,
  set?: EdgeSet,
): readonly Stroke[] {
  const dressed = (set?.plan.walls ?? []).flatMap((wall) =>
    wall.openings.map((opening) => ({
      name: `${wall.id}.${opening.id}`,
      ...dressOpening(wall, opening, set?.points ?? new Map(), places),
    })),
  );
  const instead = new Set(dressed.flatMap((opening) => opening.instead));
  const straight = edges.flatMap(({ id, kind, from, to }) => {
    const [a, b] = [places.get(from), places.get(to)];
    if (!a || !b || (kind === "opening" && instead.has(`${from}~${to}`))) return [];
    return [stroke(id, [a, b], WEIGHT[kind], kind === "column" ? "centre" : style.line)];
  });
  const curved = dressed.flatMap(({ name, lines }) =>
    lines.map(({ part, points }) => stroke(`${name}.${part}`, points, WEIGHT.opening, style.line)),
  );
  return [...straight, ...curved];

  function stroke(id: string, points: readonly DrawingPoint[], weight: LineWeight, line: LineType): Stroke {
    const { pencil, hand, faint } = style;
    return makeStroke(`${style.id}.${id}`, points, { weight: style.weight ?? weight, line, pencil, hand, faint });
  }
}
