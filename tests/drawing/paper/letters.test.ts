import { readFileSync } from "node:fs";
import fc from "fast-check";
import { create } from "fontkit";
import { describe, expect, it } from "vitest";
import { openFaces } from "@/lib/drawing/paper/faces";
import { breakLines, layOutText } from "@/lib/drawing/paper/lay-out-text";
import { CAP_HEIGHT, letteredWidthMm } from "@/lib/drawing/paper/letter-widths";
import { printableLetters } from "@/lib/drawing/paper/printable-letters";
import { seeded } from "@/tests/seeded";

const FILES = {
  drafting: "architects-daughter/files/architects-daughter-latin-400-normal.woff2",
  plain: "national-park/files/national-park-latin-400-normal.woff2",
  strong: "national-park/files/national-park-latin-600-normal.woff2",
} as const;
const FACES = ["drafting", "plain", "strong"] as const;

/** Outside: the faces' own tables, read by a general font library. */
function fontOf(face: (typeof FACES)[number]) {
  const font = create(readFileSync(`node_modules/@fontsource/${FILES[face]}`));
  if (!("layout" in font)) throw new Error("Not one face.");
  return font;
}

describe("widths of lettering", () => {
  it.each(FACES)("in the %s face are those of its own table", (face) => {
    const font = fontOf(face);
    expect(CAP_HEIGHT[face]).toBeCloseTo(font.capHeight / font.unitsPerEm, 2);
    for (let code = 32; code < 127; code++) {
      const size = 2 / CAP_HEIGHT[face];
      const own = (font.glyphForCodePoint(code).advanceWidth / font.unitsPerEm) * size;
      expect(Math.abs(letteredWidthMm(String.fromCodePoint(code), 2, face) - own)).toBeLessThan(0.002 * size);
    }
  });

  it.each([
    ["", 20, []],
    ["at 4'-6 1/8\" left", 14, ["at", "4'-6 1/8\"", "left"]],
    ["flats 4000 mm high", 16, ["flats", "4000 mm", "high"]],
    ["cut 4 and 12 m in all", 14, ["cut 4 and", "12 m in all"]],
    ["one", 0.1, ["one"]],
    ["  one   two ", 100, ["one two"]],
    // 19 letters of about 1.4 mm fit into 24 mm, 23 do not.
    ["the plaster line is the picture plane", 24, ["the plaster line is", "the picture plane"]],
  ] as const)("break %j at %s mm", (text, widthMm, lines) => {
    expect(breakLines(text, { widthMm, heightMm: 2 })).toEqual(lines);
  });

  it("set a paragraph from the top down, and say where it ends", () => {
    const { list, foot } = layOutText("p", "one two three", { at: [10, -5], widthMm: 12, heightMm: 2 });
    expect(list.map(({ text }) => text)).toEqual(["one two", "three"]);
    expect(list.map(({ at }) => at[1])).toEqual([-7, expect.closeTo(-10.8, 9)]);
    expect(foot).toBeCloseTo(-10.8, 9);
  });
});

describe("faces", () => {
  it.each([
    ["Wyspiański's hall", "drafting", ["architects-daughter", "architects-daughter-more", "architects-daughter"]],
    ["plain", "plain", ["national-park"]],
    ["", "plain", []],
  ] as const)("set %j in those that have its letters", (text, face, files) => {
    const runs = openFaces().runs(text, face);
    expect(runs.map(({ file }) => file)).toEqual(files);
    expect(runs.map((run) => run.text).join("")).toBe(text);
  });

  it.each(FACES)("are cut to letters that they really draw: nothing is set as an empty box, in %s", (face) => {
    const faces = openFaces();
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 12 }), (text) => {
        for (const run of faces.runs(text, face))
          for (const glyph of faces.font(run.file).layout(run.text).glyphs) expect(glyph.id).toBeGreaterThan(0);
      }),
      seeded,
    );
  });
});

describe("a text as it is printed", () => {
  const latin = (letters: string) => /^[ -~é]*$/.test(letters);
  it.each([
    ["what the face has", "Café", "Café"],
    ["a letter and its mark written apart", "Cafe\u0301", "Café"],
    ["a letter without the mark that the face lacks", "Łódź", "?odz"],
    ["letters run together", "ﬁrst № 4", "first No 4"],
    ["an arrow, spelled", "A → B", "A -> B"],
    ["another alphabet", "Ωμ 漢", "?? ?"],
    ["a sign of several characters, once", "👨‍👩‍👧", "?"],
    ["control characters and half a pair", "a\u0000b\tc\ud800", "a b c "],
    ["nothing", "", ""],
  ])("%s", (_, text, printed) => {
    const letters = printableLetters(text, latin);
    expect(letters.map((each) => each.printed).join("")).toBe(printed);
  });

  it("keeps beside it what was written", () => {
    expect(printableLetters("漢→", latin)).toEqual([
      { written: "漢", printed: "?" },
      { written: "→", printed: "->" },
    ]);
  });
});
