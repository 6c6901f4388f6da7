import sharp from "sharp";
import { pageToPng } from "@/lib/drawing/paper/page-to-png";
import type { PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "@/lib/drawing/practice-sheet/student-page";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { StraightPage } from "@/lib/photo/straight-page";
import { listEdges } from "@/lib/plan/list-edges";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import type { SheetBox } from "@/lib/sheet/sheet-box";

export type Hand = {
  readonly seed: number;
  /** Share of white that the pencil takes. */
  readonly contrast: number;
  readonly widthMm: number;
  readonly wobbleMm: number;
  /** Sigma in grey levels. */
  readonly noise: number;
};
export type PencilStroke = {
  readonly from: SheetPlace;
  readonly to: SheetPlace;
  /** Darker or fainter than the hand's other strokes; 1 if left out. */
  readonly pressure?: number;
  readonly widthMm?: number;
};

export const CLEAR = { contrast: 0.45, widthMm: 0.45, wobbleMm: 0.12, noise: 3 } as const;
export const FAINT = { contrast: 0.11, widthMm: 0.45, wobbleMm: 0.12, noise: 4 } as const;

const PER_MM = 8;
const MM_PER_INCH = 25.4;
/** Half the length of a stroke of a small cross, millimetres. */
const CROSS_MM = 2;

/** Seeded numbers of 0 to 1 (mulberry32, from memory). */
function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function normal(roll: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());
}

/** What a student draws for marks: the lines that they complete, and a small cross where none does. */
export function strokesOf(sheet: PracticeSheet, marks: ReadonlyMap<string, SheetPlace>): readonly PencilStroke[] {
  const { exercise, layout } = sheet;
  const points = exercisePoints(exercise);
  const reading = exercise.task.kind === "picture-to-plan";
  const given = new Set(exercise.task.given);
  const at = (name: string): SheetPlace | null => {
    const mark = marks.get(name);
    if (mark) return mark;
    const picture = points.get(name)?.picture;
    return given.has(name) && picture && !reading ? placeOf(sheet, picture) : null;
  };
  const strokes: PencilStroke[] = [];
  const drawn = new Set<string>();
  if (!reading)
    for (const { from, to } of listEdges(exercise.plan, points)) {
      const [a, b] = [at(from), at(to)];
      if (!a || !b || (given.has(from) && given.has(to))) continue;
      drawn.add(from).add(to);
      strokes.push({ from: a, to: b });
    }
  for (const [name, [x, y]] of marks)
    if (!drawn.has(name)) {
      const k = reading || layout ? CROSS_MM / Math.SQRT2 : 0;
      strokes.push({ from: [x - k, y - k], to: [x + k, y + k] }, { from: [x - k, y + k], to: [x + k, y - k] });
    }
  return strokes;
}

/** Where a place of the picture (or, reading back, of the plan) stands on the sheet. */
export function placeOf({ exercise, layout, scale }: PracticeSheet, [across, up]: readonly number[]): SheetPlace {
  const { at } = exercise.task.kind === "picture-to-plan" ? layout.plan : layout.picture;
  const perMetre = 1000 / scale.ratio;
  return [at[0] + (across as number) * perMetre, at[1] - (up as number) * perMetre];
}

const printedPages = new Map<string, Promise<{ data: Buffer; width: number; height: number }>>();
function printedPage(sheet: PracticeSheet) {
  const key = sheet.code;
  const known = printedPages.get(key);
  if (known) return known;
  const made = pageToPng(studentPage(sheet, null), { dpi: PER_MM * MM_PER_INCH })
    .then((png) => sharp(png).greyscale().raw().toBuffer({ resolveWithObject: true }))
    .then(({ data, info }) => ({ data, width: info.width, height: info.height }));
  printedPages.set(key, made);
  return made;
}

