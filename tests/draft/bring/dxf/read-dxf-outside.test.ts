import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import { describe, expect, it } from "vitest";
import { broughtBounds } from "@/lib/draft/bring/brought-bounds";
import { readDxf } from "@/lib/draft/bring/dxf/read-dxf";
import { broughtOf, distanceTo, linesOn } from "../brought-lines";

/**
 * The files in tests/fixtures/draft were written by the Python package ezdxf 1.4.4 (MIT) from a plan of our own, and the lines in
 * the JSON beside each are what that package makes of its blocks, bulges, arcs and curves: a second reader's word for it.
 */
type Expected = { readonly type: string; readonly start: Pair; readonly end: Pair; readonly on: Pair };
type Pair = readonly [number, number];

const require = createRequire(import.meta.url);
const FIXTURES = "tests/fixtures/draft";
/** Metres: a bend is drawn by chords, and so may be off by the height of one. */
const CHORD_M = 2e-3;
const EXACT_M = 1e-9;

describe.each([
  ["leaves-r12.dxf", "leaves-r12.json", 0.001],
  ["leaves-r12-bytes.dxf", "leaves-r12.json", 0.001],
  ["leaves-r2018.dxf", "leaves-r2018.json", 1],
  ["leaves-r2018-bytes.dxf", "leaves-r2018.json", 1],
])("%s", (file, json, metres) => {
  const brought = broughtOf(readDxf(readFileSync(`${FIXTURES}/${file}`)));
  const lines = brought.layers.flatMap((layer) => layer.lines);
  const expected: readonly Expected[] = JSON.parse(readFileSync(`${FIXTURES}/${json}`, "utf8"));

  it.each(expected.map((line) => [line.type, line] as const))(
    "has the %s that ezdxf finds",
    (_, { start, end, on }) => {
      const [from, to, over] = [start, end, on].map(([x, y]) => [x * 0.001, y * 0.001] as const) as [Pair, Pair, Pair];
      const found = lines.some((line) => {
        const scaled = { ...line, points: line.points.map(([x, y]) => [x * metres, y * metres] as const) };
        const reach = line.curved ? CHORD_M : EXACT_M;
        // A polyline is one line here and several there: each end is a corner of it.
        const corner = (at: Pair) => scaled.points.some((p) => Math.hypot(p[0] - at[0], p[1] - at[1]) < EXACT_M);
        return corner(from) && corner(to) && distanceTo(scaled, over) < reach;
      });
      expect(found).toBe(true);
    },
  );

  it("tells its layers, its unit and what was passed over", () => {
    expect(brought.layers.map(({ name, hidden }) => [name, hidden])).toEqual(
      expect.arrayContaining([
        ["Walls", false],
        ["Openings", false],
      ]),
    );
    expect(linesOn(brought, "Openings")).toHaveLength(8);
    expect(brought.notUnderstood).toEqual([
      {
        what: "pieces of lettering",
        count: 1,
        at: expect.anything(),
        where: [expect.stringMatching(/^(line|byte) \d+, layer Notes$/)],
      },
    ]);
    if (metres === 1) expect(brought.unit).toEqual({ kind: "stage", name: "millimetres" });
    else expect(brought.unit).toMatchObject({ kind: "unknown", likely: [{ name: "millimetres" }, {}] });
    expect(brought.layers.filter(({ hidden }) => hidden).map(({ name }) => name)).toEqual(
      metres === 1 ? ["Old ideas"] : [],
    );
  });
});

/**
 * Drawings that several programs have written, read where their packages lie, all MIT: three-dxf 1.3.1 (sample/data/demo.dxf, of
 * 2018), dxf2json 1.0.3 (sample/: R12 from a map program, 2007 and 2013 from drawing programs, up to 6 MB).
 */
describe("drawings in the packages of others", () => {
  const SAMPLES = `${dirname(require.resolve("dxf2json/package.json"))}/sample`;
  const DEMO = `${dirname(require.resolve("three-dxf/package.json"))}/sample/data/demo.dxf`;

  it("reads the demonstration of three-dxf", () => {
    const brought = broughtOf(readDxf(readFileSync(DEMO)));
    expect(brought.unit).toEqual({ kind: "stage", name: "millimetres" });
    // The header's own box ($EXTMIN, $EXTMAX) in millimetres; it takes lettering in as well, so the lines lie within.
    const bounds = broughtBounds(brought.layers);
    expect(bounds?.least[0]).toBeCloseTo(0.009997178975143, 12);
    expect(bounds?.most[0]).toBeLessThan(0.4673566476106875);
    expect(brought.layers.map(({ name }) => name).sort()).toEqual(["0", "BlueLayer"]);
  });

  it("finds the sheet that a real plan of a building stands on, and its doors", () => {
    const brought = broughtOf(readDxf(readFileSync(`${SAMPLES}/file2.dxf`)));
    expect(brought.layers.length).toBeGreaterThan(50);
    expect(linesOn(brought, "DOOR-HARDWARE").length).toBeGreaterThan(10);
    expect(linesOn(brought, "창호")).toHaveLength(4);
  });

  const files = readdirSync(SAMPLES).filter((name) => name.endsWith(".dxf"));
  it("has all six of dxf2json to read", () => expect(files).toHaveLength(6));
  it.each(files)("reads %s without a number amiss", (name) => {
    const brought = broughtOf(readDxf(readFileSync(`${SAMPLES}/${name}`)));
    const points = brought.layers.flatMap(({ lines }) => lines.flatMap((each) => each.points));
    expect(points.length).toBeGreaterThan(7);
    expect(points.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
  });
});
