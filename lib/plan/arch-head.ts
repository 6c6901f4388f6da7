import type { Opening } from "./plan";

/** On a wall's face: how far along the opening from its start jamb, and how high, metres. */
type FacePoint = readonly [along: number, up: number];

export type ArchHead = {
  /** Where the jambs end and the curve begins. */
  readonly spring: number;
  /** The curve from the start jamb's springing over the crown to the end jamb's, both included. */
  readonly curve: readonly FacePoint[];
};

/**
 * The head of an arched opening in its wall's face, metres: half an ellipse over its width, a half circle where the jambs are
 * high enough for one. `low` is the higher of its jambs' feet, `crown` its highest point, `pieces` how many straight lines
 * stand for the curve.
 */
export function archHead({ width }: Pick<Opening, "width">, low: number, crown: number, pieces: number): ArchHead {
  const half = width / 2;
  const spring = Math.max(crown - half, Math.min(low, crown));
  const curve = Array.from({ length: pieces + 1 }, (_, i): FacePoint => {
    if (i === 0) return [0, spring];
    if (i === pieces) return [width, spring];
    const angle = (Math.PI * i) / pieces;
    return [half - half * Math.cos(angle), spring + (crown - spring) * Math.sin(angle)];
  });
  return { spring, curve };
}
