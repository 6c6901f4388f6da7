import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { decodePhoto } from "@/lib/cli/photo/decode-photo";
import { loadSheetTools } from "@/lib/cli/photo/load-sheet-tools";
import type { GreyPixels } from "@/lib/photo/pixels";
import { sheetFromPhoto } from "@/lib/photo/straighten/map-page";
import { readSheet, type SheetReading, type SheetTools } from "@/lib/photo/straighten/read-sheet";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { type Photograph, type Shot, takePhotograph } from "../photographer/take-photograph";

let tools: SheetTools;
beforeAll(async () => {
  tools = await loadSheetTools();
});

const PLAIN: Shot = {
  exercise: shippedExercise("the-tide-office"),
  paper: "letter",
  marks: [],
  seed: 5,
  megapixels: 3,
  k1: 0.02,
};

async function decode(jpeg: Uint8Array): Promise<GreyPixels> {
  const decoded = await decodePhoto(jpeg);
  if (decoded.kind !== "decoded") throw new Error(decoded.say);
  return decoded.grey;
}

async function photograph(shot: Partial<Shot>): Promise<Photograph & { readonly grey: GreyPixels }> {
  const taken = await takePhotograph({ ...PLAIN, ...shot });
  return { ...taken, grey: await decode(taken.jpeg) };
}

/** The farthest that a reading has any place of the sheet in view from where it is, millimetres. */
function worstMm(reading: Extract<SheetReading, { kind: "straight" }>, { truth, width, height }: Photograph): number {
  const { widthMm, heightMm } = truth.sheet.layout;
  const shares = [0.02, 0.2, 0.4, 0.6, 0.8, 0.98];
  const places = shares.flatMap((x) => shares.map((y) => [x * widthMm, y * heightMm] as const));
  return Math.max(
    ...places.map(([x, y]) => {
      const point = truth.photoFromSheet([x, y]);
      if (point[0] < 0 || point[1] < 0 || point[0] > width || point[1] > height) return 0;
      const back = sheetFromPhoto(reading.fit, point);
      return back ? Math.hypot(back[0] - x, back[1] - y) : Number.POSITIVE_INFINITY;
    }),
  );
}

describe("a photographed sheet", () => {
  it.each<[string, Partial<Shot>, number]>([
    ["from straight above", {}, 0.03],
    ["tilted by 35 degrees and on its head", { tiltDeg: 35, leanDeg: 130, turnDeg: 170 }, 0.05],
    ["on its side in poor light", { turnDeg: 90, frame: "landscape", evenness: 0.5, shadow: 0.6, noise: 5 }, 0.05],
    ["with a thumb on a marker, compressed hard", { thumbOn: 4, jpegQuality: 50, tiltDeg: 20 }, 0.05],
    ["of another size", { paper: "a3", exercise: shippedExercise("raking-wall"), copy: 17, megapixels: 6 }, 0.08],
    ["cut off at its left", { off: [-0.16, 0] }, 0.3],
  ])("is known and lies where it does, %s", async (_, shot, mm) => {
    const photo = await photograph(shot);
    const reading = await readSheet(tools, photo.grey);
    if (reading.kind !== "straight") throw new Error(reading.say);
    const { paper, code, layout } = photo.truth.sheet;
    expect(reading.code).toMatchObject({ exercise: photo.truth.sheet.exercise.id, paper, copy: shot.copy ?? null });
    expect(code).toContain(reading.code.exercise);
    // One whose white is cut off, by the photograph's edge or a thumb's, may be seen as well.
    expect(reading.markers).toEqual(expect.arrayContaining([...photo.truth.markers]));
    expect(worstMm(reading, photo)).toBeLessThan(mm);
    expect(reading.fit.residualMm).toBeLessThan(0.1);
    expect(reading.doubts.map(({ why }) => why)).not.toContain("printed at another size");
    expect(Math.abs(reading.codeAt[0] - (layout.code.left + layout.code.right) / 2)).toBeLessThan(0.15);
    expect(Math.abs(reading.codeAt[1] - (layout.code.top + layout.code.bottom) / 2)).toBeLessThan(0.15);
  });

  it("is told to be curled where it is, and by how much at least", async () => {
    const photo = await photograph({ curlMm: 8, curlDeg: 20, tiltDeg: 15 });
    const reading = await readSheet(tools, photo.grey);
    if (reading.kind !== "straight") throw new Error(reading.say);
    expect(reading.doubts.map(({ why }) => why)).toContain("not flat");
    expect(worstMm(reading, photo)).toBeLessThan(5 * (reading.fit.residualMm ?? 0));
  });

  it("is said to go over the photograph's edge where it does", async () => {
    const photo = await photograph({ off: [-0.16, 0] });
    const reading = await readSheet(tools, photo.grey);
    if (reading.kind !== "straight") throw new Error(reading.say);
    expect(reading.doubts.map(({ why }) => why)).toContain("cut off");
  });

  it("is read from a telephone's HEIC", async () => {
    const heic = await decode(new Uint8Array(readFileSync("tests/photo/files/fixtures/sheet.heic")));
    const reading = await readSheet(tools, heic);
    expect(reading).toMatchObject({ kind: "straight", code: { exercise: "raking-wall", paper: "letter" } });
  });

  it("is upright however the camera stored it", async () => {
    const { grey, width, height } = await photograph({ orientation: 6, megapixels: 3 });
    expect([grey.width, grey.height]).toEqual([width, height]);
    expect(await readSheet(tools, grey)).toMatchObject({ kind: "straight", markers: [0, 1, 2, 3, 4, 5, 6, 7] });
  });
});

