import { cross } from "../../../geometry/vector";
import { FOOT_M } from "../../../measure/length";
import type { Opening, Wall } from "../../../plan/plan";
import type { PlanPoint } from "../../../stage/frame";
import type { Draft, Thing } from "../../draft";
import type { Edit } from "../../edit";
import { applyEdit } from "../../edits/apply-edit";
import { applyAffine } from "../affine";
import type { Brought, BroughtLayer } from "../brought";
import { bandOf, bridgeGaps, type Gap } from "./bridge-gaps";
import { findOpenings } from "./find-openings";
import type { FoundOpening } from "./found-opening";
import { joinEnds } from "./join-ends";
import { type LeftOut, listLeftOut, looseShapes } from "./left-out";
import { mergeOverEachOther } from "./merge-over-each-other";
import { openingShapes } from "./opening-shapes";
import { type PlaceScale, type PointedLine, placeFrame } from "./place-frame";
import { straightPieces } from "./straight-pieces";
import { thickenWalls } from "./thicken-walls";
import { type Run, walkRuns } from "./walk-runs";
import { JOIN_M, lengthOf, placeAlong, type WallPiece } from "./wall-piece";

export type LayerUse = "walls" | "openings" | "ignore";

/** What the author said of a brought drawing. Layers that are not named are ignored. */
export type Placing = {
  readonly layerUse: Readonly<Record<string, LayerUse>>;
  /** Two places on the centre line, the one nearer the audience first. */
  readonly centreLine: PointedLine;
  readonly plasterLine: PointedLine;
  readonly scale: PlaceScale;
  /** A plan tells no heights: these are what walls and openings get, metres. Left out: 14 ft, 7 ft and 2 ft 9. */
  readonly heights?: { readonly wall: number; readonly door: number; readonly sill: number };
};

export type Placed =
  | { readonly ok: true; readonly draft: Draft; readonly made: readonly Thing[]; readonly leftOut: readonly LeftOut[] }
  | { readonly ok: false; readonly say: string };

/** 14 ft walls, 7 ft doors and window sills at 2 ft 9: common practice, no source. */
const USUAL_HEIGHTS = { wall: 14 * FOOT_M, door: 7 * FOOT_M, sill: 2.75 * FOOT_M } as const;

/** A set has a few hundred walls; more lines than this are a building, or furniture on the walls' layer. */
const MOST_PIECES = 6000;
/** A jamb is so near where its opening's lines end, metres. */
const JAMB_M = 0.16;

/**
 * A brought drawing's walls and openings put on a draft's plan, beside what stands there. Lines of layers for walls become walls:
 * ends that nearly meet are joined, lines in line become one, two faces one wall with its thickness, and a gap with a door's
 * swing or a line of a layer for openings in it goes on as an opening. What was left out is listed with its reason.
 */
export function placeBrought(brought: Brought, placing: Placing, draft: Draft): Placed {
  const frame = placeFrame(brought.unit, placing.scale, placing.centreLine, placing.plasterLine);
  if (!frame.ok) return frame;
  const used = (use: LayerUse) => brought.layers.filter(({ name }) => ownUse(placing.layerUse, name) === use);
  const onPlan = (layer: BroughtLayer) =>
    layer.lines.map(({ points, curved }) => ({
      curved,
      points: points.map((at): PlanPoint => applyAffine(frame.toPlan, at)),
    }));
  const drawn = used("walls").flatMap(onPlan).flatMap(straightPieces);
  if (drawn.length === 0) return refuse("No layer with lines on it is said to be walls. Say which layers are walls.");
  if (drawn.length > MOST_PIECES)
    return refuse(
      `The layers said to be walls hold ${drawn.length.toLocaleString("en")} lines, and a set has a few hundred. Leave out layers that are not walls, or bring the set alone.`,
    );
  const shapes = openingShapes(used("openings").flatMap(onPlan));
  const { viewer } = draft.exercise;
  const eye: PlanPoint = [viewer.offset, -viewer.distance];
  const joined = joinEnds(mergeOverEachOther(drawn));
  const walls = thickenWalls(joined, eye);
  const bridged = bridgeGaps(walls, shapes);
  const runs = walkRuns(bridged.pieces, eye);
  const heights = placing.heights ?? USUAL_HEIGHTS;

  const found = runs.flatMap(({ walls: own }) => own.map((wall) => openingsOf(wall, shapes, bridged.openings)));
  const added = addRuns(draft, runs, found, heights);
  const accounted = new Set(found.flatMap((list) => list.flatMap((opening) => opening.shapes)));
  const leftOut = listLeftOut({
    short: drawn.filter((piece) => lengthOf(piece) <= JOIN_M),
    open: bridged.open,
    shapes: looseShapes(shapes, accounted),
    refused: added.refused,
  });
  return { ok: true, draft: added.draft, made: added.made, leftOut };
}

