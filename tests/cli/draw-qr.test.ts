import { describe, expect, it } from "vitest";
import { drawQr } from "@/lib/cli/draw-qr.mjs";

const HALVES: Readonly<Record<string, readonly [number, number]>> = {
  " ": [0, 0],
  "▀": [1, 0],
  "▄": [0, 1],
  "█": [1, 1],
};
const QUIET = 4;

/** The drawing as rows of modules, 1 for dark, without the quiet zone; fails when that is not clear. */
function readModules(drawing: string) {
  const lines = drawing.split("\n").map((line) => [...line].map((half) => HALVES[half] ?? [Number.NaN, Number.NaN]));
  const rows = lines.flatMap((line) => [line.map(([upper]) => upper), line.map(([, lower]) => lower)]);
  const width = rows[0]?.length ?? 0;
  const inside = rows.slice(QUIET, width - QUIET).map((row) => row.slice(QUIET, width - QUIET));
  const dark = (cells: readonly (readonly number[])[]) => cells.flat().reduce((sum, cell) => sum + cell, 0);
  expect(dark(rows)).toBe(dark(inside));
  return inside;
}

// ISO/IEC 18004: three corners carry a finder pattern of 7 x 7 modules (dark ring, light ring, dark 3 x 3), and the
// seventh row and column between them alternate, dark first. From memory of the standard; a scanner finds a code by these.
const FINDER = ["1111111", "1000001", "1011101", "1011101", "1011101", "1000001", "1111111"];

describe("drawQr", () => {
  it.each(["http://192.168.1.20:3000", "http://10.0.0.7:65535"])(
    "draws %s as a scanner expects it",
    async (address) => {
      const modules = readModules(await drawQr(address, { coloured: false }));
      const size = modules.length;
      expect((size - 17) % 4).toBe(0);
      const corner = (top: number, left: number) =>
        modules.slice(top, top + 7).map((row) => row.slice(left, left + 7).join(""));
      expect(corner(0, 0)).toEqual(FINDER);
      expect(corner(0, size - 7)).toEqual(FINDER);
      expect(corner(size - 7, 0)).toEqual(FINDER);
      const between = Array.from({ length: size - 16 }, (_, step) => step + 8);
      expect(between.map((at) => modules[6]?.[at])).toEqual(between.map((at) => 1 - (at % 2)));
      expect(between.map((at) => modules[at]?.[6])).toEqual(between.map((at) => 1 - (at % 2)));
    },
  );

  it("colours every line, and ends every colour", async () => {
    const plain = (await drawQr("http://10.0.0.7:3000", { coloured: false })).split("\n");
    const coloured = (await drawQr("http://10.0.0.7:3000", { coloured: true })).split("\n");
    expect(coloured).toEqual(plain.map((line) => `\u001b[38;5;16m\u001b[48;5;231m${line}\u001b[0m`));
  });
});
