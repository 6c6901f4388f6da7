import { beforeAll, describe, expect, it, vi } from "vitest";
import { decodePhoto } from "@/lib/cli/photo/decode-photo";
import { loadSheetTools } from "@/lib/cli/photo/load-sheet-tools";
import type { Matrix3, Vector3 } from "@/lib/geometry/matrix3";
import type { PageFit } from "@/lib/photo/page-fit";
import { drawingBox } from "@/lib/photo/pencil/drawing-box";
import type { GreyPixels } from "@/lib/photo/pixels";
import { type Bend, bentFromPhoto, photoFromBent } from "@/lib/photo/straighten/bend";
import { doubtsLeft } from "@/lib/photo/straighten/judge-bend";
import { readSheet, type SheetTools } from "@/lib/photo/straighten/read-sheet";
import { registerPage } from "@/lib/photo/straighten/register-page";
import { straighten } from "@/lib/photo/straighten/straighten";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { shippedExercise } from "../../drawing/practice-sheet/exercises";
import { CLEAR_PENCIL, type Conditions, conditionsBySeed } from "../photographer/conditions";
import { marksByHabit } from "../photographer/marks-by-habit";
import { takePhotograph } from "../photographer/take-photograph";

// Photographs are taken and read, on computers that may have other work.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 60_000 });

let tools: SheetTools;
beforeAll(async () => {
  tools = await loadSheetTools();
});

/** Places looked at along each side of the drawing's box. */
const STEPS = 12;
/** A page at so few pixels a millimetre is soon made: only what its curl is read as matters here. */
const COARSE = 0.5;
/** What straightening a flat sheet may have added to it, millimetres. */
const FLAT_MM = 0.02;
const HEAVY = {
  ...CLEAR_PENCIL,
  darkness: 0.9,
  widthMm: 0.6,
  restated: 0.5,
  erased: 0.3,
  hatching: 3,
  lettering: 1,
  smudges: 3,
};

async function readShot(id: string, conditions: Partial<Conditions>, seed: number) {
  const exercise = shippedExercise(id);
  const marks = marksByHabit(exercise, null, seed);
  const usual = conditionsBySeed(seed, { megapixels: 5, faint: false, flat: true });
  const shot = { ...usual, ...conditions, thumbOn: conditions.thumbOn ?? null };
  const { jpeg, truth } = await takePhotograph({ exercise, paper: "letter", marks, seed, ...shot });
  const photo = await decodePhoto(jpeg);
  if (photo.kind === "refused") throw new Error(photo.say);
  const reading = await readSheet(tools, photo.grey);
  if (reading.kind === "refused") throw new Error(reading.say);
  return { grey: photo.grey, fit: reading.fit, doubts: reading.doubts, truth };
}

/** How far the worst place of the drawing's box is off, by the markers' fit alone and by the print too. */
async function tryCurl(id: string, conditions: Partial<Conditions>, seed = 5) {
  const { grey, fit, doubts, truth } = await readShot(id, conditions, seed);
  const box = drawingBox(truth.sheet);
  const { moved } = registerPage(grey, fit, truth.sheet, box, COARSE);
  const shares = Array.from({ length: STEPS + 1 }, (_, i) => i / STEPS);
  const places = shares.flatMap((x) =>
    shares.map((y): SheetPlace => [box.left + x * (box.right - box.left), box.top + y * (box.bottom - box.top)]),
  );
  const worstBy = (bend: Bend | null) =>
    Math.max(
      ...places.map((place) => {
        const back = bentFromPhoto(fit, bend, truth.photoFromSheet(place)) ?? [NaN, NaN];
        return Math.hypot(back[0] - place[0], back[1] - place[1]);
      }),
    );
  // The same in the photograph, as truth is laid over it: pixels off, where a millimetre is `perMm` of them.
  const overlayPx = Math.max(
    ...places.map((place) => {
      const [at, truly] = [photoFromBent(fit, moved.bend, place) ?? [NaN, NaN], truth.photoFromSheet(place)];
      return Math.hypot(at[0] - truly[0], at[1] - truly[1]);
    }),
  );
  return { moved, doubts, before: worstBy(null), after: worstBy(moved.bend), overlayPx };
}