/** A layer's use; a name like `constructor` is a layer's too. */
function ownUse(layerUse: Placing["layerUse"], name: string): LayerUse {
  return Object.hasOwn(layerUse, name) ? (layerUse[name] as LayerUse) : "ignore";
}

/** The openings on a wall, from jamb to jamb where it was drawn open there. */
function openingsOf(
  wall: WallPiece,
  shapes: Parameters<typeof findOpenings>[1],
  gaps: readonly Gap[],
): readonly FoundOpening[] {
  const line = bandOf(wall);
  const open = gaps.flatMap(({ from, to }) => {
    const [[u, v], [w, x]] = [placeAlong(line, from), placeAlong(line, to)];
    return Math.max(Math.abs(v), Math.abs(x)) < JAMB_M ? [[Math.min(u, w), Math.max(u, w)] as const] : [];
  });
  return findOpenings(line, shapes).map((opening) => {
    const gap = open.find(([u, w]) => Math.abs(u - opening.start) < JAMB_M && Math.abs(w - opening.end) < JAMB_M);
    return gap ? { ...opening, start: gap[0], end: gap[1] } : opening;
  });
}

type Added = { readonly draft: Draft; readonly made: readonly Thing[]; readonly refused: readonly string[] };

function addRuns(
  start: Draft,
  runs: readonly Run[],
  found: readonly (readonly FoundOpening[])[],
  heights: Heights,
): Added {
  let draft = start;
  const made: Thing[] = [];
  const refused: string[] = [];
  const edit = (change: Edit): readonly Thing[] => {
    const edited = applyEdit(draft, change);
    if (!edited.ok) refused.push(edited.say);
    else draft = edited.draft;
    return edited.ok ? edited.made : [];
  };
  let next = 0;
  for (const { walls, closed } of runs) {
    const corners = [...walls.map(({ a }) => a), ...(closed ? [] : [(walls.at(-1) as WallPiece).b])];
    const { thickness } = walls[0] as WallPiece;
    const things = edit({ edit: "add-walls", corners, closed, height: heights.wall, thickness });
    made.push(...things);
    const ids = things.flatMap((thing) => (thing.kind === "wall" ? [thing.id] : []));
    for (const [i, wall] of walls.entries()) {
      const openings = found[next++] ?? [];
      const id = ids[i];
      if (id === undefined) continue;
      const onstage = isOnstageLeft(wall) ? ("left" as const) : ("right" as const);
      const change: Partial<Wall> = {
        ...(wall.thickness === thickness ? {} : { thickness: wall.thickness }),
        ...(onstage === "left" ? { onstage } : {}),
      };
      if (Object.keys(change).length > 0) edit({ edit: "change-wall", id, change });
      for (const opening of openings)
        made.push(...edit({ edit: "add-opening", wall: id, opening: asOpening(opening, onstage, heights) }));
    }
  }
  return { draft, made, refused };
}

type Heights = NonNullable<Placing["heights"]>;

function isOnstageLeft(wall: WallPiece): boolean {
  return wall.offstage !== null && cross([wall.b[0] - wall.a[0], wall.b[1] - wall.a[1]], wall.offstage) < 0;
}

function asOpening(found: FoundOpening, onstage: "left" | "right", { wall, door, sill }: Heights): Omit<Opening, "id"> {
  const head = Math.min(door, wall);
  return {
    kind: found.kind,
    at: found.start,
    width: found.end - found.start,
    sill: found.kind === "window" ? Math.min(sill, head / 2) : 0,
    head,
    depth: found.depth,
    leaves: found.leaves,
    hinge: found.hinge,
    swing: found.left === (onstage === "left") ? "onstage" : "offstage",
  };
}

function refuse(say: string): Placed {
  return { ok: false, say };
}
