import type { Plan, Platform, Stair } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import type { Frame } from "./choose-frame";
import type { Dice } from "./dice";

/** A platform's height in risers of 5 to 7 in: the last riser is the platform's own edge. Inches. */
const FLIGHTS: readonly { readonly riser: number; readonly risers: number }[] = [
  { riser: 6, risers: 2 },
  { riser: 7, risers: 2 },
  { riser: 6, risers: 3 },
  { riser: 5, risers: 4 },
  { riser: 7, risers: 3 },
  { riser: 6, risers: 4 },
];
const INCHES = 12;
/** Treads, feet: more than the 11 in that a public stair needs. */
const TREAD_FT = 1;

/** Widths and depths of platforms, feet: whole and half sheets of the 4 x 8 module. */
const WIDTHS_FT = [8, 12, 16] as const;
const DEPTHS_FT = [4, 6, 8] as const;

export type PlatformStyle = {
  readonly id: string;
  readonly nearest: number;
  readonly deepest: number;
  /** Risers up to its top, least and most. */
  readonly risers: readonly [least: number, most: number];
  /** Where a flight climbs to it: on its downstage edge, at the end toward the centre line, or nowhere. */
  readonly flight: "front" | "end" | "none";
  /** Kept small, where it shares a room. */
  readonly small: boolean;
  /** Whether its two ends may run at different angles. */
  readonly splayed: boolean;
};

/** A plan with a platform more, and the flight that climbs to it. */
export function addPlatform(dice: Dice, { ruler, stage }: Frame, plan: Plan, style: PlatformStyle): Plan {
  const flight = dice.pick(FLIGHTS.filter(({ risers }) => risers >= style.risers[0] && risers <= style.risers[1]));
  const [width, depth] = [
    dice.pick(style.small ? WIDTHS_FT.slice(0, 2) : WIDTHS_FT),
    dice.pick(style.small ? DEPTHS_FT.slice(0, 2) : DEPTHS_FT),
  ];
  const half = Math.floor(ruler.feet(stage.opening.width) / 2) - 3;
  const x = dice.whole(-half, half - width);
  const nearest = style.nearest + (style.flight === "front" ? (flight.risers - 1) * TREAD_FT : 0);
  const y = dice.whole(nearest, Math.max(nearest, style.deepest - depth));
  const [left, right] = style.splayed ? [dice.whole(0, 2), dice.whole(1, 3)] : [0, 0];
  const outline: readonly PlanPoint[] = [
    [x, y],
    [x + width, y],
    [x + width - right, y + depth],
    [x + left, y + depth],
  ].map(([u = 0, v = 0]): PlanPoint => [ruler.place(u), ruler.place(v)]);
  const platform: Platform = {
    id: style.id,
    outline,
    height: ruler.size((flight.riser * flight.risers) / INCHES),
    base: 0,
  };
  const next: Plan = { ...plan, platforms: [...plan.platforms, platform] };
  if (style.flight === "none") return next;
  const steps = flight.risers - 1;
  const wide = Math.min(dice.whole(4, 6), style.flight === "front" ? width - 2 : depth);
  const nosing =
    style.flight === "front"
      ? frontNosing(dice.whole(x + 1, x + width - 1 - wide), y, wide, steps)
      : endNosing(x, width, y + dice.whole(0, depth - wide), wide, steps);
  const stair: Stair = {
    id: `S${plan.stairs.length + 1}`,
    nosing: [place(nosing[0]), place(nosing[1])],
    steps,
    tread: ruler.size(TREAD_FT),
    riser: ruler.size(flight.riser / INCHES),
    base: 0,
  };
  return { ...next, stairs: [...plan.stairs, stair] };

  function place([u, v]: Spot): PlanPoint {
    return [ruler.place(u), ruler.place(v)];
  }
}

type Spot = readonly [x: number, y: number];

/** Climbs upstage: to the left of a nosing that runs to stage left. */
function frontNosing(x: number, y: number, wide: number, steps: number): readonly [Spot, Spot] {
  const near = y - steps * TREAD_FT;
  return [
    [x, near],
    [x + wide, near],
  ];
}

/** Climbs from the centre line's side: toward stage right up the nosing (+y), toward stage left down it. */
function endNosing(x: number, width: number, y: number, wide: number, steps: number): readonly [Spot, Spot] {
  if (x + width / 2 < 0) {
    const low = x + width + steps * TREAD_FT;
    return [
      [low, y],
      [low, y + wide],
    ];
  }
  const low = x - steps * TREAD_FT;
  return [
    [low, y + wide],
    [low, y],
  ];
}

/** Names of a flight's nosings, from the lowest. */
export function nosingNames({ id, steps }: Stair): readonly string[] {
  return Array.from({ length: steps }, (_, i) => [`${id}.${i + 1}.start`, `${id}.${i + 1}.end`]).flat();
}
