import { cross, subtract, unit } from "../../../geometry/vector";
import type { Brought, BroughtLayer, BroughtPoint } from "../brought";
import { guessLayerUse } from "./guess-layer-use";
import { lineSpans } from "./line-spans";
import { type MirrorEnds, mirrorEnds, mirrorShare } from "./mirror-share";
import type { PointedLine } from "./place-frame";

/** A line of the drawing that may be meant, with the reason in a sentence: offered to the author, never taken by itself. */
export type FoundLine = { readonly line: PointedLine; readonly why: string };
export type FoundLines = { readonly centreLine: FoundLine | null; readonly plasterLine: FoundLine | null };

/** What layers of these lines are called in offices and shops, in English, German, French, Spanish and Italian (common practice, no source). */
const CENTRE_WORDS =
  /cent(?:re|er)\s?line|\bcl\b|mittel\s?(?:linie|achse)|ligne m[eé]diane|\baxe\b|\beje\b|l[ií]nea (?:central|di mezzo)|mezzeria/i;
const PLASTER_WORDS =
  /plaster\s?line|\bpl\b|\bpros(?:cenium)?\s?line|portal\s?linie|cadre de sc[eè]ne|l[ií]nea (?:de|di) (?:boca|boccascena)/i;
/** A line lies square to another within this, as a sine. */
const SQUARE = 0.05;
/** Walls are alike on both sides of a line when so many of their ends have another for their image. */
const ALIKE = 0.85;
/** The longest lines of the drawing that are tried for it. */
const MOST_TRIED = 60;

/**
 * The centre line and the plaster line of a drawing, by what their layers are called; else the centre line by the walls being alike
 * on both sides of it. The centre line runs from the audience upstage: away from the plaster line to where most of the walls are,
 * or, where that is not known, up the sheet.
 */
export function findLines({ layers }: Pick<Brought, "layers">): FoundLines {
  const shown = layers.filter(({ hidden }) => !hidden);
  const guess = guessLayerUse({ layers: shown });
  const walls = shown.filter(({ name }) => guess[name] === "walls").flatMap(({ lines }) => lines);
  const ends = mirrorEnds(walls.length > 0 ? walls : shown.flatMap(({ lines }) => lines));
  const plaster = byName(shown, PLASTER_WORDS);
  const centre = byName(shown, CENTRE_WORDS);
  const both = centre && centre.layer === plaster?.layer ? tellApart(centre.spans, ends) : null;
  const plasterSpan = both ? both.plaster : plaster?.spans[0];
  const centreSpan = both ? both.centre : centre?.spans.find((span) => !plasterSpan || isSquare(span, plasterSpan));
  const named = (layer: string) => `a line of the layer ${layer}, by its name`;
  const alike = centreSpan ? null : byLikeness(shown, ends, plasterSpan ?? null);
  const line = centreSpan ?? alike;
  return {
    plasterLine: plasterSpan && plaster ? { line: plasterSpan, why: named(plaster.layer) } : null,
    centreLine: line && {
      line: fromAudience(line, plasterSpan ?? null, ends),
      why: centreSpan && centre ? named(centre.layer) : "the line that the walls are alike on both sides of",
    },
  };
}

function byName(layers: readonly BroughtLayer[], words: RegExp) {
  const found = layers
    .filter(({ name }) => words.test(name.replace(/[_.\d-]+/g, " ")))
    .map(({ name, lines }) => ({ layer: name, spans: lineSpans(lines) }));
  return found.find(({ spans }) => spans.length > 0) ?? null;
}

/** Of two square lines on one layer the centre line is the one that the walls are more alike on both sides of. */
function tellApart(spans: readonly PointedLine[], ends: MirrorEnds | null) {
  const [first] = spans;
  const second = first && spans.find((span) => isSquare(span, first));
  if (!first || !second || !ends) return null;
  const [one, other] = [mirrorShare(ends, first), mirrorShare(ends, second)];
  if (one === other) return null;
  return one > other ? { centre: first, plaster: second } : { centre: second, plaster: first };
}

function isSquare(one: PointedLine, other: PointedLine): boolean {
  const [a, b] = [unit(subtract(one[1], one[0])), unit(subtract(other[1], other[0]))];
  return a !== null && b !== null && Math.abs(a[0] * b[0] + a[1] * b[1]) < SQUARE;
}

/** A line that is drawn, or one up or across the sheet through the middle of the walls, that they are alike on both sides of. */
function byLikeness(
  layers: readonly BroughtLayer[],
  ends: MirrorEnds | null,
  plaster: PointedLine | null,
): PointedLine | null {
  if (!ends) return null;
  const { middle, size } = ends;
  const through = ([x, y]: BroughtPoint): PointedLine => [
    [middle[0] - x * size, middle[1] - y * size],
    [middle[0] + x * size, middle[1] + y * size],
  ];
  const drawn = lineSpans(layers.flatMap(({ lines }) => lines)).slice(0, MOST_TRIED);
  const tried = [...drawn, through([0, 0.5]), through([0.5, 0])].filter((line) => !plaster || isSquare(line, plaster));
  let best: { readonly line: PointedLine; readonly share: number } | null = null;
  for (const line of tried) {
    const share = mirrorShare(ends, line);
    if (share >= ALIKE && share > (best?.share ?? 0)) best = { line, share };
  }
  return best?.line ?? null;
}

function fromAudience(line: PointedLine, plaster: PointedLine | null, ends: MirrorEnds | null): PointedLine {
  const turned: PointedLine = [line[1], line[0]];
  const upSheet = line[1][1] > line[0][1] || (line[1][1] === line[0][1] && line[1][0] > line[0][0]);
  if (!plaster || !ends) return upSheet ? line : turned;
  const along = subtract(plaster[1], plaster[0]);
  const side = (at: BroughtPoint) => Math.sign(cross(along, subtract(at, plaster[0])));
  const upstage = Math.sign(ends.ends.reduce((sum, at) => sum + side(at), 0));
  const way = cross(along, subtract(line[1], line[0]));
  return upstage === 0 ? (upSheet ? line : turned) : Math.sign(way) === upstage ? line : turned;
}
