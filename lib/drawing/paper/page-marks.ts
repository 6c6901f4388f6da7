import type { DisplayItem, DrawingPoint, Lettering, Pencil, Stroke, Tone } from "../display-list";
import { handPath, ruledPath } from "../hand-stroke";
import { letteringBox } from "../lettering-box";
import { DASH_MM, LINE_WEIGHT_MM } from "../line-styles";
import { clipArea, clipLine } from "./clip-to-box";
import { CAP_HEIGHT, type FaceName } from "./letter-widths";
import type { Layer, PaperPage } from "./paper-page";

/** What stands on a page, in millimetres from its upper left corner, right and down: all that a writer of files has to know. */
export type PageMark = AreaMark | LineMark | TextMark;
/** `d` is SVG path data. */
export type AreaMark = { readonly kind: "area"; readonly d: string; readonly tone: Exclude<Tone, "none"> };
export type LineMark = {
  readonly kind: "line";
  readonly d: string;
  readonly pencil: Pencil;
  readonly widthMm: number;
  readonly dashMm: readonly number[];
  readonly strength: number;
};
export type TextMark = {
  readonly kind: "text";
  readonly text: string;
  /** The foot of the letters, at the anchor. */
  readonly at: DrawingPoint;
  readonly anchor: Lettering["anchor"];
  readonly face: FaceName;
  readonly sizeMm: number;
  readonly pencil: Pencil;
  readonly strength: number;
  /** Whether it breaks the lines it crosses: lettering of a drawing does, sentences stand on blank paper. */
  readonly breaksLines: boolean;
};

/** A faint line's strength. */
const FAINT = 0.5;

/** The marks of a page in the order they are put down: of each layer the lines first, then the letters, which stay readable over them. */
export function pageMarks(page: PaperPage): readonly PageMark[] {
  return page.layers.flatMap((layer) => {
    const lines = layer.list.flatMap((item) => (item.kind === "stroke" ? strokeMarks(item, layer) : []));
    const letters = layer.list.flatMap((item) => (item.kind === "lettering" ? letterMarks(item, layer) : []));
    return [...joinAreas(lines), ...letters];
  });
}

function strokeMarks(stroke: Stroke, layer: Layer): readonly PageMark[] {
  const { window } = layer;
  const outline = window && stroke.fill !== "none" ? clipArea(stroke.points, window) : stroke.points;
  const area: readonly PageMark[] =
    stroke.fill === "none" || outline.length < 3
      ? []
      : [{ kind: "area", d: ruledPath(outline.map(toPage(layer)), true), tone: stroke.fill }];
  return stroke.fillOnly ? area : [...area, ...lineMarks(stroke, layer)];
}

function lineMarks(stroke: Stroke, layer: Layer): readonly LineMark[] {
  const whole = inside(stroke.points, layer);
  const runs = whole ? [stroke.points] : clipLine(closedUp(stroke), layer.window ?? [0, 0, 0, 0]);
  return runs.flatMap((run): LineMark[] => {
    const points = run.map(toPage(layer));
    const closed = whole && stroke.closed;
    const d = stroke.hand ? handPath(points, stroke.id, { unitsPerMm: 1, closed }) : ruledPath(points, closed);
    if (d === "") return [];
    const strength = stroke.faint ? FAINT : 1;
    const widthMm = LINE_WEIGHT_MM[stroke.weight];
    return [{ kind: "line", d, pencil: stroke.pencil, widthMm, dashMm: DASH_MM[stroke.line], strength }];
  });
}

function letterMarks(lettering: Lettering, layer: Layer): readonly PageMark[] {
  if (!inside([lettering.at], layer)) return [];
  const [x, y] = toPage(layer)(lettering.at);
  const [right, up] = lettering.shiftMm;
  const face = lettering.face ?? "drafting";
  const text: TextMark = {
    kind: "text",
    text: lettering.text,
    at: [x + right, y - up],
    anchor: lettering.anchor,
    face,
    sizeMm: lettering.heightMm / CAP_HEIGHT[face],
    pencil: lettering.pencil,
    strength: lettering.faint ? FAINT : 1,
    breaksLines: face === "drafting",
  };
  return lettering.boxed ? [...boxMarks(lettering, [x, y]), text] : [text];
}

function boxMarks(lettering: Lettering, [x, y]: DrawingPoint): readonly PageMark[] {
  const box = letteringBox(lettering);
  const [left, right, high, low] = [x + box.left, x + box.right, y - box.top, y - box.bottom];
  const outline: readonly DrawingPoint[] = [
    [left, high],
    [right, high],
    [right, low],
    [left, low],
  ];
  const d = ruledPath(outline, true);
  return [
    { kind: "area", d, tone: "paper" },
    { kind: "line", d, pencil: lettering.pencil, widthMm: LINE_WEIGHT_MM.thin, dashMm: [], strength: 1 },
  ];
}

/** Areas of one tone that follow each other are one area: of squares that touch no seam is seen. */
function joinAreas(marks: readonly PageMark[]): readonly PageMark[] {
  const joined: PageMark[] = [];
  for (const mark of marks) {
    const last = joined.at(-1);
    if (mark.kind === "area" && last?.kind === "area" && last.tone === mark.tone && mark.tone === "ink")
      joined[joined.length - 1] = { ...last, d: last.d + mark.d };
    else joined.push(mark);
  }
  return joined;
}

function toPage({ scaleRatio, at }: Layer): (point: DrawingPoint) => DrawingPoint {
  const perUnit = 1000 / scaleRatio;
  return ([x, y]) => [at[0] + x * perUnit, at[1] - y * perUnit];
}

function inside(points: readonly DrawingPoint[], { window }: Layer): boolean {
  if (!window) return true;
  const [left, bottom, right, top] = window;
  return points.every(([x, y]) => x >= left && x <= right && y >= bottom && y <= top);
}

function closedUp({ points, closed }: DisplayItem & Stroke): readonly DrawingPoint[] {
  return closed && points[0] ? [...points, points[0]] : points;
}
