import type { Furniture, FurnitureKind } from "../../plan/plan";
import { clearest, type Drawn } from "../clear-lettering";
import type { DisplayItem, DrawingPoint, Lettering } from "../display-list";
import { drawBed, drawBench, drawChair, drawSofa, drawStool } from "../furniture-symbols/draw-seats";
import { drawPiano, drawStove } from "../furniture-symbols/draw-stove-and-piano";
import { drawBookcase, drawBox, drawChest, drawCounter, drawDesk, drawTable } from "../furniture-symbols/draw-tables";
import type { FurnitureSymbol } from "../furniture-symbols/symbol-line";
import { textWidthMm } from "../lettering-box";
import { allInFrame, type LocalFrame } from "../local-frame";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

const SYMBOLS: Readonly<Record<FurnitureKind, FurnitureSymbol>> = {
  box: drawBox,
  table: drawTable,
  chair: drawChair,
  stool: drawStool,
  sofa: drawSofa,
  bed: drawBed,
  desk: drawDesk,
  chest: drawChest,
  bench: drawBench,
  bookcase: drawBookcase,
  stove: drawStove,
  piano: drawPiano,
  counter: drawCounter,
};

/** Clear space kept round a name written on a piece, millimetres of paper. */
const NAME_ROOM_MM = 1.2;

/** A piece of furniture in plan: the symbol of its kind within its bounding box, turned about its centre. */
export function drawFurniture(item: Furniture): readonly DisplayItem[] {
  const frame = furnitureFrame(item);
  return SYMBOLS[item.kind](item.width, item.depth).map(({ name, points, style }, i) =>
    makeStroke(`plan.furniture.${item.id}.${name}`, allInFrame(frame, points), {
      hand: true,
      ...(i === 0 ? { fill: "paper", weight: "thick" } : {}),
      ...style,
    }),
  );
}

/** A piece's name, on it where it crosses nothing there, and else beside it. */
export function letterFurniture(item: Furniture, drawn: Drawn): readonly Lettering[] {
  const heightMm = LETTER_MM.small;
  const mm = drawn.scaleRatio / 1000;
  const text = item.id.toUpperCase();
  const wide = textWidthMm(text, heightMm) + NAME_ROOM_MM;
  const [halfAcross, halfUp] = extents(item);
  const id = `plan.furniture.${item.id}.name`;
  const onIt = makeLettering(id, item.at, text, { heightMm, shiftMm: [0, -heightMm / 2] });
  const fits = inscribed(item) >= Math.hypot(wide, heightMm + NAME_ROOM_MM) * mm;
  const [x, y] = item.at;
  const beside = (at: DrawingPoint, anchor: Lettering["anchor"], shiftMm: Lettering["shiftMm"]) =>
    makeLettering(id, at, text, { heightMm, anchor, shiftMm });
  return [
    clearest(
      [
        ...(fits ? [onIt] : []),
        beside([x, y - halfUp], "middle", [0, -heightMm - 1]),
        beside([x, y + halfUp], "middle", [0, 1]),
        beside([x + halfAcross, y], "start", [1, -heightMm / 2]),
        beside([x - halfAcross, y], "end", [-1, -heightMm / 2]),
      ],
      drawn,
    ),
  ];
}

function furnitureFrame({ at, turn }: Furniture): LocalFrame {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return { origin: at, along: [cos, sin], across: [-sin, cos] };
}

/** Half the room a turned piece takes across and up the plan. */
function extents({ width, depth, turn }: Furniture): readonly [number, number] {
  const [cos, sin] = [Math.abs(Math.cos(turn)), Math.abs(Math.sin(turn))];
  return [(width * cos + depth * sin) / 2, (width * sin + depth * cos) / 2];
}

/** The longest level line through the centre of a piece that stays on it. */
function inscribed({ width, depth, turn }: Furniture): number {
  const [cos, sin] = [Math.abs(Math.cos(turn)), Math.abs(Math.sin(turn))];
  return Math.min(cos > 0 ? width / cos : Number.POSITIVE_INFINITY, sin > 0 ? depth / sin : Number.POSITIVE_INFINITY);
}
