import { centreVanishingPoint } from "../perspective/vanishing-point";
import type { PicturePoint } from "../stage/frame";
import type { Sheet } from "./board";
import { type Locus, layOff, level, NOTHING_M, upright } from "./locus";
import type { Steps } from "./steps";
import type { Catalogue, Target } from "./target";

/** A point straight below the target, and how it gets on to the sheet: a step's number, or a point that is there. */
export type Foot = {
  readonly method: string | null;
  readonly z: number;
  readonly say: string;
  draw(steps: Steps): PicturePoint | null;
};

/** Points on the sheet straight below or above the target. */
export function placedFeet({ at: [x, y], name }: Target, { placed }: Catalogue): readonly Foot[] {
  return placed
    .filter(
      (point) =>
        point.name !== name && Math.abs(point.stage[0] - x) < NOTHING_M && Math.abs(point.stage[1] - y) < NOTHING_M,
    )
    .map((point) => ({ method: null, z: point.stage[2], say: point.say, draw: () => point.at }));
}

/** Lines through a target that stands over a foot: the upright, and the height carried to a point of the horizon. */
export function heightLoci(board: Sheet, target: Target, foot: Foot): readonly Locus[] {
  return [uprightLocus(foot), horizonLocus(board, target, foot, "left"), horizonLocus(board, target, foot, "right")];
}

function uprightLocus(foot: Foot): Locus {
  return {
    method: foot.method ?? "upright over its foot",
    rank: foot.method === null ? 0 : 3,
    draw: (steps) => {
      const at = foot.draw(steps);
      return (
        at &&
        steps.line({
          through: upright(at),
          toward: "upright",
          say: `Draw upright from ${foot.say}: uprights stay upright.`,
        })
      );
    },
  };
}

/**
 * The horizon cuts every upright at eye height. A floor line from a corner of the opening through the foot shows which
 * point of the horizon the two uprights share; the true height at the opening's edge, carried to that point, keeps its
 * ratio to the eye height.
 */
function horizonLocus(board: Sheet, target: Target, foot: Foot, side: "left" | "right"): Locus {
  const edge = board.landmarks.find(({ say }) => say === `the ${side} corner of the opening`);
  return {
    method: "horizon ratio",
    rank: 8,
    draw: (steps) => {
      const footAt = foot.draw(steps);
      if (!footAt || !edge) return null;
      const corner = steps.mark(edge.at, `Begin at ${edge.say}: the opening's edge is an upright at true size.`);
      const low = Math.abs(foot.z) < NOTHING_M ? edge.at : layOff(board, steps, edge.at[0], foot.z).at;
      const top = steps.measure({
        on: "upright",
        from: corner,
        length: target.at[2],
        say: "Measure the height up it, true size.",
      });
      const across = steps.line({
        through: [low, footAt],
        toward: "foot",
        say: `Draw from its foot through ${foot.say} to the horizon.`,
      });
      const horizon = steps.line({
        through: level(centreVanishingPoint(board.viewer)),
        toward: "level",
        say: "The horizon, level through the CVP, cuts every upright at eye height.",
      });
      const shared = steps.meet(
        across,
        horizon,
        "Where that line meets the horizon, level lines of this direction vanish.",
      );
      if (shared === null) return null;
      return steps.line({
        through: [steps.at(top), steps.at(shared)],
        toward: "horizon",
        say: "Carry the height to the same point: it keeps its ratio to the eye height all the way.",
      });
    },
  };
}