describe("a page of curled paper", () => {
  it.each<[exercise: string, curlMm: number, curlDeg: number, conditions: Partial<Conditions>]>([
    ["raking-wall", 3, 90, {}],
    ["raking-wall", 6, 5, { tiltDeg: 20 }],
    ["the-tide-office", 8, 80, { tiltDeg: 15 }],
    ["drying-loft", 12, -15, { tiltDeg: 20 }],
    ["drying-loft", -6, 10, { tiltDeg: 10 }],
    ["room-from-its-picture", 5, 90, { tiltDeg: 10 }],
    ["the-tide-office", 6, 0, { thumbOn: 1, tiltDeg: 12 }],
    ["raking-wall", 6, 95, { pencil: HEAVY, tiltDeg: 15 }],
    ["alcove", 8, 20, { pencil: HEAVY, tiltDeg: 5 }],
  ])("of %s, %s mm high across %s degrees, is read by its print", async (id, curlMm, curlDeg, conditions) => {
    const { moved, before, after, overlayPx, doubts } = await tryCurl(id, { ...conditions, curlMm, curlDeg });
    expect(before).toBeGreaterThan(0.2);
    expect(after).toBeLessThan(0.1);
    expect(overlayPx).toBeLessThan(1);
    expect(moved.afterMm).toBeLessThan(0.3 * (moved.beforeMm ?? NaN));
    // It says itself how far off it may be, and no longer warns of what is mended.
    expect(after).toBeLessThan(1.5 * (moved.worstMm ?? NaN));
    expect(moved.worstMm).toBeLessThan(0.3);
    expect(doubts.map(({ why }) => why)).toContain("not flat");
    expect(doubtsLeft(doubts, moved).map(({ why }) => why)).not.toContain("not flat");
  });

  it("says how it bends as data that survive JSON", async () => {
    const { moved } = await tryCurl("raking-wall", { curlMm: 5, curlDeg: 90 });
    expect(moved.bend).not.toBeNull();
    expect(JSON.parse(JSON.stringify(moved))).toEqual(moved);
  });
});

describe("a page of flat paper", () => {
  it.each<[exercise: string, conditions: Partial<Conditions>]>([
    ["raking-wall", {}],
    ["the-tide-office", { tiltDeg: 30, k1: 0.02 }],
    ["drying-loft", { blurPx: 1.2, noise: 6, jpegQuality: 60 }],
    ["alcove", { pencil: HEAVY }],
    ["raking-wall", { pencil: HEAVY, thumbOn: 3 }],
  ])("of %s is not made worse (%#)", async (id, conditions) => {
    const { moved, before, after } = await tryCurl(id, { ...conditions, curlMm: 0 }, 8);
    expect(after).toBeLessThanOrEqual(before + FLAT_MM);
    expect(moved.beforeMm).toBeLessThan(0.05);
  });
});

describe("a page whose print says too little", () => {
  it.each<[what: string, spoil: (photo: GreyPixels, fit: PageFit) => { photo: GreyPixels; fit: PageFit }]>([
    ["covered by blank paper", (photo, fit) => ({ photo: { ...photo, grey: photo.grey.map(() => 210) }, fit })],
    ["6 mm from where the fit has it", (photo, fit) => ({ photo, fit: shifted(fit, 6) })],
  ])("since it is %s, is left as its markers have it, with a word", async (_, spoil) => {
    const { grey, fit: truly, truth, doubts } = await readShot("alcove", { curlMm: 0 }, 5);
    const { photo, fit } = spoil(grey, truly);
    const box = drawingBox(truth.sheet);
    const { page, moved } = registerPage(photo, fit, truth.sheet, box, COARSE);
    expect(moved).toMatchObject({ bend: null, beforeMm: null, afterMm: null, worstMm: null });
    expect(page).toEqual(straighten(photo, fit, box, COARSE));
    expect(doubtsLeft(doubts, moved).at(-1)?.say).toMatch(/printed lines are not seen plainly/);
  });
});

/** A fit that has the sheet so many millimetres off to the right. */
function shifted(fit: PageFit, mm: number): PageFit {
  const [u, v, w] = fit.matrix.map(([a, b, c]): Vector3 => [a, b, c + a * mm]) as unknown as Matrix3;
  return { ...fit, matrix: [u, v, w] };
}
