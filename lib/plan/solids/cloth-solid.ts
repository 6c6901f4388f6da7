import { between } from "../../geometry/vector";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import type { Masking } from "../plan";
import type { Solid } from "./solid";
import { type DetailSketch, solidOfFaces } from "./solid-of-faces";

/** About how far apart folds fall, metres, and how many there are at most. */
const FOLD_M = 0.42;
const MOST_FOLDS = 60;
/**
 * Folds are unevenly spaced, and hang from the top or stand on the hem, as cloth falls: how far each is shifted, as a share of the
 * spacing, and from which height to which it runs, as shares of the drop, taken in turn.
 */
const FOLD_SHIFT = [0.1, -0.14, 0.06, 0.16, -0.08] as const;
const FOLD_RUN = [
  [1, 0.06],
  [0.42, 0],
  [1, 0.2],
  [1, 0.5],
  [0.3, 0],
  [1, 0.02],
  [1, 0.34],
] as const;

/** A hanging or standing cloth as one flat face from its foot or trim to its top; legs and borders have some soft folds drawn on. */
export function clothSolid({ id, kind, line, trim, height }: Masking, stage: Pick<Stage, "rake">): Solid {
  const [a, b] = line;
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const top = trim === null ? height : trim + height;
  const low = (place: PlanPoint) => trim ?? floorHeight(stage, place[1]);
  const point = (place: PlanPoint, z: number): StagePoint => [place[0], place[1], z];
  if (!(length > 0 && top > Math.max(low(a), low(b)))) return { faces: [], lines: [] };
  const bends = trim === null && stage.rake !== 0 && a[1] * b[1] < 0;
  const bend = bends ? [point(between(a, b, a[1] / (a[1] - b[1])), 0)] : [];
  const outline = [point(a, low(a)), ...bend, point(b, low(b)), point(b, top), point(a, top)];
  const folds = kind === "backing" ? [] : foldLines();
  // Outer is the side toward the audience; of a cloth that runs straight upstage, the side toward stage right.
  const [nx, ny] = [b[1] - a[1], a[0] - b[0]];
  const toward = ny < 0 || (ny === 0 && nx < 0) ? 1 : -1;
  return solidOfFaces([{ id, element: id, kind: "cloth", outline, outer: [nx * toward, ny * toward, 0] }], folds);

  function foldLines(): DetailSketch[] {
    const count = Math.min(MOST_FOLDS, Math.floor(length / FOLD_M));
    return Array.from({ length: count }, (_, i) => {
      const shift = FOLD_SHIFT[i % FOLD_SHIFT.length] ?? 0;
      const [high, end] = FOLD_RUN[i % FOLD_RUN.length] ?? [1, 0];
      const place = between(a, b, (i + 0.5 + shift) / count);
      const [from, drop] = [low(place), top - low(place)];
      return {
        id: `${id}.fold.${i + 1}`,
        from: point(place, from + drop * high),
        to: point(place, from + drop * end),
        on: id,
      };
    });
  }
}
