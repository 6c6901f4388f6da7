import { joinSolids } from "../join-solids";
import type { Solid } from "../solid";
import { drawOn, ellipse, panel, type Stroke, stroke } from "./draw-on";
import { legs } from "./legs";
import { block, FRONT, standing } from "./part";
import type { Piece, Stretch } from "./piece";
import { thickness } from "./thickness";

/** A stove at least this high carries a pipe; its cooking top is then lower. Metres. */
const PIPED_FROM_M = 1.2;
const COOKING_UP_M = 0.86;
const LEGS_M = 0.14;
const LEG_M = 0.07;
const TOP_M = 0.05;
const PIPE_M = 0.15;

/** A stove for wood or coal: a body on short legs, an oven door and a fire door, rings on its top, and a pipe if it is high. */
export function stoveSolid(piece: Piece): Solid {
  const { width, depth, height } = piece;
  const [u, v] = [width / 2, depth / 2];
  const piped = height >= PIPED_FROM_M;
  const top = piped ? Math.min(COOKING_UP_M, height * 0.7) : height;
  const under = top - thickness(TOP_M, top, 0.1);
  const low = thickness(LEGS_M, top, 0.2);
  const inset = thickness(0.03, Math.min(width, depth), 0.05);
  const leg = thickness(LEG_M, Math.min(width, depth), 0.14);
  const small = Math.min(width, depth);
  const ring = (name: string, at: readonly [number, number], radius: number): Stroke => ({
    name,
    points: ellipse(at, [radius, radius]).map(([a, b]) => [a, b, top] as const),
    closed: true,
  });
  const rings = [
    ring("ring.1", [-width * 0.24, -depth * 0.22], small * 0.15),
    ring("ring.2", [width * 0.24, -depth * 0.22], small * 0.15),
    ring("ring.3", [-width * 0.24, depth * 0.16], small * 0.15),
    ring("ring.4", [width * 0.24, depth * 0.16], small * 0.15),
  ];
  const pipe = thickness(PIPE_M, small, 0.2) / 2;
  const flue = [0, v - pipe * 1.3] as const;
  const front = -v + inset;
  const body = block(piece, "body", [-u + inset, u - inset], [front, v - inset], [low, under], { hide: ["top"] });
  return joinSolids(
    drawOn(piece, block(piece, "top", [-u, u], [-v, v], [under, top]), "top.top", rings),
    drawOn(piece, body, `body.${FRONT}`, doors(front, [-u + inset, u - inset], [low, under])),
    legs(piece, [-u + inset, u - inset], [front, v - inset], leg, low),
    ...(piped ? [standing(piece, "pipe", ellipse(flue, [pipe, pipe]), [top, height], { smooth: true })] : []),
  );
}

/** A fire door at the left, an oven door at the right with its handle. */
function doors(v: number, [u0, u1]: Stretch, [w0, w1]: Stretch): readonly Stroke[] {
  const at = (share: number) => u0 + (u1 - u0) * share;
  const up = (share: number) => w0 + (w1 - w0) * share;
  return [
    panel("fire-door", v, [at(0.07), at(0.34)], [up(0.5), up(0.88)]),
    panel("ash-door", v, [at(0.07), at(0.34)], [up(0.14), up(0.38)]),
    panel("oven-door", v, [at(0.42), at(0.93)], [up(0.14), up(0.88)]),
    stroke("oven-door.handle", [at(0.5), v, up(0.76)], [at(0.85), v, up(0.76)]),
  ];
}
