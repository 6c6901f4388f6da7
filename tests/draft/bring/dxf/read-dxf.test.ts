import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MOST_BYTES } from "@/lib/draft/bring/brought";
import { readDxf } from "@/lib/draft/bring/dxf/read-dxf";
import { seeded } from "../../../seeded";
import { broughtOf, linesOn } from "../brought-lines";
import { dxfBytes, dxfText, type Group, line } from "../dxf-text";

const text = (letters: string) => new TextEncoder().encode(letters);
const one = line("Walls", [0, 0], [3, 4]);
const units = (code: number): Group[] => [
  [9, "$INSUNITS"],
  [70, code],
];

describe("a file that is no drawing, or a broken one", () => {
  it.each([
    ["nothing", text(""), "the whole file", /no section/],
    ["a letter", text("Dear colleague,\nplease find"), "line 1", /no DXF file/],
    ["a DWG file", text("AC1032\0\0\0"), "the first line", /DWG/],
    ["no ENTITIES", dxfBytes({ HEADER: [] }), "the whole file", /no section ENTITIES/],
    ["a line lost", text(dxfText({ ENTITIES: one }).replace("LINE\n", "")), /^line \d+$/, /group's number is due/],
    ["cut short", text(dxfText({ ENTITIES: one }).slice(0, -30)), /^line \d+$/, /does not end/],
    ["a block without end", dxfBytes({ BLOCKS: [[0, "BLOCK"], [2, "A"], ...one], ENTITIES: [] }), /^line/, /block/],
    ["too long", new Uint8Array(MOST_BYTES + 1), "the whole file", /megabytes/],
    [
      "bytes cut short",
      new Uint8Array([...text("AutoCAD Binary DXF\r\n\x1a\0"), 0, ...text("SECTION\0"), 2, ...text("ENT")]),
      "byte 31",
      /ends in the middle/,
    ],
  ])("says so plainly: %s", (_, bytes, where, message) => {
    const reading = readDxf(bytes);
    expect(reading.ok).toBe(false);
    if (reading.ok) return;
    expect(reading.problem.where).toMatch(where);
    expect(reading.problem.message).toMatch(message);
    expect(reading.problem.hint).toMatch(/save/);
  });

  it("never throws, however a file is cut or bent", () => {
    const whole = dxfText({
      HEADER: units(6),
      TABLES: [
        [0, "TABLE"],
        [2, "LAYER"],
        [0, "LAYER"],
        [2, "Walls"],
        [70, 0],
        [0, "ENDTAB"],
      ],
      BLOCKS: [[0, "BLOCK"], [2, "A"], ...one, [0, "ENDBLK"]],
      ENTITIES: [
        ...one,
        [0, "POLYLINE"],
        [70, 1],
        [0, "VERTEX"],
        [10, 1],
        [20, 1],
        [0, "SEQEND"],
        [0, "INSERT"],
        [2, "A"],
      ],
    }).split("\n");
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: whole.length - 1 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom("", "0", "10", "BLOCK", "SEQEND", "ENDSEC", "-1", "1e999"),
        (at, taken, put) => {
          const reading = readDxf(text(whole.toSpliced(at, taken, put).join("\n")));
          expect(reading.ok || reading.problem.hint.length > 0).toBe(true);
        },
      ),
      seeded,
    );
  });
});

describe("a large file", () => {
  const lines = (count: number) =>
    dxfBytes({ ENTITIES: Array.from({ length: count }, (_, i) => line("Walls", [i, 0], [i, 1])).flat() });
  it("is read up to its limit, and refused beyond", () => {
    expect(linesOn(broughtOf(readDxf(lines(50_000))), "Walls")).toHaveLength(50_000);
    expect(readDxf(lines(200_001))).toMatchObject({
      ok: false,
      problem: { message: expect.stringMatching(/200,000/) },
    });
  });
});

describe("units", () => {
  it.each([
    [1, 0.0254],
    [2, 0.3048],
    [4, 0.001],
    [5, 0.01],
    [6, 1],
    [10, 0.9144],
  ])("$INSUNITS %i is %f m", (code, metres) => {
    const brought = broughtOf(readDxf(dxfBytes({ HEADER: units(code), ENTITIES: one })));
    expect(linesOn(brought, "Walls")[0]?.points).toEqual([
      [0, 0],
      [3 * metres, 4 * metres],
    ]);
    expect(brought.unit.kind).toBe("stage");
  });

  it("guesses by the size where none is told, in the system it was drawn in", () => {
    const wide = line("Walls", [0, 0], [400, 0]);
    const imperial: Group[] = [
      [9, "$MEASUREMENT"],
      [70, 0],
    ];
    const { unit } = broughtOf(readDxf(dxfBytes({ HEADER: imperial, ENTITIES: wide })));
    expect(unit).toEqual({
      kind: "unknown",
      likely: [
        { name: "inches", metres: 0.0254 },
        { name: "centimetres", metres: 0.01 },
      ],
    });
  });
});

