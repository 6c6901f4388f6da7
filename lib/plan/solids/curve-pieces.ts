/**
 * The straight pieces of a curve leave it by no more than this, metres: a fifth of a millimetre, a hundredth of one on paper
 * at 1:20.
 */
const SAGITTA_M = 2e-4;
const FEWEST = 24;
const MOST = 192;

/** How many straight pieces a whole circle of this radius needs, a multiple of four so that its quarter points are corners. */
export function curvePieces(radius: number): number {
  const needed = Math.PI / Math.acos(1 - Math.min(SAGITTA_M / radius, 1));
  return 4 * Math.ceil(Math.min(MOST, Math.max(FEWEST, needed || 0)) / 4);
}
