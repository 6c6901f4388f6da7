import type { Brought, BroughtLine } from "@/lib/draft/bring/brought";
import { broughtBounds } from "@/lib/draft/bring/brought-bounds";
import { findLines } from "@/lib/draft/bring/place/find-lines";
import { guessLayerUse } from "@/lib/draft/bring/place/guess-layer-use";
import { layOutPieces } from "@/lib/draft/bring/pointing/lay-out-pieces";
import { type Board, layBoard, toBoard, toSheet } from "../board";
import type { ReadAnswer } from "./messages";

/** Points of a line nearer than this to the one before are drawn as one, millimetres of the board: none of them could be told apart. */
const SAME_MM = 0.004;

/** What the page is given of a drawing that was read. */
export function showDrawing(brought: Brought): ReadAnswer {
  const { file, unit, layers, notUnderstood } = brought;
  const seen = layers.filter(({ hidden }) => !hidden);
  const bounds = broughtBounds(seen) ?? broughtBounds(layers);
  if (!bounds)
    return {
      ok: false,
      problem: {
        where: "the whole file",
        message: "there is no line in it that can be taken over",
        hint: notUnderstood[0]
          ? `it has ${notUnderstood[0].what} and the like alone; save the plan's lines, and bring that`
          : "save the plan's lines as DXF or SVG, and bring that file",
      },
    };
  const board = layBoard(bounds);
  const guess = guessLayerUse(brought);
  return {
    ok: true,
    drawing: {
      file,
      unit,
      notUnderstood,
      bounds,
      found: findLines(brought),
      pieces: layOutPieces(layers),
      layers: layers.map(({ name, hidden, lines }) => ({
        name,
        hidden,
        lines: lines.length,
        guess: (Object.hasOwn(guess, name) && guess[name]) || "ignore",
        paths: pathsOf(lines, board),
      })),
    },
  };
}

/** A layer of fewer lines is one path. */
const FULL_LAYER = 1500;
/** A full one is so many paths across and up the board. */
const TILES = 8;

function pathsOf(lines: readonly BroughtLine[], board: Board): readonly string[] {
  if (lines.length < FULL_LAYER) return [lines.map((line) => pathOf(line, board)).join("")];
  const { left, right, bottom, top } = board.bounds;
  const tiles = new Map<number, string[]>();
  const tile = (value: number, from: number, to: number) =>
    Math.min(Math.max(Math.floor(((value - from) / (to - from)) * TILES), 0), TILES - 1);
  for (const line of lines) {
    const [x, y] = toBoard(board, line.points[0] ?? board.middle);
    const key = tile(x, left, right) * TILES + tile(y, bottom, top);
    const paths = tiles.get(key);
    if (paths) paths.push(pathOf(line, board));
    else tiles.set(key, [pathOf(line, board)]);
  }
  return [...tiles.values()].map((paths) => paths.join(""));
}

function pathOf({ points }: BroughtLine, board: Board): string {
  let path = "";
  let [x, y] = [Number.NaN, Number.NaN];
  for (const [i, at] of points.entries()) {
    const [nextX, nextY] = toSheet(board, at);
    const near = Math.abs(nextX - x) < SAME_MM && Math.abs(nextY - y) < SAME_MM;
    if (near && i < points.length - 1) continue;
    path += `${path ? "L" : "M"}${nextX} ${nextY}`;
    [x, y] = [nextX, nextY];
  }
  return path;
}
