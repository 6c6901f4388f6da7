import { printLength } from "../measure/print-length";
import { centreVanishingPoint } from "../perspective/vanishing-point";
import type { PicturePoint } from "../stage/frame";
import { landmark, type Sheet, type Side } from "./board";
import { type Locus, level, NOTHING_M, upright } from "./locus";
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
function horizonLocus(board: Sheet, target: Target, foot: Foot, side: Side): Locus {
  const edge = landmark(board, `opening foot ${side}`);
  return {
    method: "horizon ratio",
    rank: 8,
    draw: (steps) => {
      const footAt = foot.draw(steps);
      if (!footAt || !edge) return null;
      const corner = steps.mark(edge.at, `Begin at ${edge.say}: the opening's edge is an upright at true size.`);
      const low = Math.abs(foot.z) < NOTHING_M ? edge : layUp(steps, corner, foot.z, board);
      const top = layUp(steps, corner, target.at[2], board);
      const across = steps.line({
        through: [low.at, footAt],
        toward: "foot",
        say: `Draw from ${low.say} through ${foot.say} and on to the horizon.`,
      });
      const horizon = steps.line({
        through: level(centreVanishingPoint(board.viewer)),
        toward: "level",
        say: "Draw the horizon level through the CVP: it cuts every upright at eye height.",
      });
      const shared = steps.meet(across, horizon, "where level lines of that direction vanish");
      if (shared === null) return null;
      return steps.line({
        through: [top.at, steps.at(shared)],
        toward: "horizon",
        say: `Draw from ${top.say} to crossing ${shared}: the height keeps its ratio to the eye height all the way.`,
      });
    },
  };
}

/** A height laid off on the opening's edge. */
function layUp(steps: Steps, corner: number, height: number, { units }: Sheet) {
  const top = steps.measure({
    on: "upright",
    from: corner,
    length: height,
    say: `Measure ${printLength(height, units)} up that edge, true size.`,
  });
  return { at: steps.at(top), say: `mark ${top}` };
}
