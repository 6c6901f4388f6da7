import type { Stage } from "../../stage/stage";
import { mitreWall, type WallEnd } from "../mitre-wall";
import type { Plan, Wall } from "../plan";
import { type OpeningRim, openingRims } from "./opening-rim";
import { nicheBack, revealFaces } from "./reveal-faces";
import type { FaceSketch } from "./solid-of-faces";
import { wallFaces } from "./wall-face";
import { type WallSpace, wallSpace } from "./wall-space";

/** A niche without a depth goes in by this much, metres. */
const NICHE_M = 0.1;
/** A niche whose back comes this near the wall's offstage face goes through to it, metres. */
const THROUGH_M = 1e-6;

/**
 * A wall's surfaces: the drawn face, and of a thick wall the offstage face, the top, the ends that are not mitred, and the
 * reveals of its openings. A wall of no thickness is its drawn face, seen from both sides. Only a niche has a depth of its own.
 */
export function wallSketch(plan: Plan, wall: Wall, stage: Pick<Stage, "rake">): readonly FaceSketch[] {
  const space = wallSpace(plan, wall, stage);
  if (!space) return [];
  const rims = openingRims(space, stage);
  const [x, y] = space.line.offstage;
  const face = wallFaces(wall.id, space, { v: 0, from: 0, to: space.line.length }, rims, [-x, -y, 0]);
  const reveals = rims.flatMap((rim) => {
    const id = `${wall.id}.${rim.opening.id}`;
    if (rim.opening.kind !== "niche") return wall.thickness > 0 ? revealFaces(id, space, rim, wall.thickness) : [];
    const depth = nicheDepth(rim);
    return [...revealFaces(id, space, rim, depth), nicheBack(id, space, rim, depth)];
  });
  return [...face, ...reveals, ...(wall.thickness > 0 ? thickness(plan, space, rims) : [])];
}

function nicheDepth({ opening }: OpeningRim): number {
  return opening.depth ?? NICHE_M;
}

function thickness(plan: Plan, space: WallSpace, rims: readonly OpeningRim[]): readonly FaceSketch[] {
  const { wall, line, top } = space;
  const through = rims.filter((rim) => rim.opening.kind !== "niche" || nicheDepth(rim) > wall.thickness + THROUGH_M);
  const [from, to] = (["from", "to"] as const).map((end) => {
    const { at, mitred } = mitreWall(plan, wall, line, end);
    return { u: (at[0] - line.from[0]) * line.along[0] + (at[1] - line.from[1]) * line.along[1], mitred };
  }) as [End, End];
  // Two mitres that cross within a very short wall leave it no back.
  if (to.u <= from.u) return [];
  const back = wallFaces(
    `${wall.id}.back`,
    space,
    { v: wall.thickness, from: from.u, to: to.u },
    through,
    space.offstage,
  );
  return [...back, ...tops(space, rims, from, to), ...end("from", 0, from), ...end("to", line.length, to)];

  function end(name: WallEnd, u: number, { u: backU, mitred }: End): FaceSketch[] {
    const neighbour = mitred ? topBeside(plan, wall, name) : null;
    const low = neighbour === null ? null : Math.max(neighbour, space.foot(u, 0));
    if (low !== null && low >= top) return [];
    const foot =
      low === null
        ? space.footPath([u, 0], [backU, wall.thickness])
        : [space.at(u, 0, low), space.at(backU, wall.thickness, low)];
    const sign = name === "from" ? -1 : 1;
    return [
      {
        id: `${wall.id}.end.${name}`,
        element: wall.id,
        kind: "wall",
        outline: [...foot, space.at(backU, wall.thickness, top), space.at(u, 0, top)],
        outer: [space.along[0] * sign, space.along[1] * sign, 0],
      },
    ];
  }
}

type End = { readonly u: number; readonly mitred: boolean };

/** The top, parted where openings go through it. */
function tops(space: WallSpace, rims: readonly OpeningRim[], from: End, to: End): readonly FaceSketch[] {
  const { wall, line, top } = space;
  const hold = (u: number) => Math.min(Math.max(u, from.u), to.u);
  const gaps = rims.filter(({ open }) => open).flatMap(({ start, end }) => [start, end]);
  const bounds = [0, ...gaps, line.length];
  return bounds.flatMap((start, i): FaceSketch[] => {
    const next = bounds[i + 1];
    if (i % 2 === 1 || next === undefined) return [];
    const backStart = start === 0 ? from.u : hold(start);
    const backEnd = next === line.length ? to.u : hold(next);
    return [
      {
        id: bounds.length > 2 ? `${wall.id}.top.${i / 2 + 1}` : `${wall.id}.top`,
        element: wall.id,
        kind: "wall",
        outline: [
          space.at(start, 0, top),
          space.at(next, 0, top),
          space.at(backEnd, wall.thickness, top),
          space.at(backStart, wall.thickness, top),
        ],
        outer: [0, 0, 1],
        seamless: true,
      },
    ];
  });
}

/** Level of the top of the other wall at a corner where two meet. */
function topBeside(plan: Plan, wall: Wall, end: WallEnd): number {
  const other = plan.walls.find((w) => w !== wall && (w.from === wall[end] || w.to === wall[end]));
  return other ? other.base + other.height : Number.NEGATIVE_INFINITY;
}
