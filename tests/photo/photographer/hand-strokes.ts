import type { SheetPlace } from "@/lib/sheet/place-drawings";
import type { Pencil } from "./conditions";
import type { Dice } from "./dice";
import type { DrawnLine } from "./drawn-lines";

/** A pencil's way over the paper: places a step apart with how hard it presses there, 0 to 1. Sheet millimetres. */
export type Stroke = {
  readonly along: readonly (readonly [right: number, down: number, pressure: number])[];
  readonly widthMm: number;
};

const STEP_MM = 0.5;
/** A hand wanders and leans with about this wavelength, millimetres (common practice, no source). */
const WAVE_MM = 25;
/** Arms of the cross at a lone point. */
const CROSS_MM = 2;
/** Of the lines that run past a corner, how many; and how far from the line a second try lies. */
const RUNS_OVER = 0.5;
const TRY_MM = 0.3;
/** What is left of a line's pressure where it was rubbed out, and how far it lay from the line that stayed. */
const GHOST = 0.2;
const GHOST_MM = [1.2, 3.5] as const;

/** The strokes of a line: one, or the tries of a line drawn again over itself, and before them perhaps one that was rubbed out. */
export function strokesOfLine(line: DrawnLine, pencil: Pencil, dice: Dice): readonly Stroke[] {
  const tries = dice.chance(pencil.restated) ? (dice.chance(0.3) ? 3 : 2) : 1;
  const strokes = Array.from({ length: tries }, (_, i) => {
    const aside = i === 0 ? 0 : TRY_MM;
    const ends = [line.from, line.to].map((place, end) =>
      missed(place, line.met[end] ? pencil.endMm + aside / 2 : pencil.endMm, dice),
    ) as [SheetPlace, SheetPlace];
    return handStroke(runOver(ends, line.met, pencil, dice), pencil, i === 0 ? 1 : dice.between(0.5, 1), dice);
  });
  return dice.chance(pencil.erased) ? [ghostOf(line, pencil, dice), ...strokes] : strokes;
}

/** Two short strokes through a place. */
export function strokesOfCross(place: SheetPlace, pencil: Pencil, dice: Dice): readonly Stroke[] {
  const turn = dice.between(-0.2, 0.2) + dice.pick([0, Math.PI / 4]);
  return [turn, turn + Math.PI / 2 + dice.normal(0.06)].map((angle) => {
    const at = missed(place, pencil.endMm / 2, dice);
    const [x, y] = [CROSS_MM * Math.cos(angle), CROSS_MM * Math.sin(angle)];
    return handStroke(
      [
        [at[0] - x, at[1] - y],
        [at[0] + x, at[1] + y],
      ],
      { ...pencil, wobbleMm: 0.03 },
      1,
      dice,
    );
  });
}

/** One stroke between two places as a hand draws it: wandering a little, heavier here and lighter there. */
export function handStroke(
  [from, to]: readonly [SheetPlace, SheetPlace],
  { wobbleMm, widthMm, darkness }: Pick<Pencil, "wobbleMm" | "widthMm" | "darkness">,
  pressure: number,
  dice: Dice,
): Stroke {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const steps = Math.max(2, Math.ceil(length / STEP_MM));
  const [nx, ny] = length === 0 ? [0, 0] : [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
  const waves = [1, 2.3].map((times) => ({ turns: (times * length) / WAVE_MM, phase: dice.between(0, 2 * Math.PI) }));
  const bow = dice.normal(wobbleMm) * Math.min(1, length / WAVE_MM);
  const lean = dice.between(0, 2 * Math.PI);
  const along = Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const held = Math.min(1, 4 * t, 4 * (1 - t));
    const wander = waves.reduce(
      (sum, { turns, phase }, k) => sum + Math.sin(2 * Math.PI * turns * t + phase) / (k + 1),
      0,
    );
    const aside = bow * 4 * t * (1 - t) + 0.7 * wobbleMm * wander * held;
    const press = 0.88 + 0.12 * Math.sin(2 * Math.PI * (length / WAVE_MM) * 0.7 * t + lean);
    const lifted = Math.min(1, 0.6 + (t * length) / 1.5, 0.6 + ((1 - t) * length) / 1.5);
    return [
      from[0] + (to[0] - from[0]) * t + nx * aside,
      from[1] + (to[1] - from[1]) * t + ny * aside,
      darkness * pressure * press * lifted,
    ] as const;
  });
  return { along, widthMm };
}

function ghostOf(line: DrawnLine, pencil: Pencil, dice: Dice): Stroke {
  const [dx, dy] = [line.to[0] - line.from[0], line.to[1] - line.from[1]];
  const length = Math.hypot(dx, dy);
  const aside = dice.between(...GHOST_MM) * dice.pick([1, -1]);
  const turned = dice.between(-0.8, 1) * aside;
  const move = (place: SheetPlace, by: number): SheetPlace => [
    place[0] - (dy / length) * by,
    place[1] + (dx / length) * by,
  ];
  return handStroke([move(line.from, turned), move(line.to, aside)], pencil, GHOST, dice);
}

function runOver(
  [from, to]: readonly [SheetPlace, SheetPlace],
  met: DrawnLine["met"],
  { overshootMm }: Pencil,
  dice: Dice,
): [SheetPlace, SheetPlace] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const over = met.map((is) => (is && dice.chance(RUNS_OVER) ? dice.between(0, overshootMm) / (length || 1) : 0));
  const at = (t: number): SheetPlace => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
  return [at(-(over[0] ?? 0)), at(1 + (over[1] ?? 0))];
}

function missed([x, y]: SheetPlace, by: number, dice: Dice): SheetPlace {
  return [x + dice.normal(by), y + dice.normal(by)];
}
