import type { Thing } from "@/lib/draft/draft";
import { sayThing } from "@/lib/draft/sense/say-thing";
import type { LengthUnits } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { capital } from "@/lib/plan/first-letter";
import type { Plan } from "@/lib/plan/plan";
import { wallLine } from "@/lib/plan/wall-line";

export type Listed = { readonly thing: Thing; readonly words: string };

/** Everything on a plan in words, walls with their openings first, then what stands and hangs, then the corners. */
export function listThings(plan: Plan, units: LengthUnits): readonly Listed[] {
  const print = (metres: number) => printLength(metres, units);
  const used = new Set(plan.walls.flatMap(({ from, to }) => [from, to]));
  return [
    ...plan.walls.flatMap((wall): Listed[] => {
      const line = wallLine(plan, wall);
      const long = line ? `, ${print(line.length)} long` : "";
      return [
        { thing: { kind: "wall", id: wall.id }, words: `Wall ${wall.id}, ${wall.from} to ${wall.to}${long}` },
        ...wall.openings.map((opening): Listed => {
          const said = opening.id === opening.kind ? opening.kind : `${opening.kind} ${opening.id}`;
          return {
            thing: { kind: "opening", wall: wall.id, id: opening.id },
            words: `${capital(said)} in ${wall.id}, ${print(opening.width)} wide, ${print(opening.at)} from ${wall.from}`,
          };
        }),
      ];
    }),
    ...plan.platforms.map(
      ({ id, height }): Listed => ({
        thing: { kind: "platform", id },
        words: `Platform ${id}, ${print(height)} high`,
      }),
    ),
    ...plan.stairs.map(
      ({ id, steps, riser, tread }): Listed => ({
        thing: { kind: "stair", id },
        words: `Stair ${id}, ${steps} ${steps === 1 ? "riser" : "risers"} of ${print(riser)}, treads ${print(tread)}`,
      }),
    ),
    ...plan.furniture.map(
      ({ id, kind, width, depth }): Listed => ({
        thing: { kind: "furniture", id },
        words: `${capital(kind)}${id === kind ? "" : ` ${id}`}, ${print(width)} by ${print(depth)}`,
      }),
    ),
    ...plan.columns.map(
      ({ id, diameter, height }): Listed => ({
        thing: { kind: "column", id },
        words: `Column ${id}, ${print(diameter)} thick, ${print(height)} high`,
      }),
    ),
    ...plan.masking.map(
      ({ id, kind, trim }): Listed => ({
        thing: { kind: "masking", id },
        words: `${capital(kind)}${id === kind ? "" : ` ${id}`}${trim === null ? "" : `, trim ${print(trim)}`}`,
      }),
    ),
    ...[...plan.corners].map(
      ([id, at]): Listed => ({
        thing: { kind: "corner", id },
        words: `${used.has(id) ? "Corner" : "Point"} ${id}, ${sayPlace(at, units)}`,
      }),
    ),
  ];
}

/** A place of the plan in words. */
export function sayPlace([x, y]: readonly [number, number], units: LengthUnits): string {
  const across = printLength(Math.abs(x), units);
  const up = printLength(Math.abs(y), units);
  const sideways = isNothing(across) ? "on the centre line" : `${across} stage ${x < 0 ? "right" : "left"}`;
  const along = isNothing(up) ? "on the plaster line" : `${up} ${y < 0 ? "downstage" : "upstage"}`;
  return `${sideways}, ${along}`;
}

function isNothing(printed: string): boolean {
  return printed === '0"' || printed === "0 mm";
}

/** Several things in a few words. */
export function sayThings(things: readonly Thing[], plan: Plan): string {
  const [only, ...others] = things;
  if (!only) return "nothing";
  if (others.length === 0) return sayThing(plan, only);
  return `${things.length} things`;
}
