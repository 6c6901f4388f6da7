import { describe, expect, it } from "vitest";
import type { DisplayList } from "@/lib/drawing/display-list";
import { letteringBox } from "@/lib/drawing/lettering-box";
import { LINE_WEIGHT_MM } from "@/lib/drawing/line-styles";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import { toSvg } from "@/lib/drawing/to-svg";
import { FOOT_M } from "@/lib/measure/length";

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

describe("a display list as SVG", () => {
  it("is in true paper millimetres: 4 ft at 1/4 in to the foot are an inch", () => {
    const svg = toSvg(LINE, { scaleRatio: 48, title: "A line", marginMm: 5 });
    expect(svg).toContain('d="M5 5L30.4 5"');
    expect(svg).toContain('width="35.4mm" height="10mm" viewBox="0 0 35.4 10"');
  });

  it("has up as up", () => {
    const svg = toSvg(
      [
        makeStroke("up", [
          [0, 0],
          [0, 1],
        ]),
      ],
      { scaleRatio: 100, title: "", marginMm: 0 },
    );
    expect(svg).toContain('d="M0 10L0 0"');
  });

  it("weighs lines thin to thick to extra thick as 1 to 2 to 3", () => {
    // The drafting ratio; theatre standard pens about 0.3, 0.5, 0.7 to 0.9 mm, numbers from memory.
    expect(LINE_WEIGHT_MM.thick).toBe(2 * LINE_WEIGHT_MM.thin);
    expect(LINE_WEIGHT_MM["extra-thick"]).toBe(3 * LINE_WEIGHT_MM.thin);
    expect(toSvg(LINE, { scaleRatio: 48, title: "" })).toContain('stroke-width="0.5"');
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
        { scaleRatio: 50, title: "" },
      );
      return /stroke-dasharray="([^"]*)"/.exec(svg)?.[1] ?? "";
    });
    expect(patterns[0]).toBe("");
    expect(new Set(patterns).size).toBe(4);
  });

  it("escapes what it letters", () => {
    const svg = toSvg([makeLettering("l", [0, 0], `<b> & "8'"`)], { scaleRatio: 50, title: "a < b & c" });
    expect(svg).toContain("&lt;b&gt; &amp; &quot;8'&quot;</text>");
    expect(svg).toContain("<title>a &lt; b &amp; c</title>");
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
    const svg = toSvg(list, { scaleRatio: 50, title: "" });
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
      { scaleRatio: 50, title: "" },
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
    expect(toSvg([lettering], { scaleRatio: 50, title: "" }).match(/<rect/g)).toHaveLength(2);
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
    expect(toSvg(list, { scaleRatio: 50, title: "" })).toBe(toSvg(list, { scaleRatio: 50, title: "" }));
  });

  it("makes an empty sheet of an empty list", () => {
    expect(toSvg([], { scaleRatio: 50, title: "", marginMm: 3 })).toContain('viewBox="0 0 6 6"');
  });
});
