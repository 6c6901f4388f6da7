import { distance, subtract, unit } from "../../../geometry/vector";
import type { BroughtLine, BroughtPoint } from "../brought";
import type { PointedLine } from "./place-frame";

/** Of a layer's pieces the longest are looked at; a line that runs through a plan is among them, broken into dashes or not. */
const MOST_PIECES = 400;
/** Pieces lie on one line that leave it by no more than this share of the longest one. */
const IN_LINE = 0.002;

/** The straight lines that the pieces of some lines lie on, from end to end, the longest first: one drawn in dashes is one. */
export function lineSpans(lines: readonly BroughtLine[]): readonly PointedLine[] {
  const pieces = lines
    .filter(({ curved }) => !curved)
    .flatMap(({ points }) => points.slice(1).map((b, i): PointedLine => [points[i] as BroughtPoint, b]))
    .filter(([a, b]) => distance(a, b) > 0)
    .toSorted((one, other) => distance(...other) - distance(...one))
    .slice(0, MOST_PIECES);
  const slack = pieces[0] ? IN_LINE * distance(...pieces[0]) : 0;
  const spans: Span[] = [];
  for (const piece of pieces) {
    const span = spans.find((each) => piece.every((at) => Math.abs(placeOn(each, at)[1]) <= slack));
    if (span) {
      for (const at of piece) {
        const [along] = placeOn(span, at);
        span.from = Math.min(span.from, along);
        span.to = Math.max(span.to, along);
      }
    } else {
      const along = unit(subtract(piece[1], piece[0]));
      if (along) spans.push({ origin: piece[0], along, from: 0, to: distance(...piece) });
    }
  }
  return spans
    .toSorted((one, other) => other.to - other.from - (one.to - one.from))
    .map((span): PointedLine => [placeAt(span, span.from), placeAt(span, span.to)]);
}

type Span = { readonly origin: BroughtPoint; readonly along: BroughtPoint; from: number; to: number };

function placeOn({ origin, along }: Pick<Span, "origin" | "along">, at: BroughtPoint): readonly [number, number] {
  const [x, y] = subtract(at, origin);
  return [x * along[0] + y * along[1], along[0] * y - along[1] * x];
}

function placeAt({ origin, along }: Span, share: number): BroughtPoint {
  return [origin[0] + along[0] * share, origin[1] + along[1] * share];
}
