import { ellipsePoints } from "../bend-points";
import { type PathLine, pathLines } from "./path-lines";
import { userUnits } from "./svg-lengths";
import type { SvgElement } from "./svg-tree";

type Pair = readonly [number, number];

export const SHAPES: ReadonlySet<string> = new Set([
  "path",
  "line",
  "polyline",
  "polygon",
  "rect",
  "circle",
  "ellipse",
]);

/** The lines of a shape in its own user units, or null when its numbers make none. */
export function shapeLines({ name, attributes }: SvgElement): readonly PathLine[] | null {
  const number = (key: string) => userUnits(attributes.get(key));
  switch (name) {
    case "path":
      return pathLines(attributes.get("d") ?? "");
    case "line":
      return [straight([number("x1"), number("y1")], [number("x2"), number("y2")])];
    case "polyline":
      return listed(attributes.get("points"), false);
    case "polygon":
      return listed(attributes.get("points"), true);
    case "circle":
      return oval([number("cx"), number("cy")], number("r"), number("r"));
    case "ellipse":
      return oval([number("cx"), number("cy")], number("rx"), number("ry"));
    case "rect":
      return rectangle(attributes);
    default:
      return null;
  }
}

function straight(...points: readonly Pair[]): PathLine {
  return { points, curved: false };
}

function listed(points: string | undefined, closed: boolean): readonly PathLine[] | null {
  const numbers = (points ?? "").match(/[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi)?.map(Number) ?? [];
  const pairs = Array.from(
    { length: Math.floor(numbers.length / 2) },
    (_, i): Pair => [numbers[2 * i] as number, numbers[2 * i + 1] as number],
  );
  const first = pairs[0];
  if (!first || pairs.length < 2) return null;
  return [straight(...pairs, ...(closed ? [first] : []))];
}

function oval(centre: Pair, rx: number, ry: number): readonly PathLine[] | null {
  if (!(rx > 0 && ry > 0)) return null;
  return [{ points: ellipsePoints(centre, [rx, 0], [0, ry], 0, 2 * Math.PI), curved: true }];
}

/** A rectangle; with rounded corners as its path, each radius at most half its side and one standing for the other. */
function rectangle(attributes: SvgElement["attributes"]): readonly PathLine[] | null {
  const number = (key: string) => userUnits(attributes.get(key));
  const [x, y, w, h] = [number("x"), number("y"), number("width"), number("height")];
  if (!(w > 0 && h > 0)) return null;
  const rx = Math.min(w / 2, userUnits(attributes.get("rx"), number("ry")));
  const ry = Math.min(h / 2, userUnits(attributes.get("ry"), number("rx")));
  if (!(rx > 0 && ry > 0)) return [straight([x, y], [x + w, y], [x + w, y + h], [x, y + h], [x, y])];
  const turn = (dx: number, dy: number) => `a${rx} ${ry} 0 0 1 ${dx} ${dy}`;
  return pathLines(
    `M${x + rx} ${y}h${w - 2 * rx}${turn(rx, ry)}v${h - 2 * ry}${turn(-rx, ry)}h${2 * rx - w}${turn(-rx, -ry)}v${2 * ry - h}${turn(rx, -ry)}z`,
  );
}
