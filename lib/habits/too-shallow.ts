import { fitDepth } from "./fitted-depth";

/** Foreshortens, but too much of the depth is lost: everything stands r of its depth, r < 1. */
export const tooShallow = fitDepth(
  "too-shallow",
  "Depths too shallow",
  0.35,
  0.96,
  (share) =>
    `You foreshorten, but too much: everything stands at about ${share} % of its depth, too near the plaster line. The floor shortens only by the distance of the eye; check one depth with the distance point and scale the rest by it.`,
);
