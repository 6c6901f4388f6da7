/** Share of marks that are slips, anywhere on the paper, so that one slip is not a habit. */
export const SLIP_SHARE = 0.05;

/** Sizes of the hand tried, as multiples of the least: half the tolerance. */
const HANDS = [1, 1.2, 1.44, 1.73, 2.07, 2.49, 3, 3.6] as const;

/** Spread of the prior over the size of the hand, in its logarithm: mild. */
const HAND_PRIOR_SPREAD = 0.7;

/** What the likelihoods of one set of marks share. */
export type Paper = {
  /** Half the tolerance, mm, over the set: the least the hand's sigma is taken to be. */
  readonly handMm: number;
  /** Density of a slip, per square mm: one over the paper's area. */
  readonly slipDensity: number;
};

/**
 * Log-likelihood of distances from where marks were meant, mm, under a round Gaussian hand mixed with slips; its sigma is
 * the one that explains these distances best, with a mild prior. Each entry lists the places a mark may have been meant
 * for; one of them, taken as equally likely.
 */
export function logLikelihood(distances: readonly (readonly number[])[], paper: Paper): number {
  let best = Number.NEGATIVE_INFINITY;
  for (const times of HANDS) {
    const sigma = paper.handMm * times;
    const prior = -0.5 * (Math.log(times) / HAND_PRIOR_SPREAD) ** 2;
    const peak = (1 - SLIP_SHARE) / (2 * Math.PI * sigma * sigma);
    let sum = prior;
    for (const places of distances) {
      let density = 0;
      for (const d of places) density += Math.exp((-0.5 * d * d) / (sigma * sigma));
      sum += Math.log((peak * density) / places.length + SLIP_SHARE * paper.slipDensity);
    }
    best = Math.max(best, sum);
  }
  return best;
}
