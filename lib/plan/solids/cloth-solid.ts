import { between } from "../../geometry/vector";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import type { Masking } from "../plan";
import type { Solid } from "./solid";
import { type DetailSketch, solidOfFaces } from "./solid-of-faces";

/** About how far apart folds fall, metres, and how many there are at most. */
const FOLD_M = 0.55;
const MOST_FOLDS = 40;
/** Folds are unevenly spaced and long, as cloth hangs: shares of the spacing and of the drop, taken in turn. */
const FOLD_SHIFT = [0.12, -0.18, 0.06, 0.2, -0.1] as const;
const FOLD_TOP = [1, 0.97, 1, 0.9, 1] as const;
const FOLD_LOW = [0.04, 0.38, 0.12, 0.5, 0.22] as const;

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
      const pick = (values: readonly number[]) => values[i % values.length] as number;
      const place = between(a, b, (i + 0.5 + pick(FOLD_SHIFT)) / count);
      const [from, drop] = [low(place), top - low(place)];
      return {
        id: `${id}.fold.${i + 1}`,
        from: point(place, from + drop * pick(FOLD_TOP)),
        to: point(place, from + drop * pick(FOLD_LOW)),
        on: id,
      };
    });
  }
}
