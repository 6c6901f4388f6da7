import { readdirSync, readFileSync } from "node:fs";
import DxfParser from "dxf-parser";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBrought } from "@/lib/draft/bring/read-brought";
import { newDraft } from "@/lib/draft/new-draft";
import { sendPicture } from "@/lib/draft/send/send-picture";
import { sendPlan } from "@/lib/draft/send/send-plan";
import { SENT_UNIT_M, SENT_UNITS, usualUnit } from "@/lib/draft/send/sent-unit";
import { CAUTION } from "@/lib/draft/sense/caution";
import type { DisplayList, DrawingPoint, Stroke } from "@/lib/drawing/display-list";
import { drawFinishedPicture } from "@/lib/drawing/draw-finished-picture";
import { drawPlan } from "@/lib/drawing/draw-plan";
import type { Exercise } from "@/lib/exercise/exercise";
import { readExercise } from "@/lib/exercise/read-exercise";
import { resolveExercise } from "@/lib/exercise/resolve-exercise";
import { generateExercise } from "@/lib/generator/generate-exercise";
import { seeded } from "../../seeded";
import { broughtOf } from "../bring/brought-lines";

/** Metres: what is sent comes back this near. */
const NEAR_M = 1e-6;

type Parsed = {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly { x: number; y: number }[];
  readonly shape?: boolean;
  readonly center?: { x: number; y: number };
  readonly radius?: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
  readonly text?: string;
};

/** Read back by dxf-parser 1.1.2 (MIT), which neither writes these files nor reads those that are brought. */
function parsed(text: string) {
  const file = new DxfParser().parseSync(text);
  const entities = (file?.entities ?? []) as unknown as Parsed[];
  return {
    units: file?.header.$INSUNITS,
    entities: entities.filter(({ layer }) => layer !== "Caution"),
    caution: entities.flatMap(({ layer, text: letters = "" }) => (layer === "Caution" ? [letters] : [])),
  };
}

/** How far what was read is from a stroke, metres: its corners, or its ends and radius where it is round. */
function farthest(stroke: Stroke, entity: Parsed, metres: number): number {
  const places = (entity.vertices ?? []).map(({ x, y }): DrawingPoint => [x * metres, y * metres]);
  if (entity.center && entity.radius !== undefined) {
    const { x, y } = entity.center;
    const [radius, centre] = [entity.radius * metres, [x * metres, y * metres] as const];
    const off = stroke.points.map(([px, py]) => Math.abs(Math.hypot(px - centre[0], py - centre[1]) - radius));
    const ends = [entity.startAngle, entity.endAngle].flatMap((angle) =>
      angle === undefined
        ? []
        : [[centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)] as const],
    );
    const drawn = [stroke.points[0], stroke.points.at(-1)] as [DrawingPoint, DrawingPoint];
    const toEnd = ends.map((end) => Math.min(...drawn.map((at) => Math.hypot(at[0] - end[0], at[1] - end[1]))));
    return Math.max(...off, ...toEnd);
  }
  if (places.length !== stroke.points.length || (places.length > 2 && (entity.shape ?? false) !== stroke.closed))
    return Infinity;
  return Math.max(
    ...places.map((at, i) => Math.hypot(...([0, 1] as const).map((k) => at[k] - (stroke.points[i]?.[k] ?? Infinity)))),
  );
}

function expectSame(text: string, list: DisplayList, metres: number): void {
  const { entities } = parsed(text);
  const lines = entities.filter(({ type }) => type !== "TEXT");
  const strokes = list.filter((item): item is Stroke => item.kind === "stroke" && !item.fillOnly);
  expect(lines.length).toBeGreaterThanOrEqual(strokes.length);
  for (const [i, stroke] of strokes.entries())
    expect(farthest(stroke, lines[i] as Parsed, metres), stroke.id).toBeLessThan(NEAR_M);
  const letters = list.flatMap((item) => (item.kind === "lettering" ? [item.text] : []));
  expect(entities.filter(({ type }) => type === "TEXT").map((entity) => entity.text)).toEqual(letters);
}

function courseFile(name: string): Exercise {
  const reading = readExercise(readFileSync(name, "utf8"));
  if (!reading.ok) throw new Error(name);
  return reading.exercise;
}

