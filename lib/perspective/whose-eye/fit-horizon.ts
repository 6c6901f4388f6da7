import type { Vector2 } from "../../geometry/vector";
import { type DrawnLine, missInSigmas, missSlope, squaredMisses, type VanishingPlace } from "./drawn-line";
import type { Meeting } from "./fit-meeting";

/** Lines of one direction that is level on the stage, and where they meet by themselves. */
export type LevelGroup = { readonly lines: readonly DrawnLine[]; readonly meeting: Meeting };

/** A group's place on the horizon as an angle: [cos, horizon sin, sin], 0 for lines that stay level on paper. */
export type Horizon = {
  readonly height: number;
  /** In the order of the groups. */
  readonly angles: readonly number[];
  /** Root of what one common line costs each group but one, in sigmas; null for one group alone. */
  readonly misfit: number | null;
};

const STEPS = 60;
/** A step that lowers the cost by less than this share of it, or of next to nothing, is the last. */
const SETTLED = 1e-12;

/**
 * The level line on which all groups meet, least squares of all their lines' misses at once, so that a far meeting weighs
 * what it is worth. `from` is a horizon to start at, of the same groups; else the groups' own meetings. Null where no group
 * meets at a finite place. The groups' frame must have 0 near its drawing, in any unit.
 */
export function fitHorizon(groups: readonly LevelGroup[], from?: Horizon): Horizon | null {
  const points = groups.flatMap(({ meeting }) => (meeting.kind === "point" ? [meeting] : []));
  if (points.length === 0) return null;
  const weight = points.reduce((sum, { spread }) => sum + 1 / spread.yy, 0);
  let height = from?.height ?? points.reduce((sum, { at, spread }) => sum + at[1] / spread.yy, 0) / weight;
  let angles = from?.angles ?? groups.map(({ meeting }) => startAngle(meeting));
  let left = costOf(groups, height, angles);
  for (let step = 0; step < STEPS; step++) {
    const change = stepOf(groups, height, angles);
    if (!change) break;
    const before = left;
    let share = 1;
    let better = false;
    for (; share > 1e-3 && !better; share /= 2) {
      const [h, a] = [
        height + share * change.height,
        angles.map((angle, i) => angle + share * (change.angles[i] ?? 0)),
      ];
      const cost = costOf(groups, h, a);
      if (cost >= left) continue;
      [height, angles, left, better] = [h, a, cost, true];
    }
    if (!better || before - left <= SETTLED * (left + SETTLED)) break;
  }
  const alone = groups.reduce((sum, group) => sum + costAlone(group), 0);
  const misfit = groups.length > 1 ? Math.sqrt(Math.max(left - alone, 0) / (groups.length - 1)) : null;
  return { height, angles, misfit };
}

/** Where on the horizon an angle stands; null for lines that stay level. */
export function placeOnHorizon(angle: number): number | null {
  const w = Math.sin(angle);
  return w === 0 ? null : Math.cos(angle) / w;
}

function startAngle(meeting: Meeting): number {
  return meeting.kind === "point" ? Math.atan2(1, meeting.at[0]) : 0;
}

function placeAt(height: number, angle: number): VanishingPlace {
  return [Math.cos(angle), height * Math.sin(angle), Math.sin(angle)];
}

function costOf(groups: readonly LevelGroup[], height: number, angles: readonly number[]): number {
  return groups.reduce((sum, { lines }, i) => sum + squaredMisses(lines, placeAt(height, angles[i] ?? 0)), 0);
}

function costAlone({ lines, meeting }: LevelGroup): number {
  if (meeting.kind === "unknown") return 0;
  const [x, y]: Vector2 = meeting.kind === "point" ? meeting.at : meeting.direction;
  return squaredMisses(lines, [x, y, meeting.kind === "point" ? 1 : 0]);
}

/** Gauss and Newton's step: each angle belongs to one group, so it is taken out first and the height is solved alone. */
function stepOf(
  groups: readonly LevelGroup[],
  height: number,
  angles: readonly number[],
): { readonly height: number; readonly angles: readonly number[] } | null {
  const sums = groups.map(({ lines }, i) => {
    const angle = angles[i] ?? 0;
    const place = placeAt(height, angle);
    let [aa, ah, hh, a, h] = [0, 0, 0, 0, 0];
    for (const line of lines) {
      const [sx, sy, sw] = missSlope(line, place);
      const miss = missInSigmas(line, place);
      const byAngle = -sx * Math.sin(angle) + (sy * height + sw) * Math.cos(angle);
      const byHeight = sy * Math.sin(angle);
      aa += byAngle * byAngle;
      ah += byAngle * byHeight;
      hh += byHeight * byHeight;
      a -= byAngle * miss;
      h -= byHeight * miss;
    }
    return { aa, ah, hh, a, h };
  });
  const solid = sums.map((sum) => (sum.aa > 0 ? sum : { ...sum, aa: Number.POSITIVE_INFINITY }));
  const down = solid.reduce((sum, { aa, ah, hh }) => sum + hh - (ah * ah) / aa, 0);
  const right = solid.reduce((sum, { aa, ah, a, h }) => sum + h - (ah * a) / aa, 0);
  if (!(down > 0)) return null;
  const change = right / down;
  return { height: change, angles: solid.map(({ aa, ah, a }) => (a - ah * change) / aa) };
}
