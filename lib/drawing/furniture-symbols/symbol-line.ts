import type { StrokeStyle } from "../make-stroke";

/** A point of a piece's own frame: u to the right and v away from its front, metres from its centre, before turning. */
export type SymbolPoint = readonly [u: number, v: number];

/** One line of a plan symbol. The first line of every symbol is its outline. */
export type SymbolLine = {
  readonly name: string;
  readonly points: readonly SymbolPoint[];
  readonly style?: StrokeStyle;
};

/** A piece of furniture seen from above, its front at v = -depth / 2, filling width by depth. */
export type FurnitureSymbol = (width: number, depth: number) => readonly SymbolLine[];

/** An outline between two opposite corners. */
export function rectangle(name: string, [u0, v0]: SymbolPoint, [u1, v1]: SymbolPoint): SymbolLine {
  return {
    name,
    points: [
      [u0, v0],
      [u1, v0],
      [u1, v1],
      [u0, v1],
    ],
    style: { closed: true },
  };
}

/** The whole piece's own rectangle. */
export function wholeOutline(width: number, depth: number): SymbolLine {
  return rectangle("outline", [-width / 2, -depth / 2], [width / 2, depth / 2]);
}

export function line(name: string, ...points: SymbolPoint[]): SymbolLine {
  return { name, points };
}

/** A rectangle that keeps `inset` from the whole piece's edge. */
export function insetOutline(name: string, width: number, depth: number, inset: number): SymbolLine {
  return rectangle(name, [-width / 2 + inset, -depth / 2 + inset], [width / 2 - inset, depth / 2 - inset]);
}
