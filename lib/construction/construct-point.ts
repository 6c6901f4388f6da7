import { capital } from "../plan/first-letter";
import type { PicturePoint, StagePoint } from "../stage/frame";
import { type Board, type Sheet, startSheet } from "./board";
import { choosePair, drawPair } from "./choose-pair";
import { floorLoci } from "./floor-loci";
import { type Foot, heightLoci, placedFeet } from "./height-loci";
import { type Locus, layOff, NOTHING_M } from "./locus";
import type { Construction, ConstructionResult } from "./step";
import { type Steps, startSteps } from "./steps";
import { type Catalogue, catalogue, pictureOf, type Target } from "./target";
import { wallLoci } from "./wall-loci";

/**
 * A ruler construction of a named point from what is on the sheet: of all pairs of lines known to pass through it, the
 * one that stays on the paper and takes the fewest steps.
 */
export function constructPoint(start: Board, name: string): ConstructionResult {
  const board = startSheet(start);
  const catalogued = catalogue(board);
  const target = catalogued.target(name);
  if (!target) return { found: false, reason: `${name} names no point of the plan` };
  const truth = pictureOf(board, target.at);
  if (!truth) return { found: false, reason: `${name} is level with the eye or behind it` };
  const known = onSheetAlready(board, target, catalogued);
  if (known)
    return found(name, "on the sheet already", board, (steps) =>
      steps.mark(known, `${capital(target.say)} is on the sheet already.`),
    );
  if (Math.abs(target.at[1]) < NOTHING_M)
    return found(name, "true size", board, (steps) =>
      layOff(board, steps, target.at[0], target.at[2], null, target.say),
    );
  const best = bestPair(board, target, lociOf(board, target, catalogued));
  return best
    ? { found: true, construction: best }
    : { found: false, reason: `no ruler construction of ${name} was found` };
}

function found(point: string, method: string, board: Sheet, draw: (steps: Steps) => unknown): ConstructionResult {
  const steps = startSteps(board);
  draw(steps);
  return { found: true, construction: { point, method, steps: steps.list() } };
}

/**
 * Where the target is on the sheet from the start: placed itself or under another name, a corner of the frame, or straight
 * before the eye at eye height. Told by places of the stage alone: what merely looks like one place still is to be proved.
 */
function onSheetAlready(board: Sheet, { name, at }: Target, { placed }: Catalogue): PicturePoint | null {
  const { viewer } = board;
  const own = name === null ? undefined : board.placed.get(name);
  const here = (place: StagePoint | null) =>
    place === null
      ? Math.hypot(at[0] - viewer.offset, at[2] - viewer.eyeHeight) < NOTHING_M
      : Math.hypot(at[0] - place[0], at[1] - place[1], at[2] - place[2]) < NOTHING_M;
  return own ?? [...placed, ...board.landmarks].find(({ stage }) => here(stage))?.at ?? null;
}

/** Lines that need no help point. */
function plainLoci(board: Sheet, target: Target, known: Catalogue): readonly Locus[] {
  return [...wallLoci(board, target), ...floorLoci(board, target, known)];
}

function lociOf(board: Sheet, target: Target, known: Catalogue): readonly Locus[] {
  const plain = plainLoci(board, target, known);
  const feet = placedFeet(target, known);
  const stood = feet.length > 0 ? feet : constructedFoot(board, target, known);
  return [...plain, ...stood.flatMap((foot) => heightLoci(board, target, foot))];
}

/** The point below the target, itself constructed: the one it stands over, or its place on the floor at the plaster line's level. */
function constructedFoot(board: Sheet, target: Target, known: Catalogue): readonly Foot[] {
  const [x, y, z] = target.at;
  const below: Target = target.over ?? {
    name: null,
    say: `the place on the floor under ${target.say}`,
    at: [x, y, 0],
    walls: [],
    over: null,
  };
  if (Math.abs(below.at[2] - z) < NOTHING_M) return [];
  const pair = choosePair(board, plainLoci(board, below, known));
  if (!pair) return [];
  return [
    {
      method: pair.method,
      z: below.at[2],
      say: below.say,
      draw: (steps) => {
        const number = drawPair(steps, pair.loci, `at ${below.say}`);
        return number === null ? null : steps.at(number);
      },
    },
  ];
}

function bestPair(board: Sheet, target: Target, loci: readonly Locus[]): Construction | null {
  const pair = choosePair(board, loci);
  if (!pair || !target.name) return null;
  const steps = startSteps(board);
  drawPair(steps, pair.loci, `at ${target.say}`);
  return { point: target.name, method: pair.method, steps: steps.list() };
}
