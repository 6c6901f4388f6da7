import { describe, expect, it } from "vitest";
import type { DisplayList } from "@/lib/drawing/display-list";
import { letteringBox } from "@/lib/drawing/lettering-box";
import { LINE_WEIGHT_MM } from "@/lib/drawing/line-styles";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import { pageToSvg } from "@/lib/drawing/paper/page-to-svg";
import { FOOT_M } from "@/lib/measure/length";

const toSvg = (list: DisplayList, scaleRatio = 50, title = "") =>
  pageToSvg({ title, widthMm: 60, heightMm: 40, layers: [{ list, scaleRatio, at: [5, 35] }] });

const LINE: DisplayList = [
  makeStroke(
    "line",
    [
      [0, 0],
      [4 * FOOT_M, 0],
    ],
    { weight: "thick" },
  ),
];

describe("a page as SVG", () => {
  it("is in true paper millimetres: 4 ft at 1/4 in to the foot are an inch", () => {
    const svg = toSvg(LINE, 48, "A line");
    expect(svg).toContain('d="M5 35L30.4 35"');
    expect(svg).toContain('width="60mm" height="40mm" viewBox="0 0 60 40"');
  });

  it("has up as up", () => {
    const svg = toSvg(
      [
        makeStroke("up", [
          [0, 0],
          [0, 1],
        ]),
      ],
      100,
    );
    expect(svg).toContain('d="M5 35L5 25"');
  });

  it("weighs lines thin to thick to extra thick as 1 to 2 to 3", () => {
    // The drafting ratio; theatre standard pens about 0.3, 0.5, 0.7 to 0.9 mm, numbers from memory.
    expect(LINE_WEIGHT_MM.thick).toBe(2 * LINE_WEIGHT_MM.thin);
    expect(LINE_WEIGHT_MM["extra-thick"]).toBe(3 * LINE_WEIGHT_MM.thin);
    expect(toSvg(LINE, 48)).toContain('stroke-width="0.5"');
  });

  it("breaks each line type its own way", () => {
    const patterns = (["solid", "centre", "plaster", "hidden"] as const).map((line) => {
      const svg = toSvg(
        [
          makeStroke(
            "l",
            [
              [0, 0],
              [1, 0],
            ],
            { line },
          ),
        ],
        50,
      );
      return /stroke-dasharray="([^"]*)"/.exec(svg)?.[1] ?? "";
    });
    expect(patterns[0]).toBe("");
    expect(new Set(patterns).size).toBe(4);
  });

  it("escapes what it letters", () => {
    const svg = toSvg([makeLettering("l", [0, 0], `<b> & "8'"`)], 50, "a < b & c");
    expect(svg).toContain("&lt;b&gt; &amp; &quot;8'&quot;</tspan></text>");
    expect(svg).toContain("<title>a &lt; b &amp; c</title>");
  });

  it("stays a document whatever a title holds, and leaves letters that our faces lack to those of its reader", () => {
    const svg = toSvg([makeLettering("l", [0, 0], "a\u0000b\ud800漢")], 50, "bell \u0007");
    expect(svg).not.toMatch(/[\p{Cs}]|[^\P{Cc}\n]/u);
    expect(svg).toContain("漢");
    expect(svg).toMatch(/font-family="[\w-]+,sans-serif"/);
  });

  it("puts lettering over lines that came after it, and fills under their own line", () => {
    const list = [
      makeLettering("l", [0, 0], "A"),
      makeStroke(
        "s",
        [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        { closed: true, fill: "floor" },
      ),
    ];
    const svg = toSvg(list, 50);
    expect(svg.indexOf("<text")).toBeGreaterThan(svg.lastIndexOf("<path"));
    expect(svg.match(/<path/g)).toHaveLength(2);
    const tone = toSvg(
      [
        makeStroke(
          "s",
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
          { fill: "floor", fillOnly: true },
        ),
      ],
      50,
    );
    expect(tone.match(/<path/g)).toHaveLength(1);
  });

  it("boxes lettering that asks for it, round the letters", () => {
    const lettering = makeLettering("l", [0, 0], "+2'-0\"", { boxed: true });
    const { left, right, bottom, top } = letteringBox(lettering);
    expect(left).toBeLessThan(0);
    expect(right).toBeCloseTo(-left, 9);
    expect(bottom).toBeLessThan(0);
    expect(top).toBeGreaterThan(lettering.heightMm);
    expect(toSvg([lettering], 50).match(/<path/g)).toHaveLength(2);
  });

  it("is the same bytes every time", () => {
    const list = [
      makeStroke(
        "s",
        [
          [0, 0],
          [3, 1],
        ],
        { hand: true },
      ),
    ];
    expect(toSvg(list, 50)).toBe(toSvg(list, 50));
  });

  it("holds the faces of its letters, and none when nothing is lettered", () => {
    expect(toSvg(LINE)).not.toContain("@font-face");
    const svg = toSvg([makeLettering("l", [0, 0], "A"), makeLettering("m", [0, 0], "B", { face: "plain" })]);
    expect(svg.match(/@font-face/g)).toHaveLength(2);
    expect(svg).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
  });

  it("cuts lines and areas off at a layer's window", () => {
    const list = [
      makeStroke("l", [
        [-5, 0.2],
        [5, 0.2],
      ]),
      makeStroke(
        "a",
        [
          [-5, -5],
          [5, -5],
          [5, 5],
          [-5, 5],
        ],
        { fill: "floor", fillOnly: true },
      ),
    ];
    const layers = [{ list, scaleRatio: 100, at: [30, 20] as const, window: [-1, -1, 1, 1] as const }];
    const svg = pageToSvg({ title: "", widthMm: 60, heightMm: 40, layers });
    expect(svg).toContain('d="M20 18L40 18"');
    // 1 m at 1:100 is 10 mm: the area is the window.
    const area = /<path d="M([^"]*)Z" fill="#f7f6f3"/.exec(svg)?.[1] ?? "";
    expect(new Set(area.split("L"))).toEqual(new Set(["20 30", "40 30", "40 10", "20 10"]));
  });

  it("has letters as outlines where no face may be needed", () => {
    const page = {
      title: "",
      widthMm: 60,
      heightMm: 40,
      layers: [{ list: [makeLettering("l", [0, 0], "AB")], scaleRatio: 50, at: [5, 35] as const }],
    };
    const svg = pageToSvg(page, { text: "outlines", pixels: [120, 80] });
    expect(svg).not.toContain("<text");
    expect(svg).toContain('width="120" height="80" viewBox="0 0 60 40"');
    expect(svg.match(/<path/g)).toHaveLength(2);
  });
});
