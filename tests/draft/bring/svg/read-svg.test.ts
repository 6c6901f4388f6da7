import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { broughtBounds } from "@/lib/draft/bring/brought-bounds";
import { readBrought } from "@/lib/draft/bring/read-brought";
import { readSvg } from "@/lib/draft/bring/svg/read-svg";
import { seeded } from "../../../seeded";
import { broughtOf, distanceTo, linesOn } from "../brought-lines";

const bytes = (text: string) => new TextEncoder().encode(text);
const svg = (inside: string, attributes = "") =>
  bytes(`<svg xmlns="http://www.w3.org/2000/svg" xmlns:x="urn:x" ${attributes}>${inside}</svg>`);
const OUTSIDE = "outside any group";

function pointsOf(inside: string, attributes = "", layer = OUTSIDE) {
  return linesOn(broughtOf(readSvg(svg(inside, attributes))), layer).map(({ points }) =>
    points.map((point) => point.map((value) => Math.round(value * 1e9) / 1e9 + 0)),
  );
}

describe("shapes, with y turned to run up", () => {
  it.each([
    [
      "a line",
      `<line x1="1" y1="2" x2="3" y2="4"/>`,
      [
        [
          [1, -2],
          [3, -4],
        ],
      ],
    ],
    [
      "a polyline",
      `<polyline points="0,0 1,1 2-1"/>`,
      [
        [
          [0, 0],
          [1, -1],
          [2, 1],
        ],
      ],
    ],
    [
      "a polygon",
      `<polygon points="0 0 1 0 1 1"/>`,
      [
        [
          [0, 0],
          [1, 0],
          [1, -1],
          [0, 0],
        ],
      ],
    ],
    [
      "a rectangle",
      `<rect x="1" y="1" width="2" height="3"/>`,
      [
        [
          [1, -1],
          [3, -1],
          [3, -4],
          [1, -4],
          [1, -1],
        ],
      ],
    ],
    [
      "M L H V Z",
      `<path d="M1 1L2 1H4V3Z"/>`,
      [
        [
          [1, -1],
          [2, -1],
          [4, -1],
          [4, -3],
          [1, -1],
        ],
      ],
    ],
    [
      "m l h v z, twice",
      `<path d="m1 1 1 0h2v2zm10 0l1 1"/>`,
      [
        [
          [1, -1],
          [2, -1],
          [4, -1],
          [4, -3],
          [1, -1],
        ],
        [
          [11, -1],
          [12, -2],
        ],
      ],
    ],
  ])("reads %s", (_, inside, expected) => expect(pointsOf(inside)).toEqual(expected));

  // Ends and middles by the definitions in W3C SVG 1.1, chapter 8 (from memory), worked out by hand.
  it.each([
    ["C", `M0 0C0 4 4 4 4 0`, [0, 0], [2, -3], [4, 0]],
    ["c", `M1 0c0 4 4 4 4 0`, [1, 0], [3, -3], [5, 0]],
    ["S after C", `M-4 0C-4 -4 0 -4 0 0S4 4 4 0`, [0, 0], [2, -3], [4, 0]],
    ["Q", `M0 0Q2 4 4 0`, [0, 0], [2, -2], [4, 0]],
    ["T after Q", `M-4 0Q-2 -4 0 0T4 0`, [0, 0], [2, -2], [4, 0]],
    ["A, a half circle", `M0 0A2 2 0 0 0 4 0`, [0, 0], [2, -2], [2, -2]],
  ])("bends %s", (_, d, start, middle, end) => {
    const lines = linesOn(broughtOf(readSvg(svg(`<path d="${d}"/>`))), OUTSIDE);
    const near = (at: readonly number[]) =>
      Math.min(...lines.map((line) => distanceTo(line, [at[0] as number, at[1] as number])));
    for (const at of [start, middle, end]) expect(near(at)).toBeLessThan(5e-3);
    expect(lines.every(({ curved }) => curved)).toBe(true);
  });

  it("draws circles, ellipses and rounded corners", () => {
    const brought = broughtOf(
      readSvg(
        svg(
          `<g id="c"><circle cx="5" cy="5" r="2"/></g><g id="e"><ellipse rx="3" ry="1"/></g><g id="r"><rect width="8" height="4" rx="1"/></g>`,
        ),
      ),
    );
    for (const [x, y] of linesOn(brought, "c")[0]?.points ?? []) expect(Math.hypot(x - 5, y + 5)).toBeCloseTo(2, 9);
    for (const [x, y] of linesOn(brought, "e")[0]?.points ?? []) expect(x ** 2 / 9 + y ** 2).toBeCloseTo(1, 9);
    const rounded = linesOn(brought, "r");
    expect(rounded.filter(({ curved }) => curved)).toHaveLength(4);
    expect(broughtBounds([{ lines: rounded }])).toEqual({ least: [0, -4], most: [8, 0] });
  });
});

