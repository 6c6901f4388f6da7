import { GRAND_FROM_M, grandOutline } from "../../plan/solids/furniture/grand-outline";
import { arcPoints } from "../arc-points";
import { type FurnitureSymbol, line, rectangle, type SymbolLine, type SymbolPoint, wholeOutline } from "./symbol-line";

const KEYBOARD_M = 0.2;
/** Key lines are drawn about this far apart, metres: fewer than the keys there are, so that they stay apart on paper. */
const KEY_LINE_M = 0.15;

/** A stove: the hob's plates, and the flue at its back. */
export const drawStove: FurnitureSymbol = (width, depth) => {
  const plate = Math.min(width, depth) * 0.15;
  const flue = Math.min(width, depth) * 0.09;
  const ring = (name: string, at: SymbolPoint, radius: number): SymbolLine => ({
    name,
    points: arcPoints(at, [radius, radius], 0, 2 * Math.PI).slice(0, -1),
    style: { closed: true },
  });
  return [
    wholeOutline(width, depth),
    ring("plate.1", [-width * 0.24, -depth * 0.22], plate),
    ring("plate.2", [width * 0.24, -depth * 0.22], plate),
    ring("plate.3", [-width * 0.24, depth * 0.16], plate),
    ring("plate.4", [width * 0.24, depth * 0.16], plate),
    ring("flue", [0, depth * 0.38], flue),
  ];
};

/** A piano, its keyboard toward its front: an upright, or a grand where its box is deep enough. */
export const drawPiano: FurnitureSymbol = (width, depth) => {
  const keys = -depth / 2 + Math.min(KEYBOARD_M, depth * 0.35);
  const grand = depth >= GRAND_FROM_M;
  const body: readonly SymbolLine[] = grand
    ? [{ name: "outline", points: grandOutline(width, depth), style: { closed: true } }]
    : [wholeOutline(width, depth)];
  return [...body, ...keyboard(width, depth, keys)];
};

function keyboard(width: number, depth: number, back: number): SymbolLine[] {
  const [w, front] = [width / 2, -depth / 2];
  const cheek = width * 0.06;
  const lines = Math.max(3, Math.round((width - 2 * cheek) / KEY_LINE_M));
  return [
    rectangle("keyboard", [-w + cheek, front], [w - cheek, back]),
    ...Array.from({ length: lines - 1 }, (_, i) => {
      const u = -w + cheek + ((i + 1) * (width - 2 * cheek)) / lines;
      return line(`key.${i + 1}`, [u, front], [u, (front + back) / 2]);
    }),
  ];
}
