import { fitDepth } from "./fitted-depth";

/** Foreshortens, but too little: everything stands r of its depth, r > 1. */
export const tooDeep = fitDepth(
  "too-deep",
  "Depths too deep",
  1.04,
  3,
  (share) =>
    `You foreshorten, but everything stands at about ${share} % of its depth, too far upstage. The floor shortens by the distance of the eye; check one depth with the distance point and scale the rest by it.`,
);