describe("groups and copies", () => {
  it("chains transforms from the outermost in", () => {
    expect(
      pointsOf(`<g transform="translate(10,0) rotate(90)"><g transform="scale(2)"><line x2="1" y2="3"/></g></g>`),
    ).toEqual([
      [
        [10, 0],
        [4, -2],
      ],
    ]);
    expect(pointsOf(`<line x2="1" y2="1" transform="matrix(1 2 3 4 5 6)"/>`)).toEqual([
      [
        [5, -6],
        [9, -12],
      ],
    ]);
    expect(pointsOf(`<line x1="1" y1="1" x2="2" y2="1" transform="skewX(45)"/>`)).toEqual([
      [
        [2, -1],
        [3, -1],
      ],
    ]);
    expect(pointsOf(`<line x1="1" x2="2" transform="rotate(90 1 0)"/>`)).toEqual([
      [
        [1, 0],
        [1, -1],
      ],
    ]);
  });

  it("takes the nearest label, else the outermost id, for the layer", () => {
    const brought = broughtOf(
      readSvg(
        svg(`<g id="a"><g id="b"><line x2="1"/></g><g x:label="Walls"><g id="c"><line x2="2"/></g></g></g><line x2="3"/>
          <g x:label="Old" style="fill:none;display:none"><line x2="4"/></g><g id="d"><g visibility="hidden"><line x2="5"/></g></g>`),
      ),
    );
    expect(brought.layers.map(({ name, hidden, lines }) => [name, hidden, lines[0]?.points[1]?.[0]])).toEqual([
      ["a", false, 1],
      ["Walls", false, 2],
      [OUTSIDE, false, 3],
      ["Old", true, 4],
    ]);
    expect(brought.notUnderstood).toMatchObject([{ what: "elements made invisible", count: 1 }]);
  });

  it("copies by use, symbols fitted into their boxes", () => {
    const defs = `<defs><line id="l" x2="1"/><symbol id="s" viewBox="0 0 10 10"><line x2="10" y2="10"/></symbol></defs>`;
    expect(pointsOf(`${defs}<use href="#l" x="5" y="1"/><use x:href="#s" x="1" width="2" height="2"/>`)).toEqual([
      [
        [5, -1],
        [6, -1],
      ],
      [
        [1, 0],
        [3, -2],
      ],
    ]);
  });

  it("counts what is no line", () => {
    const inside = `<text>Up</text><image/><use href="#lost"/><g id="g"><use href="#g"/></g><path d="M0 0 X"/><line x2="1" transform="spin(3)"/>`;
    expect(
      broughtOf(readSvg(svg(inside)))
        .notUnderstood.map(({ what }) => what)
        .toSorted(),
    ).toEqual([
      "copies of something that the file does not hold",
      "copies that contain themselves",
      "elements moved in a way that is not understood",
      "pictures",
      "pieces of lettering",
      "shapes whose numbers cannot be read",
    ]);
  });
});

