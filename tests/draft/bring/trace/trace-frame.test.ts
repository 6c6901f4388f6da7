import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyAffine } from "@/lib/draft/bring/affine";
import { sayTrace } from "@/lib/draft/bring/trace/say-trace";
import { pixelsToPlan, type TracePlaces, traceFrame } from "@/lib/draft/bring/trace/trace-frame";
import { INCH_M } from "@/lib/measure/length";
import { seeded } from "../../../seeded";

/** Places agree to this, metres. */
const EXACT_M = 1e-9;

/** A photograph of 1000 by 800 pixels, the lines meeting 100 up, 10 mm of the stage to the pixel. */
const STRAIGHT: TracePlaces = {
  centreLine: [
    [500, 50],
    [500, 700],
  ],
  plasterLine: [
    [100, 100],
    [900, 100],
  ],
  size: [
    [200, 300],
    [500, 700],
  ],
  length: 5,
};

/** What a call to `traceFrame` gave; failing if it gave none. */
function laid(places: TracePlaces) {
  const frame = traceFrame(places);
  if (!frame.ok) throw new Error(frame.say);
  return frame;
}

describe("a photograph under the plan", () => {
  // Worked out by hand: 500 pixels of the diagonal (3, 4, 5) are 5 m.
  it.each([
    { pixel: [500, 100], plan: [0, 0] },
    { pixel: [600, 100], plan: [1, 0] },
    { pixel: [500, 300], plan: [0, 2] },
    { pixel: [0, 0], plan: [-5, -1] },
    { pixel: [1000, 800], plan: [5, 7] },
  ] as const)("puts pixel $pixel at $plan", ({ pixel, plan }) => {
    const { toPlan, metresPerPixel, lean } = laid(STRAIGHT);
    expect(metresPerPixel).toBeCloseTo(0.01, 12);
    expect(lean).toBeCloseTo(0, 12);
    const [x, y] = applyAffine(toPlan, pixel);
    expect(x).toBeCloseTo(plan[0], 9);
    expect(y).toBeCloseTo(plan[1], 9);
  });

  it("takes pixels down from the upper corner as the picture has them", () => {
    const [x, y] = applyAffine(pixelsToPlan(laid(STRAIGHT).toPlan, 800), [600, 700]);
    expect(x).toBeCloseTo(1, 9);
    expect(y).toBeCloseTo(0, 9);
  });

  it("takes the plaster line from either side", () => {
    const [one, other] = STRAIGHT.plasterLine;
    const [x, y] = applyAffine(laid({ ...STRAIGHT, plasterLine: [other, one] }).toPlan, [600, 300]);
    expect(x).toBeCloseTo(1, 9);
    expect(y).toBeCloseTo(2, 9);
  });

  // A sheet on its side and one upside down: the audience is where the first place of the centre line is.
  it.each([
    {
      name: "a quarter turn",
      centreLine: [
        [50, 400],
        [700, 400],
      ],
      plasterLine: [
        [100, 0],
        [100, 800],
      ],
      pixel: [300, 300],
      plan: [1, 2],
    },
    {
      name: "half a turn",
      centreLine: [
        [500, 750],
        [500, 100],
      ],
      plasterLine: [
        [100, 700],
        [900, 700],
      ],
      pixel: [400, 500],
      plan: [1, 2],
    },
  ] as const)("lies right after $name", ({ centreLine, plasterLine, pixel, plan }) => {
    const [x, y] = applyAffine(laid({ ...STRAIGHT, centreLine, plasterLine }).toPlan, pixel);
    expect(x).toBeCloseTo(plan[0], 9);
    expect(y).toBeCloseTo(plan[1], 9);
  });

  // atan(7 / 650) = 0.617 degrees; 6 m upstage 6 * 7 / 650 = 64.6 mm.
  it("leans by as much as the lines are out of square, toward the side they are", () => {
    const toLeft: TracePlaces = {
      ...STRAIGHT,
      centreLine: [
        [500, 50],
        [507, 700],
      ],
    };
    const frame = laid(toLeft);
    expect(frame.lean).toBeCloseTo(Math.atan(7 / 650), 12);
    expect(sayTrace(frame, "m", 6)[0]).toBe(
      "The two lines are 0.6 degrees out of square. The plaster line counts: at the back wall, 6000 mm upstage, the centre line in the photograph lies 65 mm to stage left of the plan's. Pointing alone can make that much.",
    );
    const [top] = [applyAffine(frame.toPlan, [507, 700])];
    expect(top[0] / top[1]).toBeCloseTo(7 / 650, 9);
    const toRight = laid({
      ...toLeft,
      centreLine: [
        [500, 50],
        [480, 700],
      ],
    });
    expect(toRight.lean).toBeCloseTo(-Math.atan(20 / 650), 12);
    expect(sayTrace(toRight, "m", 6)[0]).toMatch(/185 mm to stage right .* more than pointing makes.* at a slant/);
  });

  it("says what a pixel is, and when the known length is too short to tell the scale", () => {
    expect(sayTrace(laid(STRAIGHT), "m", 6)).toEqual([
      "The two lines are square to each other.",
      "A pixel of the photograph is 10 mm on the stage, and nothing can be traced nearer than that.",
    ]);
    const short = laid({
      ...STRAIGHT,
      size: [
        [500, 100],
        [600, 100],
      ],
      length: 40 * INCH_M,
    });
    expect(sayTrace(short, "ft-in", 6).at(-1)).toMatch(/out by 4 percent/);
  });

  it.each([
    {
      name: "two places of the centre line that are one",
      change: {
        centreLine: [
          [5, 5],
          [5, 5],
        ],
      },
      say: /centre line that are apart/,
    },
    {
      name: "two places of the plaster line that are one",
      change: {
        plasterLine: [
          [5, 5],
          [5, 5],
        ],
      },
      say: /plaster line that are apart/,
    },
    {
      name: "two places of the size that are one",
      change: {
        size: [
          [5, 5],
          [5, 5],
        ],
      },
      say: /two places that are apart/,
    },
    { name: "no length", change: { length: 0 }, say: /a length above 0/ },
    { name: "a length that is none", change: { length: Number.NaN }, say: /a length above 0/ },
    {
      name: "lines along each other",
      change: {
        centreLine: [
          [100, 100],
          [900, 100],
        ],
      },
      say: /90 degrees out of square/,
    },
    {
      name: "lines at a slant",
      change: {
        centreLine: [
          [500, 50],
          [600, 700],
        ],
      },
      say: /9 degrees out of square.*straightened first/,
    },
  ] as const)("says so in a sentence: $name", ({ change, say }) => {
    const frame = traceFrame({ ...STRAIGHT, ...(change as Partial<TracePlaces>) });
    expect(frame.ok).toBe(false);
    if (!frame.ok) expect(frame.say).toMatch(say);
  });

  it("puts what was pointed at where it belongs, however the photograph lies", () => {
    const pixel = fc.double({ min: 0, max: 4000, noNaN: true });
    const photograph = fc.record({
      turn: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
      metresPerPixel: fc.double({ min: 0.0005, max: 0.1, noNaN: true }),
      origin: fc.tuple(pixel, pixel),
      upstage: fc.double({ min: 100, max: 2000, noNaN: true }),
      across: fc.tuple(
        fc.double({ min: -2000, max: -50, noNaN: true }),
        fc.double({ min: 50, max: 2000, noNaN: true }),
      ),
      size: fc.tuple(fc.double({ min: -800, max: 800, noNaN: true }), fc.double({ min: 20, max: 1500, noNaN: true })),
    });
    fc.assert(
      fc.property(photograph, ({ turn, metresPerPixel, origin, upstage, across, size }) => {
        const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
        // A place of the plan, in pixels of its length from the origin, as the photograph has it.
        const seen = (x: number, y: number) => [origin[0] + cos * x - sin * y, origin[1] + sin * x + cos * y] as const;
        const places: TracePlaces = {
          centreLine: [seen(0, -20), seen(0, upstage)],
          plasterLine: [seen(across[0], 0), seen(across[1], 0)],
          size: [seen(0, 0), seen(...size)],
          length: Math.hypot(...size) * metresPerPixel,
        };
        const { toPlan } = laid(places);
        const off = (at: readonly [number, number], x: number, y: number) =>
          Math.hypot(...applyAffine(toPlan, at).map((value, i) => value - ([x, y][i] as number) * metresPerPixel));
        expect(off(places.centreLine[1], 0, upstage)).toBeLessThan(EXACT_M);
        expect(off(places.plasterLine[0], across[0], 0)).toBeLessThan(EXACT_M);
        expect(off(places.plasterLine[1], across[1], 0)).toBeLessThan(EXACT_M);
        expect(off(places.size[1], ...size)).toBeLessThan(EXACT_M);
        expect(off(seen(123, 456), 123, 456)).toBeLessThan(EXACT_M);
      }),
      seeded,
    );
  });
});
