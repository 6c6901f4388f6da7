import { type Interval, intersect, unite } from "../../geometry/intervals";
import { backProjectToFloor, project } from "../../perspective/project";
import type { Plan } from "../../plan/plan";
import type { Face, FaceKind } from "../../plan/solids/solid";
import { insideOutline, platformTop } from "../../plan/surface-level";
import type { StagePoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import type { Viewer } from "../../stage/viewer";
import { CAST, type HatchLine } from "./hatch-family";
import { type HatchPaper, hatchRows, onRow, type PictureRings } from "./hatch-rows";
import { TO_LIGHT } from "./light";

/** What casts a shadow: things that stand about. The shadows of walls and cloths would drown the floor. */
const CASTERS: readonly FaceKind[] = ["furniture", "column", "platform", "stair"];
/** A thing whose foot is this near the level of a surface stands on it, metres. */
const STANDS_ON_M = 0.02;

/** A surface that shadows fall on: the stage floor, or the top of a platform. */
type Ground = {
  readonly id: string;
  /** Its height above the raked floor, or its level where it is a platform's. */
  readonly rake: number;
  readonly level: number;
  readonly edge: readonly StagePoint[] | null;
  readonly face: number | null;
};

/**
 * The shadows of furniture, columns, platforms and steps on what they stand on, as level hatching: each face's shadow is
 * laid on the floor or the platform under the thing, and rows that run in several are drawn once. A shadow stays on its ground.
 */
export function shadowLines(
  faces: readonly Face[],
  plan: Plan,
  stage: Stage,
  viewer: Viewer,
  paper: HatchPaper,
): readonly HatchLine[] {
  const grounds = new Map<string, { ground: Ground; shadows: PictureRings[] }>();
  for (const [element, own] of castersOf(faces)) {
    const ground = groundUnder(own, element, faces, plan, stage);
    const entry = grounds.get(ground.id) ?? { ground, shadows: [] };
    grounds.set(ground.id, entry);
    for (const face of own) {
      const shadow = inPicture(
        viewer,
        face.outline.map((point) => castOn(ground, point)),
      );
      if (shadow) entry.shadows.push(shadow);
    }
  }
  return [...grounds.values()].flatMap(({ ground, shadows }) => rowsOf(ground, shadows, stage, viewer, paper));
}

function castersOf(faces: readonly Face[]): ReadonlyMap<string, readonly Face[]> {
  const casters = new Map<string, Face[]>();
  for (const face of faces) {
    if (!CASTERS.includes(face.kind)) continue;
    const own = casters.get(face.element);
    if (own) own.push(face);
    else casters.set(face.element, [face]);
  }
  return casters;
}

function groundUnder(own: readonly Face[], element: string, faces: readonly Face[], plan: Plan, stage: Stage): Ground {
  const points = own.flatMap(({ outline }) => outline);
  const foot = Math.min(...points.map(([, , z]) => z));
  const middle = (k: 0 | 1) => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  const platform = plan.platforms.find(
    (p) =>
      p.id !== element &&
      insideOutline(p.outline, [middle(0), middle(1)]) &&
      Math.abs(platformTop(p, stage) - foot) < STANDS_ON_M,
  );
  if (!platform) return { id: "floor", rake: stage.rake, level: 0, edge: null, face: null };
  const level = platformTop(platform, stage);
  const face = faces.findIndex(({ id }) => id === `${platform.id}.top`);
  return {
    id: platform.id,
    rake: 0,
    level,
    edge: platform.outline.map(([x, y]): StagePoint => [x, y, level]),
    face: face < 0 ? null : face,
  };
}

/** Where the light through a point falls on the ground; the point itself where it lies on or under it. */
function castOn({ rake, level }: Ground, [x, y, z]: StagePoint): StagePoint {
  const [lx, ly, lz] = TO_LIGHT;
  const onPlane = (slope: number): StagePoint => {
    const t = Math.max(0, (z - level - slope * y) / (lz - slope * ly));
    return [x - lx * t, y - ly * t, level + slope * (y - ly * t)];
  };
  const fallen = onPlane(rake);
  return fallen[1] >= 0 ? fallen : onPlane(0);
}

function inPicture(viewer: Viewer, ring: readonly StagePoint[]): PictureRings | null {
  const corners = ring.flatMap((point) => {
    const seen = project(viewer, point);
    return seen.seen ? [...seen.at] : [];
  });
  return corners.length === 2 * ring.length ? { corners, ends: [ring.length] } : null;
}

function rowsOf(
  { id, level, edge, face }: Ground,
  shadows: readonly PictureRings[],
  stage: Stage,
  viewer: Viewer,
  paper: HatchPaper,
): readonly HatchLine[] {
  const rows = new Map<number, Interval[]>();
  for (const shadow of shadows)
    for (const [row, stretches] of hatchRows(shadow, CAST, paper))
      rows.set(row, [...(rows.get(row) ?? []), ...stretches]);
  const bounds = edge ? inPicture(viewer, edge) : null;
  const within = bounds ? hatchRows(bounds, CAST, paper) : null;
  const ground = edge ? { rake: 0 } : stage;
  return [...rows].flatMap(([row, stretches]) => {
    const all = unite(stretches);
    const kept = within ? intersect(all, within.get(row) ?? []) : all;
    return kept.flatMap(([from, to], i): HatchLine[] => {
      const ends = [from, to].map((along) =>
        backProjectToFloor(viewer, ground, onRow(CAST, row, along, paper.mm), level),
      );
      const [a, b] = ends;
      if (!(a?.found && b?.found)) return [];
      const faces = face === null ? [] : [face];
      return [{ id: `${id}.shadow.${row}.${i + 1}`, family: CAST, row, from: a.at, to: b.at, faces }];
    });
  });
}