const COURSE = readdirSync("exercises/sets").map((name) => courseFile(`exercises/sets/${name}`));

describe.each(COURSE.map((exercise) => [exercise.id, exercise] as const))("%s", (_, exercise) => {
  it("comes back as it was drawn, plan and picture", () => {
    const metres = SENT_UNIT_M[usualUnit(exercise.units)];
    expectSame(sendPlan(exercise), drawPlan(exercise), metres);
    expectSame(sendPicture(exercise), drawFinishedPicture(exercise, { hand: false, idPrefix: "picture" }), metres);
  });
});

it("comes back in every unit, and tells it in its header", () => {
  const [exercise] = COURSE as [Exercise];
  for (const [i, unit] of SENT_UNITS.entries()) {
    expect(parsed(sendPlan(exercise, unit)).units).toBe([1, 2, 4, 6][i]);
    expectSame(sendPlan(exercise, unit), drawPlan(exercise), SENT_UNIT_M[unit]);
  }
});

it("comes back of any plan that the generator makes", () => {
  const made = fc.record({
    unit: fc.constantFrom("walls", "openings", "furniture", "levels", "sets"),
    level: fc.integer({ min: 1, max: 5 }),
    seed: fc.nat(1e6),
  });
  fc.assert(
    fc.property(made, (order) => {
      const reading = resolveExercise(generateExercise(order as Parameters<typeof generateExercise>[0]));
      if (!reading.ok) throw new Error("The generator wrote what cannot be read.");
      const { exercise } = reading;
      expectSame(sendPlan(exercise, "metres"), drawPlan(exercise), 1);
    }),
    { ...seeded, numRuns: Math.ceil(seeded.numRuns / 8) },
  );
});

it("puts each thing on a layer of the trade's words", () => {
  const layers = new Set(COURSE.flatMap((exercise) => parsed(sendPlan(exercise)).entities.map(({ layer }) => layer)));
  for (const layer of ["Stage", "Centre line and plaster line", "Walls", "Openings", "Furniture", "Lettering"])
    expect(layers).toContain(layer);
  const picture = new Set(
    COURSE.flatMap((exercise) => parsed(sendPicture(exercise)).entities.map(({ layer }) => layer)),
  );
  expect([...picture].toSorted()).toEqual(["Finer lines", "Hatching", "Horizon", "Outlines", "Proscenium"]);
});

it("writes the swing of a door as an arc", () => {
  const swings = COURSE.flatMap((exercise) => parsed(sendPlan(exercise)).entities.filter(({ type }) => type === "ARC"));
  const leaves = COURSE.flatMap(({ plan }) =>
    plan.walls.flatMap(({ openings }) => openings.filter(({ kind }) => kind === "door")),
  );
  expect(swings.length).toBeGreaterThanOrEqual(leaves.length);
  expect(leaves.length).toBeGreaterThan(0);
});

it("bears the caution under the drawing and at its head where someone might build from it, and not elsewhere", () => {
  const [exercise] = COURSE as [Exercise];
  const bare = { ...exercise, stage: { ...exercise.stage, rake: 0 }, plan: newDraft("m").exercise.plan };
  for (const send of [sendPlan, sendPicture]) {
    expect(parsed(send(exercise)).caution).toEqual([CAUTION]);
    expect(send(exercise).startsWith(`999\n${CAUTION}\n`)).toBe(true);
    expect(parsed(send(bare)).caution).toEqual([]);
    expect(parsed(send({ ...bare, stage: { ...bare.stage, rake: 0.05 } })).caution).toEqual([CAUTION]);
  }
});

it("is the same file for the same plan", () => {
  const [exercise] = COURSE as [Exercise];
  expect(sendPlan(exercise)).toBe(sendPlan(exercise));
});

it("can be brought again, in metres by its own unit", () => {
  const [exercise] = COURSE as [Exercise];
  const brought = broughtOf(readBrought(new TextEncoder().encode(sendPlan(exercise, "inches"))));
  expect(brought.unit).toEqual({ kind: "stage", name: "inches" });
  expect(brought.notUnderstood.map(({ what }) => what)).toEqual(["pieces of lettering"]);
});
