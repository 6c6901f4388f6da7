import { describe, expect, it } from "vitest";
import { drawSightTicks } from "@/lib/drawing/drawing-pages/draw-sight-ticks";
import { drawingPage } from "@/lib/drawing/drawing-pages/drawing-page";
import { FOOT_M } from "@/lib/measure/length";
import { readTideOffice } from "@/tests/fixtures/tide-office";
import { shippedExercise } from "../practice-sheet/exercises";

const AROUND = [-6, -1, 6, 7] as const;
const ticksOf = (eyeHeight: number, offset = 0) =>
  drawSightTicks(readTideOffice(["/viewer/eyeHeight", eyeHeight], ["/viewer/offset", offset]), AROUND);
const ids = (list: ReturnType<typeof ticksOf>) => list.map(({ id }) => id.replace("picture.sight.", ""));

describe("ticks of the horizon beside a finished picture", () => {
  it("stand at the height of the eye, outside what is drawn, and say it", () => {
    const list = ticksOf(8);
    const tick = (side: string) => list.find(({ id }) => id === `picture.sight.${side}`);
    // 4 mm at 1:48.
    expect(tick("left")).toMatchObject({
      points: [
        [expect.closeTo(-6.192, 9), 8 * FOOT_M],
        [-6, 8 * FOOT_M],
      ],
    });
    expect(tick("right")).toMatchObject({
      points: [
        [6, 8 * FOOT_M],
        [expect.closeTo(6.192, 9), 8 * FOOT_M],
      ],
    });
    expect(list.flatMap((item) => (item.kind === "lettering" ? [item.text] : []))).toEqual(["HORIZON", "8'-0\""]);
  });

  it.each([
    ["in the frame", 8, 0, true],
    ["before a seat at the side", 8, 10, true],
    ["past the frame", 8, 20, false],
    // The opening is 20 ft high; what is drawn reaches to 23.
    ["over the opening", 21, 0, false],
  ])("mark the CVP with a cross %s, where it is seen", (_, eyeHeight, offset, crossed) => {
    const list = ticksOf(eyeHeight, offset);
    expect(ids(list)).toEqual(["left", "right", "name.1", "name.2", ...(crossed ? ["across", "up"] : [])]);
    const across = list.find(({ id }) => id === "picture.sight.across");
    if (across?.kind === "stroke") {
      const [a, b] = across.points as [readonly [number, number], readonly [number, number]];
      expect((a[0] + b[0]) / 2).toBeCloseTo(offset * FOOT_M, 9);
    }
  });

  it("are left out when the eye is over all that is drawn", () => {
    expect(ticksOf(40)).toEqual([]);
  });

  it("stand beside the picture over the plan, and not beside a picture alone", () => {
    const sight = (view: "both" | "picture") =>
      drawingPage(shippedExercise("the-tide-office"), { view })
        ?.page.layers.flatMap(({ list }) => list)
        .filter(({ id }) => id.startsWith("picture.sight."));
    expect(sight("both")).not.toHaveLength(0);
    expect(sight("picture")).toHaveLength(0);
  });
});
