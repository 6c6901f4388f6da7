import { arcPoints } from "../arc-points";
import { type FurnitureSymbol, line, rectangle, type SymbolLine, type SymbolPoint, wholeOutline } from "./symbol-line";

/** Deepest a back or an arm is drawn, metres. */
const CHAIR_BACK_M = 0.06;
const SOFA_BACK_M = 0.2;
/** A seat cushion is about this wide, metres. */
const CUSHION_M = 0.65;
const SLAT_M = 0.12;

/** A chair: a seat narrower at the back, and the back itself, a little curved. */
export const drawChair: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const back = Math.min(CHAIR_BACK_M, depth / 5);
  const seat: SymbolPoint[] = [
    [-w, -d],
    [w, -d],
    [w * 0.86, d - back],
    [-w * 0.86, d - back],
  ];
  const bow = arcPoints([0, d - back * 1.6], [w, back * 1.6], Math.PI * 0.98, Math.PI * 0.02);
  const inner = arcPoints([0, d - back * 1.6], [w * 0.9, back * 0.6], Math.PI * 0.02, Math.PI * 0.98);
  return [
    { name: "outline", points: seat, style: { closed: true } },
    { name: "back", points: [...bow, ...inner], style: { closed: true, fill: "paper" } },
  ];
};

/** A stool: a round seat (an ellipse where its box is not square). */
export const drawStool: FurnitureSymbol = (width, depth) => [
  { name: "outline", points: ring(width / 2, depth / 2), style: { closed: true } },
  { name: "rim", points: ring(width * 0.38, depth * 0.38), style: { closed: true } },
];

function ring(u: number, v: number): readonly SymbolPoint[] {
  return arcPoints([0, 0], [u, v], 0, 2 * Math.PI).slice(0, -1);
}

/** A sofa: back, two arms, and the seams between its cushions. */
export const drawSofa: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const back = Math.min(SOFA_BACK_M, depth / 3);
  const arm = Math.min(SOFA_BACK_M, width / 6);
  const cushions = Math.max(1, Math.round((width - 2 * arm) / CUSHION_M));
  const seams = Array.from({ length: cushions - 1 }, (_, i): SymbolLine => {
    const u = -w + arm + ((i + 1) * (width - 2 * arm)) / cushions;
    return line(`seam.${i + 1}`, [u, -d], [u, d - back]);
  });
  return [
    wholeOutline(width, depth),
    line("back", [-w + arm, d - back], [w - arm, d - back]),
    line("arm.left", [-w + arm, -d], [-w + arm, d]),
    line("arm.right", [w - arm, -d], [w - arm, d]),
    ...seams,
  ];
};

/** A bench: slats along its length. */
export const drawBench: FurnitureSymbol = (width, depth) => {
  const slats = Math.max(2, Math.min(5, Math.round(Math.min(width, depth) / SLAT_M)));
  const across = width >= depth;
  const gaps = Array.from({ length: slats - 1 }, (_, i): SymbolLine => {
    const share = (i + 1) / slats - 0.5;
    return across
      ? line(`slat.${i + 1}`, [-width / 2, depth * share], [width / 2, depth * share])
      : line(`slat.${i + 1}`, [width * share, -depth / 2], [width * share, depth / 2]);
  });
  return [wholeOutline(width, depth), ...gaps];
};

/** A bed: its head at the back with a pillow or two, and the cover turned down across it. */
export const drawBed: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const board = depth * 0.03;
  const pillowDepth = Math.min(0.4, depth * 0.2);
  const top = d - board - pillowDepth * 0.2;
  const pillows = width > 1.25 ? 2 : 1;
  const room = width / pillows;
  const cover = top - pillowDepth * 1.35;
  return [
    wholeOutline(width, depth),
    line("headboard", [-w, d - board], [w, d - board]),
    ...Array.from({ length: pillows }, (_, i) => {
      const left = -w + i * room;
      return rectangle(`pillow.${i + 1}`, [left + room * 0.12, top - pillowDepth], [left + room * 0.88, top]);
    }),
    line("cover", [-w, cover], [w, cover]),
    line("turn-down", [w, cover - depth * 0.12], [w - width * 0.4, cover]),
  ];
};
