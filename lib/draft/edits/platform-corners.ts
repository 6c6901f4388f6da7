import { SAME_POINT_M } from "../../geometry/segments-cross";
import { distance } from "../../geometry/vector";
import type { Platform } from "../../plan/plan";
import type { Draft } from "../draft";
import { type Changed, type EditOf, notThere, type Renaming, refuse, withPlan } from "./changed";

/** Fewer corners enclose nothing. */
const LEAST_CORNERS = 3;

/** Puts a new corner into an outline after one that is there, by its number from 1; the points of those behind it follow. */
export function addPlatformCorner(draft: Draft, { id, after, at }: EditOf<"add-platform-corner">): Changed {
  const platform = find(draft, id);
  if (!platform) return notThere("platform", id);
  const { outline } = platform;
  const before = outline[after - 1];
  if (!before) return noCorner(platform, after);
  const next = outline[after % outline.length];
  if ([before, next].some((corner) => corner && distance(corner, at) < SAME_POINT_M))
    return refuse("A corner of the platform stands there already.");
  const changed = { ...platform, outline: [...outline.slice(0, after), at, ...outline.slice(after)] };
  return replaced(draft, platform, changed, (corner) => (corner > after ? corner + 1 : corner));
}

/** Takes a corner out of an outline, by its number from 1; its points go, and those of the corners behind it follow. */
export function takePlatformCorner(draft: Draft, { id, corner }: EditOf<"take-platform-corner">): Changed {
  const platform = find(draft, id);
  if (!platform) return notThere("platform", id);
  const { outline } = platform;
  if (!outline[corner - 1]) return noCorner(platform, corner);
  if (outline.length <= LEAST_CORNERS)
    return refuse(`A platform has at least ${LEAST_CORNERS} corners. Take the whole platform away instead.`);
  const changed = { ...platform, outline: outline.filter((_, i) => i !== corner - 1) };
  return replaced(draft, platform, changed, (other) => (other === corner ? null : other > corner ? other - 1 : other));
}

function find(draft: Draft, id: string): Platform | undefined {
  return draft.exercise.plan.platforms.find((platform) => platform.id === id);
}

function noCorner({ id, outline }: Platform, corner: number): Changed {
  return refuse(`Platform "${id}" has no corner ${corner}: it has ${outline.length}.`);
}

/** What a point goes by that is there no more; no point has such a name. */
const GONE = "";

function replaced(draft: Draft, before: Platform, after: Platform, number: (corner: number) => number | null): Changed {
  const { plan } = draft.exercise;
  const renaming: Renaming = (point) => {
    const [element, corner, ...part] = point.split(".");
    if (element !== before.id || part.length !== 1) return point;
    const now = number(Number(corner));
    return now === null ? GONE : [element, now, ...part].join(".");
  };
  const platforms = plan.platforms.map((platform) => (platform === before ? after : platform));
  return withPlan(draft, { ...plan, platforms }, [], renaming);
}
