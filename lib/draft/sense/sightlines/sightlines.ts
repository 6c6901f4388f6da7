import type { Draft } from "../../draft";
import type { Fan, Glimpse } from "./fan";
import { gapsAbove } from "./gaps-above";
import { hiddenShare } from "./hidden-share";
import { mergeFans } from "./merge-fans";
import { planBarriers } from "./plan-barriers";
import { planSight } from "./plan-sight";
import { remarkSight } from "./remark-sight";
import { listScreens } from "./screens";
import type { Seat } from "./seat";
import type { OffstageSight, Remark, Sight, Sightlines } from "./sight";

/**
 * What each seat sees of a draft's set. In the plan: walls stop the sight at any height, doors stand open, legs and backings stop
 * it, borders do not. In height: what of each wall is hidden, and what is seen over the set. A seat that is not before the
 * plaster line sees nothing, and is told so.
 */
export function sightlines({ exercise }: Pick<Draft, "exercise">, seats: readonly Seat[]): Sightlines {
  const barriers = planBarriers(exercise.plan);
  const screens = listScreens(exercise);
  return seats.map((seat): Sight => {
    const eye = { x: seat.at[0], distance: -seat.at[1] };
    if (!(eye.distance > 0)) return { seat, seen: [], offstage: [], walls: [], gaps: [], remarks: [onStage()] };
    const { seen, glimpses } = planSight(eye, barriers, exercise.stage);
    const offstage = gather(glimpses);
    const walls = screens
      .filter(({ kind }) => kind === "wall")
      .map((wall) => ({ id: wall.thing.id, hidden: hiddenShare(wall, screens, seat, exercise) }));
    const gaps = gapsAbove(screens, seat, exercise);
    const told = { seat, offstage, walls, gaps };
    return { ...told, seen: mergeFans(seen), remarks: remarkSight(exercise, told) };
  });
}

function onStage(): Remark {
  return { say: "This seat is not in the house.", remedy: "Move it downstage of the plaster line.", things: [] };
}

/** Glimpses of one thing together, from house left to house right; slivers that are no region are left out. */
function gather(glimpses: readonly { readonly what: Glimpse; readonly fan: Fan }[]): readonly OffstageSight[] {
  const found = new Map<string, { what: Glimpse; fans: Fan[] }>();
  for (const { what, fan } of glimpses) {
    const key = JSON.stringify(what);
    const one = found.get(key) ?? { what, fans: [] };
    one.fans.push(fan);
    found.set(key, one);
  }
  return [...found.values()]
    .map(({ what, fans }) => ({ what, fans, outlines: mergeFans(fans) }))
    .filter(({ outlines }) => outlines.length > 0);
}
