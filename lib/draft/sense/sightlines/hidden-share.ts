import type { Exercise } from "../../../exercise/exercise";
import { type Interval, unite, without } from "../../../geometry/intervals";
import type { PlanPoint } from "../../../stage/frame";
import { floorHeight } from "../../../stage/stage";
import type { Screen } from "./screens";
import type { Seat } from "./seat";

/** A wall is looked at in columns about this wide, metres, so many at least and at most; in height each is worked out exactly. */
const COLUMN_M = 0.2;
const FEWEST_COLUMNS = 12;
const MOST_COLUMNS = 64;
/** What a sight line meets so near its end, as a share of its length, is the wall itself or a wall that it joins. */
const AT_END = 1e-6;

/**
 * The share of a wall's onstage face, openings apart, that a seat does not see: hidden behind the sides of the opening, its
 * header, the edge of the stage, other walls, masking, or what stands on the stage. 1 for a wall seen from behind.
 */
export function hiddenShare(wall: Screen, screens: readonly Screen[], seat: Seat, exercise: Exercise): number {
  const { from, to, offstage } = wall;
  const [sx, sy] = seat.at;
  if (offstage && (sx - from[0]) * offstage[0] + (sy - from[1]) * offstage[1] >= 0) return 1;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const columns = Math.min(MOST_COLUMNS, Math.max(FEWEST_COLUMNS, Math.ceil(length / COLUMN_M)));
  const near = screens.filter((screen) => screen !== wall && mayHide(screen, seat.at, from, to));
  let [whole, seen] = [0, 0];
  for (let i = 0; i < columns; i++) {
    const share = (i + 0.5) / columns;
    const at: PlanPoint = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    const face = faceAt(wall, at, share * length, exercise);
    const hidden = [...hiddenByFrame(seat, at, exercise), ...hiddenByScreens(near, seat, at)];
    whole += total(face);
    seen += total(face.flatMap((stretch) => without(stretch, hidden)));
  }
  return whole > 0 ? 1 - seen / whole : 0;
}

/** What of a wall stands at a place along it, from its foot to its top but for its openings. */
function faceAt(wall: Screen, at: PlanPoint, along: number, { stage }: Exercise): readonly Interval[] {
  const foot = floorHeight(stage, at[1]) + Math.max(0, wall.low);
  const holes = wall.holes.filter(({ along: [start, end] }) => start <= along && along <= end).map(({ up }) => up);
  return without([foot, wall.high], holes);
}

function total(stretches: readonly Interval[]): number {
  return stretches.reduce((sum, [from, to]) => sum + to - from, 0);
}

/** Heights at a place that the proscenium and the edge of the stage hide from a seat. */
export function hiddenByFrame(
  { at: [sx, sy], eyeHeight }: Seat,
  [x, y]: PlanPoint,
  { stage }: Exercise,
): readonly Interval[] {
  const everything: Interval = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const behind = (height: number, line: number) => eyeHeight + ((height - eyeHeight) * (y - sy)) / (line - sy);
  const edge: readonly Interval[] =
    y > -stage.apron && sy < -stage.apron ? [[Number.NEGATIVE_INFINITY, behind(0, -stage.apron)]] : [];
  if (!(y > 0)) return edge;
  const crossing = sx + ((x - sx) * -sy) / (y - sy);
  if (Math.abs(crossing) > stage.opening.width / 2) return [everything];
  return [...edge, [behind(stage.opening.height, 0), Number.POSITIVE_INFINITY]];
}

/** Heights at a place that what stands before it hides from a seat. */
function hiddenByScreens(screens: readonly Screen[], { at, eyeHeight }: Seat, place: PlanPoint): readonly Interval[] {
  const hidden: Interval[] = [];
  const bodies = new Map<number, Interval>();
  for (const screen of screens) {
    const met = meetScreen(screen, at, place);
    if (!met) continue;
    const behind = (height: number) => eyeHeight + (height - eyeHeight) / met.share;
    for (const [low, high] of standing(screen, met.along)) {
      const stretch: Interval = [behind(low), behind(high)];
      if (screen.body === null) hidden.push(stretch);
      else {
        const other = bodies.get(screen.body) ?? stretch;
        bodies.set(screen.body, [Math.min(other[0], stretch[0]), Math.max(other[1], stretch[1])]);
      }
    }
  }
  return unite([...hidden, ...bodies.values()]);
}

/** What of a screen stands at a place along it. */
export function standing({ low, high, holes }: Screen, along: number): readonly Interval[] {
  return without(
    [low, high],
    holes.filter(({ along: [start, end] }) => start <= along && along <= end).map(({ up }) => up),
  );
}

/** Where the way from a seat to a place crosses a screen: which share of the way, and how far along the screen, metres. */
export function meetScreen(
  { from, to }: Pick<Screen, "from" | "to">,
  seat: PlanPoint,
  place: PlanPoint,
): { readonly share: number; readonly along: number } | null {
  const [dx, dy] = [place[0] - seat[0], place[1] - seat[1]];
  const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
  const turn = dx * uy - dy * ux;
  if (turn === 0) return null;
  const [ox, oy] = [from[0] - seat[0], from[1] - seat[1]];
  const share = (ox * uy - oy * ux) / turn;
  const along = (ox * dy - oy * dx) / turn;
  if (!(share > AT_END && share < 1 - AT_END && along >= 0 && along <= 1)) return null;
  return { share, along: along * Math.hypot(ux, uy) };
}

/** Whether a screen reaches into the extent of a seat and a wall. */
function mayHide({ from, to }: Screen, seat: PlanPoint, a: PlanPoint, b: PlanPoint): boolean {
  return ([0, 1] as const).every(
    (axis) =>
      Math.max(from[axis], to[axis]) >= Math.min(seat[axis], a[axis], b[axis]) &&
      Math.min(from[axis], to[axis]) <= Math.max(seat[axis], a[axis], b[axis]),
  );
}