describe("a photograph that cannot be read", () => {
  it.each<[string, Partial<Shot>, string, RegExp]>([
    ["too dark", { exposure: 0.12 }, "too dark", /too dark/],
    ["out of focus", { blurPx: 7 }, "too blurred", /too blurred/],
    ["shaken", { motionPx: 32, motionDeg: 30 }, "too blurred", /too blurred/],
    ["shaken up and down", { motionPx: 20, motionDeg: 90 }, "too blurred", /too blurred/],
    ["cut off through its middle", { off: [0.55, 0] }, "cut off", /markers/],
    ["of a small part", { fill: 2.2 }, "not our sheet", /none of its eight square markers/],
    ["far away", { fill: 0.2, megapixels: 8 }, "too small", /too small/],
  ])("is refused for what it is, %s", async (_, shot, why, say) => {
    const reading = await readSheet(tools, (await photograph(shot)).grey);
    expect(reading).toMatchObject({ kind: "refused", why });
    if (reading.kind === "refused") expect(reading.say).toMatch(say);
  });

  it.each<[string, (i: number, j: number) => number]>([
    ["white", () => 250],
    ["noise", (i, j) => ((i * 7919 + j * 104729) % 251) + 2],
    ["a chequered floor", (i, j) => (((i >> 6) + (j >> 6)) % 2 === 0 ? 30 : 220)],
  ])("is no sheet of ours: %s", async (_, paint) => {
    const [width, height] = [1600, 1200];
    const grey = Uint8Array.from({ length: width * height }, (_, n) => paint(n % width, Math.floor(n / width)));
    expect(await readSheet(tools, { width, height, grey })).toMatchObject({ kind: "refused", why: "not our sheet" });
  });

  it("has two sheets in it", async () => {
    const [left, right] = [await photograph({ megapixels: 3 }), await photograph({ megapixels: 3, copy: 2 })];
    const reading = await readSheet(tools, beside(left.grey, right.grey));
    expect(reading).toMatchObject({ kind: "refused", why: "two sheets" });
  });

  it("has a code that is covered, and says so", async () => {
    const { grey, truth } = await photograph({});
    const { code } = truth.sheet.layout;
    const covered = cover(grey, truth.photoFromSheet([(code.left + code.right) / 2, (code.top + code.bottom) / 2]), 90);
    expect(await readSheet(tools, covered)).toMatchObject({ kind: "refused", why: "code unreadable" });
  });
});

function beside(a: GreyPixels, b: GreyPixels): GreyPixels {
  const width = a.width + b.width;
  const grey = new Uint8Array(width * a.height);
  for (let j = 0; j < a.height; j++) {
    grey.set(a.grey.subarray(j * a.width, (j + 1) * a.width), j * width);
    grey.set(b.grey.subarray(j * b.width, (j + 1) * b.width), j * width + a.width);
  }
  return { width, height: a.height, grey };
}

/** A photograph with a light patch over a place, so many pixels each way. */
function cover(
  { width, height, grey }: GreyPixels,
  [right, down]: readonly [number, number],
  reach: number,
): GreyPixels {
  const covered = grey.slice();
  for (let j = Math.max(0, Math.floor(down - reach)); j < Math.min(height, down + reach); j++)
    covered.fill(170, j * width + Math.floor(right - reach), j * width + Math.min(width, Math.floor(right + reach)));
  return { width, height, grey: covered };
}
