import type { PlaneBox } from "./clear-lettering";
import { displayBounds } from "./display-bounds";
import type { DisplayList, DrawingPoint, Lettering, Pencil, Stroke, Tone } from "./display-list";
import { handPath, ruledPath } from "./hand-stroke";
import { CAP_SHARE, letteringBox } from "./lettering-box";
import { DASH_MM, LINE_WEIGHT_MM } from "./line-styles";

const PENCIL: Readonly<Record<Pencil, string>> = { graphite: "#2b2926", blue: "#1f5fa8", red: "#b3322c" };
const TONE: Readonly<Record<Tone, string>> = {
  paper: "#f6f0df",
  floor: "#eee4cd",
  wall: "#cfc6b3",
  ink: "#000000",
  none: "none",
};
const FAINT = 0.5;
/** Lettering breaks the lines it crosses by this much, millimetres. */
const HALO_MM = 0.9;

export type SvgOptions = {
  /** Stage metres to paper metres: 48 for `1/4in=1ft`. */
  readonly scaleRatio: number;
  readonly title: string;
  /** What to show, metres; left out, all of the list. */
  readonly window?: PlaneBox;
  readonly marginMm?: number;
};

/**
 * A display list as an SVG document in real paper millimetres at a drawing scale: printed at 100 %, it can be measured with a
 * scale rule. An empty list gives an empty sheet of the margin's size.
 */
export function toSvg(list: DisplayList, { scaleRatio, title, window, marginMm = 8 }: SvgOptions): string {
  const perMetre = 1000 / scaleRatio;
  const [left, bottom, right, top] = window ?? displayBounds(list, scaleRatio) ?? [0, 0, 0, 0];
  const width = round((right - left) * perMetre + 2 * marginMm);
  const height = round((top - bottom) * perMetre + 2 * marginMm);
  const onPaper = ([x, y]: DrawingPoint): DrawingPoint => [
    (x - left) * perMetre + marginMm,
    (top - y) * perMetre + marginMm,
  ];
  const strokes = list.flatMap((item) => (item.kind === "stroke" ? [strokeSvg(item, onPaper)] : []));
  // Lettering goes over all lines, whatever came after it, so that it stays readable.
  const letterings = list.flatMap((item) => (item.kind === "lettering" ? [letteringSvg(item, onPaper)] : []));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="'Architects Daughter', sans-serif" stroke-linecap="round" stroke-linejoin="round">`,
    `<title>${escapeText(title)}</title>`,
    `<rect width="${width}" height="${height}" fill="${TONE.paper}"/>`,
    ...strokes,
    ...letterings,
    "</svg>",
    "",
  ].join("\n");
}

type ToPaper = (point: DrawingPoint) => DrawingPoint;

function strokeSvg(stroke: Stroke, onPaper: ToPaper): string {
  const points = stroke.points.map(onPaper);
  const fill =
    stroke.fill === "none"
      ? ""
      : `<path d="${ruledPath(points, stroke.closed)}" fill="${TONE[stroke.fill]}" stroke="none"/>`;
  if (stroke.fillOnly) return fill;
  const d = stroke.hand
    ? handPath(points, stroke.id, { unitsPerMm: 1, closed: stroke.closed })
    : ruledPath(points, stroke.closed);
  const dash = DASH_MM[stroke.line];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(" ")}" stroke-linecap="butt"` : "";
  const faint = stroke.faint ? ` stroke-opacity="${FAINT}"` : "";
  return `${fill}<path d="${d}" fill="none" stroke="${PENCIL[stroke.pencil]}" stroke-width="${LINE_WEIGHT_MM[stroke.weight]}"${dashes}${faint}/>`;
}

function letteringSvg(lettering: Lettering, onPaper: ToPaper): string {
  const [x, y] = onPaper(lettering.at);
  const [right, up] = lettering.shiftMm;
  const pencil = PENCIL[lettering.pencil];
  const box = lettering.boxed ? boxSvg(lettering, [x, y], pencil) : "";
  const faint = lettering.faint ? ` fill-opacity="${FAINT}"` : "";
  return `${box}<text x="${round(x + right)}" y="${round(y - up)}" font-size="${round(lettering.heightMm / CAP_SHARE)}" text-anchor="${lettering.anchor}" fill="${pencil}"${faint} stroke="${TONE.paper}" stroke-width="${HALO_MM}" paint-order="stroke">${escapeText(lettering.text)}</text>`;
}

function boxSvg(lettering: Lettering, [x, y]: DrawingPoint, pencil: string): string {
  const { left, right, bottom, top } = letteringBox(lettering);
  return `<rect x="${round(x + left)}" y="${round(y - top)}" width="${round(right - left)}" height="${round(top - bottom)}" fill="${TONE.paper}" stroke="${pencil}" stroke-width="${LINE_WEIGHT_MM.thin}"/>`;
}

function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
