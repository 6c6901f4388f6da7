import type { PlanPoint } from "../../../stage/frame";
import type { Draft, Thing } from "../../draft";
import type { Edit } from "../../edit";
import { applyEdit } from "../../edits/apply-edit";
import { addBroughtWalls } from "../../edits/bring-walls";
import { applyAffine } from "../affine";
import type { Brought, BroughtLayer } from "../brought";
import { asBroughtRuns, type Heights, USUAL_HEIGHTS } from "./as-brought-runs";
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
import { walkRuns } from "./walk-runs";
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
  readonly heights?: Heights;
};

export type Placed =
  | {
      readonly ok: true;
      /** What puts it on a draft's plan; `draft` is the one it was placed for, after it. */
      readonly edit: Edit;
      readonly draft: Draft;
      readonly made: readonly Thing[];
      readonly leftOut: readonly LeftOut[];
    }
  | { readonly ok: false; readonly say: string };

/** A set has a few hundred walls; more lines than this are a building, or furniture on the walls' layer. */
const MOST_PIECES = 6000;
/** The most parts that a file may hold, of all kinds together. */
const MOST_PARTS = 2000;
/** Nothing of a stage is farther from where its lines cross, metres. */
const FARTHEST_M = 300;
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
  const farthest = Math.max(...drawn.flatMap(({ a }) => a.map(Math.abs)));
  if (farthest > FARTHEST_M)
    return refuse(
      `The walls come out as far as ${Math.round(farthest).toLocaleString("en")} m from where the centre line crosses the plaster line. Point at those lines again, and check the size.`,
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
  const parts = runs.reduce((sum, { walls: own }) => sum + 2 * own.length + 1, 0) + found.flat().length;
  if (parts > MOST_PARTS)
    return refuse(
      `That would make more than ${MOST_PARTS.toLocaleString("en")} corners, walls and openings, and a set has a few hundred. Leave out layers that are not walls, or bring the set alone.`,
    );
  const edit = { edit: "bring-walls", runs: asBroughtRuns(runs, found, heights), height: heights.wall } as const;
  const edited = applyEdit(draft, edit);
  if (!edited.ok) return edited;
  const accounted = new Set(found.flatMap((list) => list.flatMap((opening) => opening.shapes)));
  const leftOut = listLeftOut({
    short: drawn.filter((piece) => lengthOf(piece) <= JOIN_M),
    open: bridged.open,
    shapes: looseShapes(shapes, accounted),
    refused: addBroughtWalls(draft, edit).refused,
  });
  return { ok: true, edit, draft: edited.draft, made: edited.made, leftOut };
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

function refuse(say: string): Placed {
  return { ok: false, say };
}
