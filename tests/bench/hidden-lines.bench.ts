import { bench, describe } from "vitest";
import { drawOnce } from "@/lib/drawing/hidden-lines/draw-once";
import { intersectionLines } from "@/lib/drawing/hidden-lines/intersection-lines";
import { visibleLines } from "@/lib/drawing/hidden-lines/visible-lines";
import type { Viewer } from "@/lib/stage/viewer";
import { box, join, type Scene } from "../drawing/hidden-lines/scene";
import { startDice } from "../habits/student";

/** Edges of the rooms measured, twelve to a box; the largest is what the whole is promised for. */
const SIZES = [625, 1_250, 2_500, 5_000, 10_000];
const PROMISED = 5_000;
const PROMISED_MS = 1_000;

const ROUNDS = 7;

const viewer: Viewer = { distance: 10, eyeHeight: 2.4, offset: 0.7 };

/**
 * A room 10 m wide and 8 m deep, full of boxes on the floor and on shelves, in which much is behind something. The boxes are
 * the smaller the more there are, as chairs and books are to walls: the same share of the room is filled.
 */
function furnishedRoom(edges: number): Scene {
  const roll = startDice(1435);
  const count = Math.round(edges / 12);
  const size = 10 / Math.cbrt(count);
  return join(
    ...Array.from({ length: count }, (_, i) => {
      const [x, y, z] = [roll() * 10 - 5, roll() * 8, Math.floor(roll() * 6) / 2];
      const [w, d, h] = [roll(), roll(), roll()].map((share) => size * (0.1 + 0.3 * share)) as [number, number, number];
      return box(`box${i}`, [x, x + w], [y, y + d], [z, z + h]);
    }),
  );
}

/** The median of some rounds, milliseconds. */
function time(work: () => void): number {
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return rounds.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] as number;
}

const rooms = SIZES.map((edges) => ({ edges, scene: furnishedRoom(edges) }));

// The first rounds of a fresh process time the compiler, not the work.
for (const { scene } of rooms.slice(0, 3)) drawOnce(visibleLines(scene, viewer));

const measured = rooms.map(({ scene }) => {
  const pierced = intersectionLines(scene.faces);
  const whole = { faces: scene.faces, lines: [...scene.lines, ...pierced] };
  const seen = visibleLines(whole, viewer);
  const through = time(() => intersectionLines(scene.faces));
  const visible = time(() => visibleLines(whole, viewer));
  const once = time(() => drawOnce(seen));
  return { edges: scene.lines.length, pierced: pierced.length, pieces: seen.length, through, visible, once };
});

const ms = (value: number) => `${value.toFixed(1)} ms`.padStart(11);
console.log(
  [
    `Hidden lines, the median of ${ROUNDS} rounds: the time for the visible lines, for where faces pass through one another, and for drawing once.`,
    "   edges   with pierced    pieces seen    visible lines    per n log n    passing through    drawing once",
    ...measured.map(({ edges, pierced, pieces, through, visible, once }) => {
      const n = edges + pierced;
      const share = `${((1e6 * visible) / (n * Math.log2(n))).toFixed(0)} ns`;
      return `${String(edges).padStart(8)}${String(n).padStart(15)}${String(pieces).padStart(15)}      ${ms(visible)}${share.padStart(15)}        ${ms(through)}     ${ms(once)}`;
    }),
  ].join("\n"),
);

const promised = measured[SIZES.indexOf(PROMISED)];
if (!promised) throw new Error(`No room of ${PROMISED} edges was measured.`);
const all = promised.visible + promised.through + promised.once;
if (!(all < PROMISED_MS))
  throw new Error(`${PROMISED} edges took ${Math.round(all)} ms, not less than ${PROMISED_MS}.`);

describe("visible lines of a furnished room", () => {
  for (const { edges, scene } of rooms) {
    bench(`${edges} edges`, () => {
      visibleLines(scene, viewer);
    });
  }
});
