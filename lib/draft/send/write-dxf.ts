import {
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from "@tarikjabiri/dxf";
import type { DisplayItem, DisplayList, DrawingPoint, Lettering, LineType, Stroke } from "../../drawing/display-list";
import { SENT_UNIT_M, type SentUnit } from "./sent-unit";
import { strokeArc } from "./stroke-arc";

const HEADER_UNITS: Readonly<Record<SentUnit, Units>> = {
  inches: Units.Inches,
  feet: Units.Feet,
  millimetres: Units.Millimeters,
  metres: Units.Meters,
};

/** Dashes (above 0) and gaps of each broken line, millimetres of paper. */
const DASHES: Readonly<Record<Exclude<LineType, "solid">, readonly [name: string, dashes: readonly number[]]>> = {
  centre: ["Centre line", [12, -2, 2, -2]],
  plaster: ["Plaster line", [8, -2]],
  hidden: ["Hidden", [2, -1]],
};

export type DxfSheet = {
  readonly list: DisplayList;
  readonly layerOf: (item: DisplayItem) => string;
  readonly unit: SentUnit;
  readonly scaleRatio: number;
  /** Written at the head of the file, where only programs read it, and under the drawing; null for none. */
  readonly caution: string | null;
};

const CAUTION_LAYER = "Caution";
/** Its letters, and how far under the drawing it stands, millimetres of paper. */
const CAUTION_MM = { letters: 2.5, below: 8 } as const;

/**
 * A display list as a DXF file in letters, of the kind that programs read since 2007: true size in `unit`, y up. Broken lines and
 * lettering are as big as on paper at the scale. Tones are left out; what was sampled from an arc is written as that arc.
 */
export function writeDxf({ list, layerOf, unit, scaleRatio, caution }: DxfSheet): string {
  const writer = new DxfWriter();
  writer.setUnits(HEADER_UNITS[unit]);
  writer.setVariable("$MEASUREMENT", { 70: unit === "inches" || unit === "feet" ? 0 : 1 });
  writer.setVariable("$LASTSAVEDBY", { 1: "Plasterline" });
  const size = 1 / SENT_UNIT_M[unit];
  const mm = (scaleRatio / 1000) * size;
  for (const [name, dashes] of Object.values(DASHES))
    writer.addLType(
      name,
      name,
      dashes.map((dash) => dash * mm),
    );
  const layers = new Set<string>();
  for (const item of list) {
    if (item.kind === "stroke" && item.fillOnly) continue;
    const layer = layerOf(item);
    if (!layers.has(layer)) writer.addLayer(layer, 7, "Continuous");
    layers.add(layer);
    if (item.kind === "stroke") addStroke(writer, item, layer, size);
    else addLettering(writer, item, layer, size, mm);
  }
  if (caution === null) return writer.stringify();
  writer.addLayer(CAUTION_LAYER, 7, "Continuous");
  writer.addText(cornerUnder(list, size, mm), CAUTION_MM.letters * mm, caution, { layerName: CAUTION_LAYER });
  // Group 999 is a comment (published DXF reference, from memory).
  return `999\n${caution}\n${writer.stringify()}`;
}

/** Under the lower left corner of all that is drawn. */
function cornerUnder(list: DisplayList, size: number, mm: number) {
  let [left, low] = [Infinity, Infinity];
  for (const item of list)
    for (const [x, y] of item.kind === "stroke" ? item.points : [item.at]) {
      left = Math.min(left, x);
      low = Math.min(low, y);
    }
  return Number.isFinite(left) ? point3d(left * size, low * size - CAUTION_MM.below * mm) : point3d(0, 0);
}

function addStroke(writer: DxfWriter, { points, closed, line }: Stroke, layerName: string, size: number): void {
  const options = { layerName, ...(line === "solid" ? {} : { lineType: DASHES[line][0] }) };
  const place = ([x, y]: DrawingPoint) => point3d(x * size, y * size);
  const round = strokeArc(points, closed);
  const [first, second] = points;
  if (round?.arc) writer.addArc(place(round.centre), round.radius * size, ...round.arc, options);
  else if (round) writer.addCircle(place(round.centre), round.radius * size, options);
  else if (points.length === 2 && first && second) writer.addLine(place(first), place(second), options);
  else if (points.length > 2)
    writer.addLWPolyline(
      points.map(([x, y]) => ({ point: point2d(x * size, y * size) })),
      { ...options, flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
    );
}

const ANCHORS: Readonly<Record<Lettering["anchor"], TextHorizontalAlignment>> = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
};

function addLettering(writer: DxfWriter, item: Lettering, layerName: string, size: number, mm: number): void {
  const { at, text, heightMm, anchor, shiftMm } = item;
  const place = point3d(at[0] * size + shiftMm[0] * mm, at[1] * size + shiftMm[1] * mm);
  const centred = anchor !== "start";
  writer.addText(place, heightMm * mm, text, {
    layerName,
    // Anything but the left of the base line is placed by the second of two points.
    ...(centred
      ? {
          horizontalAlignment: ANCHORS[anchor],
          verticalAlignment: TextVerticalAlignment.BaseLine,
          secondAlignmentPoint: place,
        }
      : {}),
  });
}
