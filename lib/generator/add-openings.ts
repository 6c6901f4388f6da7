import type { Opening, OpeningKind, Plan, Wall } from "../plan/plan";
import { wallLine } from "../plan/wall-line";
import type { Frame } from "./choose-frame";
import { isPlayable } from "./clear-stage";
import type { Dice } from "./dice";

type Stock = {
  readonly id: string;
  readonly kind: OpeningKind;
  readonly width: number;
  readonly sill: number;
  readonly head: number;
  readonly depth?: number;
  readonly leaves?: 2;
};

/**
 * Stock openings, feet. Doors 3 x 7, fireplaces 3 x 3 (northern.edu/wild/th241/sc92.htm); windows a chair's seat above
 * a child's reach, 2'-6" to 3'; the wider ways through are common practice, no source.
 */
const STOCK: readonly Stock[] = [
  { id: "door", kind: "door", width: 3, sill: 0, head: 7 },
  { id: "double-door", kind: "door", width: 5, sill: 0, head: 7.5, leaves: 2 },
  { id: "window", kind: "window", width: 3, sill: 2.5, head: 7 },
  { id: "window", kind: "window", width: 4, sill: 3, head: 8 },
  { id: "arch", kind: "arch", width: 6, sill: 0, head: 9 },
  { id: "passage", kind: "passage", width: 4, sill: 0, head: 7.5 },
  { id: "fireplace", kind: "niche", width: 4, sill: 0, head: 3.5, depth: 1 },
];

/** Wall kept on either side of an opening, feet: its flat's stiles. */
const STILE_FT = 1;
/** Between the head and the wall's top, feet. */
const OVER_HEAD_FT = 0.5;
const TRIES = 24;

/**
 * A plan with so many openings of these kinds more, one to a wall as long as there are walls; fewer where they do not fit.
 * `walls` are the ids that may have one, in the order of preference.
 */
export function addOpenings(
  dice: Dice,
  frame: Frame,
  plan: Plan,
  kinds: readonly OpeningKind[],
  walls: readonly string[],
): Plan {
  const { ruler } = frame;
  return kinds.reduce((sofar, kind) => {
    for (let i = 0; i < TRIES; i += 1) {
      const stock = dice.pick(STOCK.filter((one) => one.kind === kind));
      const bare = walls.filter((id) => sofar.walls.some((wall) => wall.id === id && wall.openings.length === 0));
      const wall = sofar.walls.find(({ id }) => id === dice.pick(bare.length > 0 ? bare : walls));
      const line = wall && wallLine(sofar, wall);
      if (!wall || !line) continue;
      const last = ruler.feet(line.length) - stock.width - STILE_FT;
      if (last < STILE_FT || wall.height < ruler.size(stock.head + OVER_HEAD_FT)) continue;
      const at = ruler.place(dice.half(STILE_FT, last));
      const size = { at, width: ruler.size(stock.width) };
      if (at + size.width > line.length || wall.openings.some((other) => apart(other, size) < ruler.size(STILE_FT)))
        continue;
      const opening: Opening = {
        id: freshId(stock.id, wall),
        kind,
        ...size,
        sill: ruler.size(stock.sill),
        head: ruler.size(stock.head),
        depth: stock.depth === undefined ? null : ruler.size(stock.depth),
        leaves: stock.leaves ?? 1,
        hinge: kind === "door" && stock.leaves !== 2 ? dice.pick([null, "start", "end"] as const) : null,
        swing: kind === "door" && dice.chance(20) ? "onstage" : "offstage",
      };
      const next = withOpening(sofar, wall, opening);
      if (isPlayable(next, frame)) return next;
    }
    return sofar;
  }, plan);
}

type Stretch = Pick<Opening, "at" | "width">;

function apart(a: Stretch, b: Stretch): number {
  return Math.max(b.at - a.at - a.width, a.at - b.at - b.width);
}

function freshId(id: string, { openings }: Wall): string {
  const same = openings.filter((other) => other.id.startsWith(id)).length;
  return same === 0 ? id : `${id}-${same + 1}`;
}

function withOpening(plan: Plan, wall: Wall, opening: Opening): Plan {
  const openings = [...wall.openings, opening].sort((a, b) => a.at - b.at);
  return { ...plan, walls: plan.walls.map((other) => (other === wall ? { ...wall, openings } : other)) };
}

/** Names of the points of a plan's openings, wall by wall: the sills of each, then its heads. */
export function openingNames({ walls }: Plan): readonly string[] {
  return walls.flatMap((wall) =>
    wall.openings.flatMap(({ id }) =>
      ["start.sill", "end.sill", "start.head", "end.head"].map((end) => `${wall.id}.${id}.${end}`),
    ),
  );
}

/** The same with the near jamb of every opening first, each foot or sill with its head. */
export function jambByJamb({ walls }: Plan): readonly string[] {
  return ["start", "end"].flatMap((end) =>
    walls.flatMap((wall) =>
      wall.openings.flatMap(({ id }) => ["sill", "head"].map((role) => `${wall.id}.${id}.${end}.${role}`)),
    ),
  );
}
