import type { SheetPlace } from "@/lib/sheet/place-drawings";
import type { Pencil } from "./conditions";
import type { Dice } from "./dice";
import type { Drawn } from "./drawn-lines";
import { handStroke, type Stroke } from "./hand-strokes";

/** A grey veil where a hand has rubbed: its middle, its half lengths along and across its direction, and how dark, 0 to 1. */
export type Smudge = {
  readonly at: SheetPlace;
  readonly half: readonly [number, number];
  readonly angle: number;
  readonly darkness: number;
};

/** Letters of straight strokes in a box one high, 0.7 wide, foot down. */
const LETTERS: Readonly<Record<string, readonly (readonly [number, number, number, number])[]>> = {
  A: [
    [0, 0, 0.35, 1],
    [0.35, 1, 0.7, 0],
    [0.12, 0.35, 0.58, 0.35],
  ],
  E: [
    [0, 0, 0, 1],
    [0, 1, 0.6, 1],
    [0, 0.5, 0.5, 0.5],
    [0, 0, 0.6, 0],
  ],
  F: [
    [0, 0, 0, 1],
    [0, 1, 0.6, 1],
    [0, 0.5, 0.5, 0.5],
  ],
  H: [
    [0, 0, 0, 1],
    [0.7, 0, 0.7, 1],
    [0, 0.5, 0.7, 0.5],
  ],
  K: [
    [0, 0, 0, 1],
    [0, 0.4, 0.6, 1],
    [0.2, 0.55, 0.6, 0],
  ],
  L: [
    [0, 1, 0, 0],
    [0, 0, 0.6, 0],
  ],
  M: [
    [0, 0, 0, 1],
    [0, 1, 0.35, 0.4],
    [0.35, 0.4, 0.7, 1],
    [0.7, 1, 0.7, 0],
  ],
  N: [
    [0, 0, 0, 1],
    [0, 1, 0.7, 0],
    [0.7, 0, 0.7, 1],
  ],
  T: [
    [0, 1, 0.7, 1],
    [0.35, 1, 0.35, 0],
  ],
  W: [
    [0, 1, 0.18, 0],
    [0.18, 0, 0.35, 0.6],
    [0.35, 0.6, 0.52, 0],
    [0.52, 0, 0.7, 1],
  ],
  X: [
    [0, 0, 0.7, 1],
    [0, 1, 0.7, 0],
  ],
  Z: [
    [0, 1, 0.7, 1],
    [0.7, 1, 0, 0],
    [0, 0, 0.7, 0],
  ],
};

/** A letter or two beside some of the points, where there is room between the others. */
export function lettering({ places }: Drawn, pencil: Pencil, dice: Dice): readonly Stroke[] {
  const taken: SheetPlace[] = [...places.values()];
  return [...places.values()].flatMap((place) => {
    const size = dice.between(2.5, 4);
    const word = Array.from({ length: dice.pick([1, 1, 2]) }, () => dice.pick(Object.keys(LETTERS)));
    const first = dice.pick([0, 1, 2, 3]);
    if (!dice.chance(pencil.lettering)) return [];
    const wide = size * (0.9 * word.length - 0.2);
    const sides = [0, 1, 2, 3].map((k): SheetPlace => {
      const side = (first + k) % 4;
      const [right, up] = [side % 2 === 1, side > 1];
      return [place[0] + (right ? 1.2 : -1.2 - wide), place[1] + (up ? -1 : 1 + size)];
    });
    const middle = ([x, y]: SheetPlace): SheetPlace => [x + wide / 2, y - size / 2];
    const at = sides.find((side) => {
      const [x, y] = middle(side);
      return taken.every((other) => other === place || Math.hypot(other[0] - x, other[1] - y) > size);
    });
    if (!at) return [];
    taken.push(middle(at));
    return word.flatMap((letter, i) => letterStrokes(letter, [at[0] + i * size * 0.9, at[1]], size, pencil, dice));
  });
}

/** A name on the sheet's line for it. */
export function signature(at: SheetPlace, pencil: Pencil, dice: Dice): readonly Stroke[] {
  return [..."HANNEKE"].flatMap((letter, i) => letterStrokes(letter, [at[0] + i * 3.6, at[1]], 3.8, pencil, dice));
}

function letterStrokes(
  letter: string,
  [x, y]: SheetPlace,
  size: number,
  pencil: Pencil,
  dice: Dice,
): readonly Stroke[] {
  const shake = () => dice.normal(0.05 * size);
  return (LETTERS[letter] ?? []).map(([ax, ay, bx, by]) =>
    handStroke(
      [
        [x + ax * size + shake(), y - ay * size + shake()],
        [x + bx * size + shake(), y - by * size + shake()],
      ],
      { ...pencil, wobbleMm: 0.1 },
      0.9,
      dice,
    ),
  );
}

/** Patches of parallel strokes beside a drawn line, as a hand shades a wall. */
export function hatching({ lines }: Drawn, pencil: Pencil, dice: Dice): readonly Stroke[] {
  if (lines.length === 0) return [];
  return Array.from({ length: pencil.hatching }, () => {
    const { from, to } = dice.pick(lines);
    const [middle, size] = [[(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const, dice.between(5, 12)];
    const [angle, apart] = [dice.between(0.5, 1.1) * dice.pick([1, -1]), dice.between(1.2, 2)];
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    const corner = [middle[0] + dice.pick([1.5, -1.5 - size]), middle[1] + dice.pick([1.5, -1.5 - size])] as const;
    return Array.from({ length: Math.floor(size / apart) }, (_, i) => {
      const at = [corner[0] + i * apart + dice.normal(0.15), corner[1] + size / 2] as const;
      const half = (size / 2) * dice.between(0.85, 1.1);
      return handStroke(
        [
          [at[0] - dx * half, at[1] - dy * half],
          [at[0] + dx * half, at[1] + dy * half],
        ],
        pencil,
        dice.between(0.4, 0.65),
        dice,
      );
    });
  }).flat();
}

/** Where the side of a hand has gone over the drawing. */
export function smudges({ places }: Drawn, pencil: Pencil, dice: Dice): readonly Smudge[] {
  if (places.size === 0) return [];
  return Array.from({ length: pencil.smudges }, () => {
    const near = dice.pick([...places.values()]);
    return {
      at: [near[0] + dice.normal(6), near[1] + dice.normal(6)],
      half: [dice.between(8, 18), dice.between(3, 7)],
      angle: dice.between(0, Math.PI),
      darkness: dice.between(0.03, 0.09),
    };
  });
}