describe("elements", () => {
  it("takes a layer called BLOCK, ENDSEC or __proto__ for a layer", () => {
    const names = ["BLOCK", "ENDBLK", "ENDSEC", "__proto__", "Überzug"];
    const brought = broughtOf(readDxf(dxfBytes({ ENTITIES: names.flatMap((name) => line(name, [0, 0], [1, 0])) })));
    expect(brought.layers.map(({ name }) => name)).toEqual(names);
  });

  it("reads letters of an older code page", () => {
    const head = dxfText({
      HEADER: [
        [9, "$DWGCODEPAGE"],
        [3, "ANSI_1251"],
      ],
      ENTITIES: line("????", [0, 0], [1, 0]),
    });
    const bytes = text(head).map((byte) => (byte === 63 ? 0xd1 : byte));
    expect(broughtOf(readDxf(bytes)).layers[0]?.name).toBe("СССС");
  });

  it("keeps every corner of a polyline whose corners are numbered (group 91)", () => {
    const corners = [0, 1, 2].flatMap((i): Group[] => [
      [10, i],
      [20, i * i],
      [91, i],
    ]);
    const bytes = dxfBytes({ ENTITIES: [[0, "LWPOLYLINE"], [8, "Walls"], [90, 3], [70, 0], ...corners] });
    expect(linesOn(broughtOf(readDxf(bytes)), "Walls")[0]?.points).toEqual([
      [0, 0],
      [1, 1],
      [2, 4],
    ]);
  });

  it("bends a half circle by a bulge of 1, to the right of its chord", () => {
    const bytes = dxfBytes({
      ENTITIES: [
        [0, "LWPOLYLINE"],
        [8, "W"],
        [90, 2],
        [10, 0],
        [20, 0],
        [42, 1],
        [10, 2],
        [20, 0],
      ],
    });
    const bend = linesOn(broughtOf(readDxf(bytes)), "W")[0];
    expect(bend?.curved).toBe(true);
    // Counter-clockwise from (0, 0) to (2, 0) goes below.
    for (const [x, y] of bend?.points ?? []) expect(Math.hypot(x - 1, y)).toBeCloseTo(1, 12);
    expect(Math.min(...(bend?.points ?? []).map(([, y]) => y))).toBeCloseTo(-1, 12);
  });

  it("tells where in the drawing what it passes over lies, in metres, a hatch by its edge", () => {
    const bytes = dxfBytes({
      HEADER: units(2),
      ENTITIES: [
        ...one,
        ...([
          [0, "TEXT"],
          [8, "Notes"],
          [10, 10],
          [20, 20],
          [1, "exit"],
          [0, "HATCH"],
          [8, "Notes"],
          [10, 0],
          [20, 0],
          [91, 1],
          [10, 5],
          [20, 0],
        ] satisfies Group[]),
      ],
    });
    const places = broughtOf(readDxf(bytes)).notUnderstood.map(({ what, at }) => [what, ...at]);
    expect(places).toEqual([
      ["pieces of lettering", [10 * 0.3048, 20 * 0.3048]],
      ["hatchings", [5 * 0.3048, 0]],
    ]);
  });

  it("stops at a block that contains itself, and counts what is not there", () => {
    const insert = (name: string): Group[] => [
      [0, "INSERT"],
      [8, "W"],
      [2, name],
      [10, 0],
      [20, 0],
    ];
    const bytes = dxfBytes({
      BLOCKS: [[0, "BLOCK"], [2, "A"], ...line("0", [0, 0], [1, 0]), ...insert("A"), [0, "ENDBLK"]],
      ENTITIES: [...insert("A"), ...insert("lost"), [0, "3DSOLID"], [8, "W"], [0, "LINE"], [8, "W"], [10, 1]],
    });
    const brought = broughtOf(readDxf(bytes));
    expect(linesOn(brought, "W")).toHaveLength(1);
    expect(brought.notUnderstood.map(({ what, count }) => [what, count])).toEqual(
      expect.arrayContaining([
        ["solids", 1],
        ["blocks that contain themselves", 1],
        ["blocks that the file does not hold", 1],
        ["elements with a number missing", 1],
      ]),
    );
  });

  it("gives up a file whose blocks multiply without end", () => {
    const level = (name: string, of: string): Group[] => [
      [0, "BLOCK"],
      [2, name],
      [0, "INSERT"],
      [2, of],
      [10, 0],
      [20, 0],
      [70, 100],
      [71, 100],
      [0, "ENDBLK"],
    ];
    const bytes = dxfBytes({
      BLOCKS: [...level("A", "B"), ...level("B", "C"), ...level("C", "D"), [0, "BLOCK"], [2, "D"], [0, "ENDBLK"]],
      ENTITIES: [
        [0, "INSERT"],
        [2, "A"],
        [10, 0],
        [20, 0],
      ],
    });
    expect(readDxf(bytes)).toMatchObject({ ok: false, problem: { message: expect.stringMatching(/two million/) } });
  });
});