describe("the size of the paper", () => {
  it.each([
    [`width="420mm" height="297mm" viewBox="0 0 420 297"`, 0.1],
    [`width="42cm" viewBox="0 0 4200 2970"`, 0.01],
    [`width="11in" height="8.5in" viewBox="0 0 1100 850"`, 0.0254],
    [`width="96pt"`, 0.0254 * (100 / 96)],
    [`width="200mm" height="100mm" viewBox="0 0 100 100"`, 0.1],
  ])("%s", (attributes, hundred) => {
    const brought = broughtOf(readSvg(svg(`<line x2="100"/>`, attributes)));
    expect(brought.unit.kind).toBe("paper");
    const points = linesOn(brought, OUTSIDE)[0]?.points ?? [];
    expect((points[1]?.[0] ?? 0) - (points[0]?.[0] ?? 0)).toBeCloseTo(hundred, 12);
  });

  it.each([`width="800" height="600"`, `width="100%" viewBox="0 0 800 600"`, "", `width="800px"`])(
    "is unknown with %s",
    (attributes) => {
      const brought = broughtOf(readSvg(svg(`<line x2="100"/>`, attributes)));
      expect(brought.unit.kind).toBe("unknown");
    },
  );
});

describe("a file that is no SVG, or a broken one", () => {
  it.each([
    ["nothing inside", "", "the first line", /./],
    ["another kind", "<html></html>", "the first element", /<html>/],
    ["cut short", `<svg>\n<g>\n<line x2="1"/>`, "line 3", /broken/],
    ["tags crossed", "<svg><g></svg></g>", "line 1", /broken/],
  ])("says so plainly: %s", (_, text, where, message) => {
    const reading = readBrought(bytes(text));
    expect(reading.ok).toBe(false);
    if (reading.ok) return;
    if (text) expect(reading.problem.where).toBe(where);
    expect(reading.problem.message).toMatch(message);
    expect(reading.problem.hint).toMatch(/save/);
  });

  it("stops at copies that multiply, and at groups too deep", () => {
    const levels = Array.from(
      { length: 8 },
      (_, i) => `<g id="n${i}">${`<use href="#n${i + 1}"/>`.repeat(10)}</g>`,
    ).join("");
    expect(readSvg(svg(`<defs>${levels}</defs><use href="#n0"/>`)).ok).toBe(false);
    expect(readSvg(svg("<g>".repeat(600) + "</g>".repeat(600)))).toMatchObject({ ok: false });
  });

  it("reads names that a file declares for its own texts", () => {
    const text = `<!DOCTYPE svg [ <!ENTITY ns "http://www.w3.org/2000/svg"> <!ENTITY w "7"> ]>\n<svg xmlns="&ns;"><line x2="&w;"/></svg>`;
    expect(linesOn(broughtOf(readBrought(bytes(text))), OUTSIDE)[0]?.points[1]?.[0]).toBe(7);
  });

  it("reads a hundred thousand lines, and refuses more elements than a plan can have", () => {
    const lines = (count: number) => svg(`<line x2="1"/>`.repeat(count));
    expect(linesOn(broughtOf(readSvg(lines(150_000))), OUTSIDE)).toHaveLength(150_000);
    expect(readSvg(lines(200_001))).toMatchObject({
      ok: false,
      problem: { message: expect.stringMatching(/200,000/) },
    });
  });

  it("never throws, however it is cut or bent", () => {
    const whole = `<svg xmlns="u" width="3cm" viewBox="0 0 3 3"><g id="a" transform="rotate(3)"><path d="M0 0A1 1 0 0 1 2 2zC1 2"/></g><use href="#a"/></svg>`;
    fc.assert(
      fc.property(
        fc.nat(whole.length),
        fc.nat(6),
        fc.constantFrom("", "<", `"`, "0", "e9", "&#0;"),
        (at, taken, put) => {
          const bent = whole.slice(0, at) + put + whole.slice(at + taken);
          const reading = readBrought(bytes(bent));
          expect(reading.ok || reading.problem.hint.length > 0).toBe(true);
        },
      ),
      seeded,
    );
  });
});

describe("told by what is in it", () => {
  it.each([
    ["%PDF-1.7", /trace it/],
    ["\x89PNG\r\n", /trace it/],
    ["AC1032", /DXF/],
  ])("%j", (head, hint) => {
    const reading = readBrought(Uint8Array.from(head, (letter) => letter.charCodeAt(0)));
    expect(!reading.ok && reading.problem.hint).toMatch(hint);
  });
  it("reads SVG with a mark of its byte order before it", () => {
    expect(readBrought(bytes(`\ufeff<?xml version="1.0"?>\n<svg/>`)).ok).toBe(true);
  });
});
