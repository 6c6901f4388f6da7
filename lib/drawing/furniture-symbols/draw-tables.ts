import { type FurnitureSymbol, insetOutline, line, rectangle, type SymbolLine, wholeOutline } from "./symbol-line";

/** The edge moulding of a top, metres. */
const EDGE_M = 0.05;
const SHELF_M = 0.8;
const DRAWER_FRONT_M = 0.04;

function edgeInset(width: number, depth: number): number {
  return Math.min(EDGE_M, width / 8, depth / 8);
}

/** A box: its two diagonals mark it as one. */
export const drawBox: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  return [wholeOutline(width, depth), line("diagonal.1", [-w, -d], [w, d]), line("diagonal.2", [-w, d], [w, -d])];
};

/** A table: the edge round its top. */
export const drawTable: FurnitureSymbol = (width, depth) => [
  wholeOutline(width, depth),
  insetOutline("edge", width, depth, edgeInset(width, depth)),
];

/** A desk: a pedestal hidden under each end of the top, and the board across the knee hole between them. */
export const drawDesk: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const inset = edgeInset(width, depth);
  const pedestal = width * 0.28;
  const hidden = (part: SymbolLine): SymbolLine => ({ ...part, style: { ...part.style, line: "hidden", hand: false } });
  return [
    wholeOutline(width, depth),
    hidden(rectangle("pedestal.left", [-w + inset, -d + inset], [-w + pedestal, d - inset])),
    hidden(rectangle("pedestal.right", [w - pedestal, -d + inset], [w - inset, d - inset])),
    hidden(line("board", [-w + pedestal, 0], [w - pedestal, 0])),
  ];
};

/** A chest: its lid's edge along the front, and the clasp. */
export const drawChest: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const front = -d + Math.min(DRAWER_FRONT_M, depth / 6);
  const clasp = Math.min(0.05, width / 12);
  return [
    wholeOutline(width, depth),
    line("lid", [-w, front], [w, front]),
    rectangle("clasp", [-clasp, -d], [clasp, front + (front + d)]),
    line("strap.left", [-w * 0.6, front], [-w * 0.6, d]),
    line("strap.right", [w * 0.6, front], [w * 0.6, d]),
  ];
};

/** A bookcase: its back board, and the uprights between its bays. */
export const drawBookcase: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const back = d - Math.min(0.03, depth / 8);
  const bays = Math.max(1, Math.round(width / SHELF_M));
  return [
    wholeOutline(width, depth),
    line("back", [-w, back], [w, back]),
    ...Array.from({ length: bays - 1 }, (_, i) => {
      const u = -w + ((i + 1) * width) / bays;
      return line(`upright.${i + 1}`, [u, -d], [u, back]);
    }),
    ...Array.from({ length: bays }, (_, i) => {
      const left = -w + (i * width) / bays;
      return line(`books.${i + 1}`, [left, -d * 0.3], [left + (width / bays) * 0.78, -d * 0.3]);
    }),
  ];
};

/** A counter: the working side's edge along its back, and the flap to pass through at its right. */
export const drawCounter: FurnitureSymbol = (width, depth) => {
  const [w, d] = [width / 2, depth / 2];
  const edge = d - Math.min(0.15, depth / 4);
  const flap = Math.min(0.6, width / 4);
  return [
    wholeOutline(width, depth),
    line("working-side", [-w, edge], [w, edge]),
    { ...line("flap", [w - flap, -d], [w - flap, d]), style: { line: "hidden", hand: false } },
  ];
};
