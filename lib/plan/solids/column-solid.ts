import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import type { Column } from "../plan";
import { curvePieces } from "./curve-pieces";
import { prism } from "./prism";
import type { Solid, SolidLine } from "./solid";

/** The rings round a column near its foot and top stand this many diameters in, on one at least this many diameters high. */
const RING_AT = 0.45;
const RING_FROM = 4;

/**
 * A column as a prism of so many facets that its top and foot are drawn as true ellipses, its foot on the floor and its top
 * level. A plain ring near either end shows how it turns.
 */
export function columnSolid({ id, at, diameter, height, base }: Column, stage: Pick<Stage, "rake">): Solid {
  const radius = diameter / 2;
  if (!(radius > 0 && height > 0)) return { faces: [], lines: [] };
  const pieces = curvePieces(radius);
  const outline = Array.from({ length: pieces }, (_, i): PlanPoint => {
    const angle = (2 * Math.PI * i) / pieces;
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
  });
  const foot = floorHeight(stage, at[1]) + base;
  const top = foot + height;
  const body = prism({
    id,
    element: id,
    kind: "column",
    outline,
    bottom: { rake: stage.rake, base },
    top,
    smooth: true,
  });
  if (height < diameter * RING_FROM || body.faces.length === 0) return body;
  const places = new Map(body.faces.map((face, place) => [face.id, place]));
  const rings = (
    [
      ["low", foot + diameter * RING_AT],
      ["high", top - diameter * RING_AT],
    ] as const
  ).flatMap(([name, z]) =>
    outline.flatMap((from, i): SolidLine[] => {
      const to = outline[(i + 1) % pieces] as PlanPoint;
      const side = places.get(`${id}.side.${i + 1}`);
      const lift = ([x, y]: PlanPoint): StagePoint => [x, y, z];
      return side === undefined
        ? []
        : [
            {
              id: `${id}.ring.${name}.${i + 1}`,
              element: id,
              from: lift(from),
              to: lift(to),
              faces: [side],
              kind: "detail",
            },
          ];
    }),
  );
  return { faces: body.faces, lines: [...body.lines, ...rings] };
}