/** A straight page with pencil strokes on it, drawn by a hand that wobbles, in uneven light, seen by a camera that is not quite sharp. */
export async function drawStraightPage(
  sheet: PracticeSheet,
  box: SheetBox,
  strokes: readonly PencilStroke[],
  hand: Hand,
): Promise<StraightPage> {
  const print = await printedPage(sheet);
  const [left, top] = [Math.round(box.left * PER_MM), Math.round(box.top * PER_MM)];
  const [width, height] = [Math.round(box.right * PER_MM) - left, Math.round(box.bottom * PER_MM) - top];
  const light = new Float32Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const from = (y + top) * print.width + x + left;
      light[y * width + x] = x + left < print.width && y + top < print.height ? (print.data[from] as number) / 255 : 1;
    }
  const roll = dice(hand.seed);
  for (const stroke of strokes) putStroke(light, width, height, [left, top], stroke, hand, roll);
  const blurred = blur(light, width, height);
  const [slopeX, slopeY] = [(roll() - 0.5) * 0.3, (roll() - 0.5) * 0.3];
  const grey = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const lit = 205 * (1 + slopeX * (x / width - 0.5) + slopeY * (y / height - 0.5));
      const value = lit * (blurred[y * width + x] as number) + hand.noise * normal(roll);
      grey[y * width + x] = Math.max(0, Math.min(255, Math.round(value)));
    }
  const exact: SheetBox = {
    left: left / PER_MM,
    top: top / PER_MM,
    right: (left + width) / PER_MM,
    bottom: (top + height) / PER_MM,
  };
  return { width, height, grey, box: exact, pixelsPerMm: PER_MM };
}

function putStroke(
  light: Float32Array,
  width: number,
  height: number,
  [left, top]: readonly [number, number],
  { from, to, pressure = 1, widthMm }: PencilStroke,
  hand: Hand,
  roll: () => number,
): void {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return;
  const [nx, ny] = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
  // A slow bow and a quicker tremble; the ends miss by a little.
  const bow = hand.wobbleMm * normal(roll);
  const tremble = hand.wobbleMm * 0.5 * normal(roll);
  const phase = roll() * 2 * Math.PI;
  const turns = 1 + length / 12;
  const wide = (widthMm ?? hand.widthMm) * (0.85 + 0.3 * roll());
  const radius = (wide / 2) * PER_MM;
  const cover = new Map<number, number>();
  const steps = Math.ceil(length * PER_MM * 2);
  for (let k = 0; k <= steps; k++) {
    const t = k / steps;
    const off = bow * Math.sin(Math.PI * t) + tremble * Math.sin(2 * Math.PI * turns * t + phase);
    const x = (from[0] + t * (to[0] - from[0]) + off * nx) * PER_MM - left;
    const y = (from[1] + t * (to[1] - from[1]) + off * ny) * PER_MM - top;
    for (let v = Math.floor(y - radius - 1); v <= y + radius + 1; v++)
      for (let u = Math.floor(x - radius - 1); u <= x + radius + 1; u++) {
        if (u < 0 || v < 0 || u >= width || v >= height) continue;
        const c = Math.max(0, Math.min(1, radius + 0.5 - Math.hypot(u + 0.5 - x, v + 0.5 - y)));
        const at = v * width + u;
        if (c > (cover.get(at) ?? 0)) cover.set(at, c);
      }
  }
  for (const [at, c] of cover) {
    const grain = 0.8 + 0.4 * roll();
    light[at] = (light[at] as number) * (1 - Math.min(0.95, hand.contrast * pressure * c * grain));
  }
}

/** A blur of about 0.8 pixels. */
function blur(from: Float32Array, width: number, height: number): Float32Array {
  const kernel = [0.05, 0.25, 0.4, 0.25, 0.05];
  const pass = (source: Float32Array, step: number) => {
    const to = new Float32Array(source.length);
    for (let i = 0; i < source.length; i++) {
      let sum = 0;
      for (let k = -2; k <= 2; k++) sum += (source[i + k * step] ?? (source[i] as number)) * (kernel[k + 2] as number);
      to[i] = sum;
    }
    return to;
  };
  return height > 0 ? pass(pass(from, 1), width) : from;
}
