import { describe, expect, it } from "vitest";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import { FOOT_M } from "@/lib/measure/length";
import { toPaperMm } from "@/lib/measure/scale";
import { firstOf, lastOf, letteringOf, numbersOf, strokeOf } from "./fixtures/find-stroke";

/** The worked observer of TD&T, Winter 1978, p. 13: 40 ft before an opening of 32 by 20 ft, eye 4 ft above the stage floor. */
const OBSERVER = {
  stage: { opening: { width: 32 * FOOT_M, height: 20 * FOOT_M }, depth: 40 * FOOT_M, apron: 8 * FOOT_M, rake: 0 },
  viewer: { distance: 40 * FOOT_M, eyeHeight: 4 * FOOT_M, offset: 0 },
  units: "ft-in",
  scaleRatio: 48,
} as const;

const list = drawSheetPicture(OBSERVER);
const feet = (metres: number) => metres / FOOT_M;

describe("the picture of the empty sheet", () => {
  it("has unique ids and finite numbers only", () => {
    expect(numbersOf(list).every(Number.isFinite)).toBe(true);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
  });

  it("draws the opening at true size, exactly, and a frame wholly outside it", () => {
    const opening = strokeOf(list, "picture.proscenium.opening");
    expect(opening).toMatchObject({ weight: "extra-thick", hand: false, closed: true });
    expect(opening.points.map((p) => p.map((v) => Math.round(feet(v) * 1e6) / 1e6))).toEqual([
      [-16, 0],
      [-16, 20],
      [16, 20],
      [16, 0],
    ]);
    const around = list.filter(({ id }) => /proscenium\.(frame|moulding|cornice)/.test(id));
    expect(around.length).toBeGreaterThan(2);
    for (const item of around)
      if (item.kind === "stroke")
        for (const [x, z] of item.points) expect(Math.abs(feet(x)) > 16 || feet(z) > 20).toBe(true);
  });

  it("halves the back wall that stands as far behind the plaster line as the eye before it", () => {
    // s = D / (D + y) = 1/2, about the CVP at 4 ft: feet at 4 - 4/2 = 2 ft, tops at 4 + 16/2 = 12 ft. By hand.
    const wall = strokeOf(list, "picture.stage.back-wall").points.map((p) => p.map(feet));
    for (const [i, [x, z]] of [
      [-8, 2],
      [-8, 12],
      [8, 12],
      [8, 2],
    ].entries()) {
      expect(wall[i]?.[0]).toBeCloseTo(x as number, 9);
      expect(wall[i]?.[1]).toBeCloseTo(z as number, 9);
    }
  });

  it("runs the apron forward along the same rays", () => {
    // 8 ft nearer: s = 40/32 = 1.25; X = 16 x 1.25 = 20 ft, Z = 4 - 4 x 1.25 = -1 ft. By hand.
    const edge = strokeOf(list, "picture.stage.apron");
    expect(feet(firstOf(edge)[0])).toBeCloseTo(-20, 9);
    expect(feet(lastOf(edge)[0])).toBeCloseTo(20, 9);
    expect(feet(lastOf(edge)[1])).toBeCloseTo(-1, 9);
  });

  it("letters the horizon with its height, and marks the CVP on it", () => {
    expect(letteringOf(list, "picture.horizon.name").text).toBe("HORIZON 4'-0\"");
    expect(strokeOf(list, "picture.horizon").points.map(([, z]) => feet(z))).toEqual([4, 4]);
    const cross = [...strokeOf(list, "picture.cvp.across").points, ...strokeOf(list, "picture.cvp.up").points];
    expect(cross.reduce((sum, [x]) => sum + x, 0)).toBeCloseTo(0, 9);
    expect(cross.reduce((sum, [, z]) => sum + feet(z), 0) / 4).toBeCloseTo(4, 9);
  });

  it("rules the plaster line in true feet: 5 ft are 1 1/4 in of paper at 1/4 in to the foot", () => {
    const ticks = list.filter((item) => /^picture\.rule\.-?\d+$/.test(item.id));
    expect(ticks).toHaveLength(33);
    expect(toPaperMm(firstOf(strokeOf(list, "picture.rule.5"))[0], 48)).toBeCloseTo(1.25 * 25.4, 9);
    const length = (id: string) => -lastOf(strokeOf(list, id))[1];
    expect(length("picture.rule.5")).toBeGreaterThan(length("picture.rule.4"));
    const figures = list.flatMap((item) =>
      item.kind === "lettering" && item.id.startsWith("picture.rule") ? [item.text] : [],
    );
    expect(figures).toEqual(["15'", "10'", "5'", "0", "5'", "10'", "15'"]);
    expect(letteringOf(list, "picture.rule.0.figure").at).toEqual([0, 0]);
  });

  it("rules it in half metres, numbered each metre", () => {
    const metric = drawSheetPicture({
      ...OBSERVER,
      units: "m",
      scaleRatio: 50,
      stage: { ...OBSERVER.stage, opening: { width: 5, height: 4 } },
    });
    expect(metric.filter((item) => /^picture\.rule\.-?\d+$/.test(item.id))).toHaveLength(11);
    expect(firstOf(strokeOf(metric, "picture.rule.2"))[0]).toBe(1);
    const figures = metric.flatMap((item) =>
      item.kind === "lettering" && item.id.startsWith("picture.rule") ? [item.text] : [],
    );
    expect(figures).toEqual(["2 m", "1 m", "0", "1 m", "2 m"]);
  });

  it("keeps the numerals off the apron's edge", () => {
    for (const apron of [0, 1, 2, 3, 4, 5, 6, 8]) {
      const stage = { ...OBSERVER.stage, apron: apron * FOOT_M };
      const drawn = drawSheetPicture({ ...OBSERVER, stage });
      const { shiftMm, heightMm } = letteringOf(drawn, "picture.rule.5.figure");
      const [low, high] = [shiftMm[1], shiftMm[1] + heightMm];
      const edge = apron === 0 ? 0 : toPaperMm(firstOf(strokeOf(drawn, "picture.stage.apron"))[1], 48);
      expect(edge < low || edge > high, `apron ${apron}`).toBe(true);
    }
  });

  it("leaves out an apron that reaches the eye rather than drawing it wrong", () => {
    const near = drawSheetPicture({ ...OBSERVER, viewer: { ...OBSERVER.viewer, distance: 6 * FOOT_M } });
    expect(near.some(({ id }) => id.startsWith("picture.stage.apron"))).toBe(false);
    expect(numbersOf(near).every(Number.isFinite)).toBe(true);
  });
});
