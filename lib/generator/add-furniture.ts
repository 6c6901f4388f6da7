import { furnitureCorners } from "../plan/furniture-corners";
import { namePoints } from "../plan/name-points";
import type { Furniture, FurnitureKind, Plan, Wall } from "../plan/plan";
import { placeOnWall, wallLine } from "../plan/wall-line";
import type { StagePoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import { eyePoint } from "../stage/viewer";
import type { Frame } from "./choose-frame";
import { isPlayable } from "./clear-stage";
import type { Dice } from "./dice";
import { overlap, type Solid, solidsOf } from "./footprint";
import { FURNITURE_FT, type FurnitureStock } from "./furniture-stock";
import { hiddenPoints, passesThrough } from "./hidden-point";

/** Behind a piece against a wall, feet: room for a baseboard. */
const GAP_FT = 0.5;
/** A free piece keeps so far from the sides of the opening, and stands no nearer to the plaster line, feet. */
const FROM_SIDE_FT = 5;
const NEAREST_FT = 4;
/** Turns are whole steps of this many degrees. */
const TURN_STEP_DEG = 5;
const TRIES = 15;
/** Between a piece and whatever else stands on the stage, feet. */
const PASSAGE_FT = 1.5;

export type FurnitureStyle = {
  readonly kinds: readonly FurnitureKind[];
  readonly count: number;
  /** Depth of the farthest piece, feet. */
  readonly deepest: number;
  /** The most a free piece is turned, degrees; 0 for all square. */
  readonly turnDeg: number;
  /** Whether pieces may stand against the walls. */
  readonly atWalls: boolean;
};

/** A plan with so many pieces of furniture more, no two of a kind, none hiding much of another; fewer where they do not fit. */
export function addFurniture(dice: Dice, frame: Frame, plan: Plan, style: FurnitureStyle): Plan {
  let sofar = plan;
  for (const kind of dice.shuffle(style.kinds).slice(0, style.count + SPARE_KINDS)) {
    if (sofar.furniture.length - plan.furniture.length >= style.count) break;
    const seen = seenPoints(frame, sofar);
    for (let i = 0; i < TRIES; i += 1) {
      const piece = placePiece(dice, frame, sofar, kind, style);
      if (!piece) continue;
      const next: Plan = { ...sofar, furniture: [...sofar.furniture, piece] };
      if (!isPlayable(next, frame)) continue;
      if (isCrowded(frame, sofar, piece) || hidesMuch(frame, next, seen)) continue;
      sofar = next;
      break;
    }
  }
  return sofar;
}

/** A box seen from before and above hides one or two of its own feet; of what stands behind it, at most this much. */
const HIDDEN_FEET = 2;
const HIDDEN_BEHIND = 1;
/** Kinds tried over the number wanted, where some do not fit. */
const SPARE_KINDS = 3;

function seenPoints({ stage, viewer }: Frame, plan: Plan): readonly StagePoint[] {
  const hidden = hiddenPoints({ plan, stage, viewer });
  return [...namePoints(plan, stage).values()].filter(({ name }) => !hidden.has(name)).map(({ at }) => at);
}

/** Whether one cannot get past a new piece: something stands too near to it. It may stand near walls. */
function isCrowded({ ruler }: Frame, plan: Plan, piece: Furniture): boolean {
  const room = ruler.size(2 * PASSAGE_FT);
  const around = furnitureCorners({ ...piece, width: piece.width + room, depth: piece.depth + room });
  return solidsOf(plan, () => 0).some(({ outline }) => overlap(outline, around));
}

/** Whether a new piece hides, or has hidden, more than a few of the points seen before. */
function hidesMuch({ stage, viewer }: Frame, plan: Plan, seen: readonly StagePoint[]): boolean {
  const eye = eyePoint(viewer);
  const solids = solidsOf(plan, (y) => floorHeight(stage, y));
  const own = solids.at(-1) as Solid;
  const behind = seen.filter((at) => passesThrough(eye, at, own));
  if (behind.length > HIDDEN_BEHIND) return true;
  const corners = own.outline.flatMap(([x, y]): StagePoint[] => [
    [x, y, own.low],
    [x, y, own.high],
  ]);
  return corners.filter((at) => solids.some((solid) => passesThrough(eye, at, solid))).length > HIDDEN_FEET;
}

function placePiece(
  dice: Dice,
  frame: Frame,
  plan: Plan,
  kind: FurnitureKind,
  style: FurnitureStyle,
): Furniture | null {
  const { ruler } = frame;
  const stock = FURNITURE_FT[kind];
  if (!stock) return null;
  const size = { width: ruler.size(stock.width), depth: ruler.size(stock.depth), height: ruler.size(stock.height) };
  const atWall = style.atWalls && (stock.stands === "wall" || (stock.stands === "either" && dice.chance(50)));
  const stands = atWall ? againstWall(dice, frame, plan, stock) : freely(dice, frame, style);
  return stands && { id: kind, kind, ...size, ...stands, base: 0 };
}

type Stand = Pick<Furniture, "at" | "turn">;

function freely(dice: Dice, { ruler, stage }: Frame, { deepest, turnDeg }: FurnitureStyle): Stand | null {
  const side = Math.floor(ruler.feet(stage.opening.width) / 2) - FROM_SIDE_FT;
  const x = dice.half(-side, side);
  const y = dice.half(NEAREST_FT, Math.max(deepest, NEAREST_FT));
  const steps = Math.floor(turnDeg / TURN_STEP_DEG);
  // A piece to one side is turned toward the middle of the stage, where the play is.
  const turn = steps === 0 ? 0 : (x < 0 ? 1 : -1) * dice.whole(2, steps) * TURN_STEP_DEG;
  return { at: [ruler.place(x), ruler.place(y)], turn: (turn * Math.PI) / 180 };
}

/** With its back to a wall, its front into the room: at turn 0 a piece faces down the stage, (0, -1). */
function againstWall(dice: Dice, { ruler, stage }: Frame, plan: Plan, stock: FurnitureStock): Stand | null {
  const half = stage.opening.width / 2;
  const onView = plan.walls.filter(({ from, to }) =>
    [from, to].every((corner) => Math.abs(plan.corners.get(corner)?.[0] ?? half) < half),
  );
  const wall: Wall | undefined = onView.length === 0 ? undefined : dice.pick(onView);
  const line = wall && wallLine(plan, wall);
  if (!line || ruler.feet(line.length) < stock.width + 1) return null;
  const along = dice.half(stock.width / 2 + 0.5, ruler.feet(line.length) - stock.width / 2 - 0.5) * ruler.foot;
  const [x, y] = placeOnWall(line, along);
  const out = (stock.depth / 2 + GAP_FT) * ruler.foot;
  const at = [x - line.offstage[0] * out, y - line.offstage[1] * out] as const;
  const turnDeg = Math.round((Math.atan2(-line.offstage[0], line.offstage[1]) * 180) / Math.PI);
  return {
    at: [ruler.place(ruler.feet(at[0])), ruler.place(ruler.feet(at[1]))],
    turn: (turnDeg * Math.PI) / 180,
  };
}

/** Names of a piece's corners: its feet, then its tops. */
export function boxNames(id: string, corners = 4): readonly string[] {
  return ["foot", "top"].flatMap((role) => Array.from({ length: corners }, (_, i) => `${id}.${i + 1}.${role}`));
}

/** The same corner by corner: each foot, then the top over it. */
export function cornerByCorner(id: string): readonly string[] {
  return [1, 2, 3, 4].flatMap((corner) => [`${id}.${corner}.foot`, `${id}.${corner}.top`]);
}
