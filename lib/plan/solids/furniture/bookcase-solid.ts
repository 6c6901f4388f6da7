import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, stroke } from "./draw-on";
import { block, FRONT } from "./part";
import type { Piece, Stretch } from "./piece";
import { partsIn, thickness } from "./thickness";

const BOARD_M = 0.035;
const BACK_M = 0.02;
const SHELF_M = 0.36;
const BAY_M = 0.9;
const PLINTH_M = 0.08;
const BOOK_M = 0.07;
/** How much of a shelf's width its books take, and of its height, shelf by shelf from the bottom. */
const ROWS: readonly (readonly [from: number, to: number, high: number])[] = [
  [0, 0.7, 0.78],
  [0.25, 1, 0.68],
  [0, 0.55, 0.8],
  [0.4, 0.95, 0.72],
  [0, 0.82, 0.66],
];
/** Breadths of books standing side by side, in shares of the usual one. */
const SPINES = [1, 1.4, 0.8, 1.1, 1.7, 0.9];

/** A bookcase one can look into: sides, back, top and shelves, uprights between its bays, and rows of books. */
export function bookcaseSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const board = thickness(BOARD_M, Math.min(width, height), 0.06);
  const back = v - thickness(BACK_M, depth, 0.1);
  const plinth = thickness(PLINTH_M, height, 0.1);
  const bays = partsIn(width, BAY_M, 1, 8);
  const shelves = partsIn(height - plinth - board, SHELF_M, 1, 12);
  const pitch = (height - plinth - board) / shelves;
  const bay = (width - board) / bays;
  const hide = ["upright"];
  const uprights = Array.from({ length: bays + 1 }, (_, i): Stretch => [-u + i * bay, -u + i * bay + board]);
  const rooms = Array.from({ length: bays }, (_, i): Stretch => [-u + i * bay + board, -u + (i + 1) * bay]);
  const levels = Array.from({ length: shelves }, (_, k) => plinth + k * pitch);
  return joinSolids(
    block(piece, "top", [-u, u], [-v, v], [height - board, height]),
    ...uprights.map((across, i) =>
      block(piece, `upright.${i + 1}`, across, [-v, v], ["floor", height - board], { hide: ["top"] }),
    ),
    ...rooms.flatMap((across, i) => [
      block(piece, `back.${i + 1}`, across, [back, v], [plinth, height - board], {
        hide: ["upright", "top", "bottom"],
      }),
      block(piece, `plinth.${i + 1}`, across, [-v + depth * 0.06, v], ["floor", plinth - board * 0.5], {
        hide: ["upright", "top"],
      }),
      ...levels.flatMap((level, k) => [
        block(piece, `shelf.${i + 1}.${k + 1}`, across, [-v, back], [level - board * 0.5, level + board * 0.5], {
          hide,
        }),
        books(
          piece,
          `books.${i + 1}.${k + 1}`,
          across,
          [-v + depth * 0.25, back],
          [level + board * 0.5, level + pitch - board * 0.5],
          i * 2 + k,
        ),
      ]),
    ]),
  );
}

/** A row of books as one mass, their backs drawn on it. */
function books(
  piece: Piece,
  name: string,
  [u0, u1]: Stretch,
  away: Stretch,
  [low, high]: Stretch,
  which: number,
): Solid {
  const [from, to, share] = ROWS[which % ROWS.length] as (typeof ROWS)[number];
  const row: Stretch = [u0 + (u1 - u0) * from, u0 + (u1 - u0) * to];
  const top = low + (high - low) * share;
  const solid = block(piece, name, row, away, [low, top]);
  const usual = Math.max(BOOK_M, (row[1] - row[0]) / 12);
  const strokes = [];
  for (let at = row[0], i = which; ; i++) {
    at += usual * (SPINES[i % SPINES.length] as number);
    if (at > row[1] - usual * 0.6) break;
    strokes.push(stroke(`${name}.${strokes.length + 1}`, [at, away[0], low], [at, away[0], top]));
  }
  return drawOn(piece, solid, `${name}.${FRONT}`, strokes);
}
