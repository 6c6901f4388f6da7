import { type Board, type Sheet, samePlace, startSheet } from "./board";
import { floorLoci } from "./floor-loci";
import { type Foot, heightLoci, placedFeet } from "./height-loci";
import { type Locus, layOff, NOTHING_M } from "./locus";
import type { Construction, ConstructionResult } from "./step";
import { isBetter, type Quality, type RankedQuality, type Steps, startSteps } from "./steps";
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
  const known = board.placed.get(name) ?? board.landmarks.find(({ at }) => samePlace(at, truth))?.at;
  if (known)
    return found(
      name,
      "on the sheet already",
      (steps) => steps.mark(known, `${capital(target.say)} is on the sheet already.`),
      board,
    );
  if (Math.abs(target.at[1]) < NOTHING_M)
    return found(name, "true size", (steps) => layOff(board, steps, target.at[0], target.at[2]), board);
  const best = bestPair(board, target, lociOf(board, target, catalogued));
  return best
    ? { found: true, construction: best }
    : { found: false, reason: `no ruler construction of ${name} was found` };
}

function found(point: string, method: string, draw: (steps: Steps) => unknown, board: Sheet): ConstructionResult {
  const steps = startSteps(board);
  draw(steps);
  return { found: true, construction: { point, method, steps: steps.list() } };
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
  const pair = bestLoci(board, plainLoci(board, below, known));
  if (!pair) return [];
  return [
    {
      method: pair.method,
      z: below.at[2],
      say: below.say,
      draw: (steps) => {
        const number = drawPair(steps, pair.loci, `Where they cross is ${below.say}.`);
        return number === null ? null : steps.at(number);
      },
    },
  ];
}

type Pair = { readonly loci: readonly [Locus, Locus]; readonly method: string };

function drawPair(steps: Steps, [one, other]: readonly [Locus, Locus], say: string): number | null {
  const first = one.draw(steps);
  const second = first === null ? null : other.draw(steps);
  return first === null || second === null || first === second ? null : steps.meet(first, second, say);
}

type Sketched = { readonly locus: Locus; readonly quality: Quality };

/** Each locus drawn by itself; what it needs alone is the least it needs in a pair. */
function sketch(board: Sheet, loci: readonly Locus[]): readonly Sketched[] {
  return loci.flatMap((locus) => {
    const steps = startSteps(board);
    return locus.draw(steps) === null ? [] : [{ locus, quality: steps.quality() }];
  });
}

function bestLoci(board: Sheet, loci: readonly Locus[]): (Pair & { readonly steps: Steps }) | null {
  let best: (Pair & { readonly steps: Steps; readonly quality: RankedQuality }) | null = null;
  const sketched = sketch(board, loci);
  for (const [i, one] of sketched.entries())
    for (const other of sketched.slice(i + 1)) {
      const chosen = {
        rank: one.locus.rank + other.locus.rank,
        favoured: favours(board, one.locus, other.locus),
      };
      if (best && !isBetter({ ...leastOf(one.quality, other.quality), ...chosen }, best.quality)) continue;
      const steps = startSteps(board);
      if (drawPair(steps, [one.locus, other.locus], "") === null) continue;
      const quality = { ...steps.quality(), ...chosen };
      if (!best || isBetter(quality, best.quality))
        best = { loci: [one.locus, other.locus], method: methodOf(one.locus, other.locus), steps, quality };
    }
  return best;
}

/** The least a pair can need: steps may be shared, so the longer of the two and the crossing. */
function leastOf(a: Quality, b: Quality): Quality {
  return {
    offPaper: Math.max(a.offPaper, b.offPaper),
    poor: Math.max(a.poor, b.poor),
    steps: Math.max(a.steps, b.steps) + 1,
  };
}

function bestPair(board: Sheet, target: Target, loci: readonly Locus[]): Construction | null {
  const pair = bestLoci(board, loci);
  if (!pair || !target.name) return null;
  const steps = startSteps(board);
  drawPair(steps, pair.loci, `Where they cross is ${target.say}.`);
  return { point: target.name, method: pair.method, steps: steps.list() };
}

function favours({ favour }: Board, one: Locus, other: Locus): boolean {
  return favour !== undefined && (one.method === favour || other.method === favour);
}

/** The ray to the CVP is part of nearly every construction; the other line is what names the method. */
function methodOf(one: Locus, other: Locus): string {
  const plain = (locus: Locus) => locus.method === "ray to the CVP" || locus.method === "upright over its foot";
  if (plain(one) && !plain(other)) return other.method;
  if (plain(other)) return one.method;
  return one.method === other.method ? one.method : `${one.method}, ${other.method}`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
