import type { Exercise } from "@/lib/exercise/exercise";
import type { Plan } from "@/lib/plan/plan";
import { allOf, type Touched } from "../layers/touched";

type Seen = Pick<Exercise, "plan" | "stage" | "viewer">;

/** The view is another, so that everything is drawn otherwise; or some things are, and some may be gone. */
export type ChangedInPicture =
  | { readonly kind: "view" }
  | { readonly kind: "things"; readonly touched: Touched; readonly gone: ReadonlySet<string> };

const KINDS = {
  walls: "wall",
  platforms: "platform",
  stairs: "stair",
  furniture: "furniture",
  columns: "column",
  masking: "masking",
} as const;
type List = keyof typeof KINDS;
const LISTS = Object.keys(KINDS) as readonly List[];

/** The name of the layer that a thing has in the picture. */
function pictureLayerName(list: List, id: string): string {
  return `${KINDS[list]}.${id}`;
}

/** The names of the picture's layers by the ids of the things that are drawn in them. */
export function pictureLayerNames(plan: Plan): ReadonlyMap<string, string> {
  return new Map(LISTS.flatMap((list) => plan[list].map(({ id }) => [id, pictureLayerName(list, id)] as const)));
}

/**
 * What of a picture is another than it was: things that changed, or walls whose ends moved, to be drawn anew, and by the names of
 * their layers what they and all that was taken away leave behind.
 */
export function changedInPicture(before: Seen, after: Seen): ChangedInPicture {
  if (before.stage !== after.stage || before.viewer !== after.viewer) return { kind: "view" };
  const [was, now] = [before.plan, after.plan];
  const isMoved = (corner: string) => was.corners.get(corner) !== now.corners.get(corner);
  const anew = <Item>(old: readonly Item[], list: readonly Item[], also: (item: Item) => boolean): readonly Item[] => {
    const stood = new Set(old);
    return list.filter((item) => !stood.has(item) || also(item));
  };
  const never = () => false;
  const walls = anew(was.walls, now.walls, ({ from, to }) => isMoved(from) || isMoved(to));
  // A flight may land on a platform.
  const landings = was.platforms !== now.platforms;
  const touched: Touched = {
    ...allOf(now),
    corners: [],
    near: [],
    walls: [],
    moved: walls,
    platforms: anew(was.platforms, now.platforms, never),
    stairs: anew(was.stairs, now.stairs, () => landings),
    furniture: anew(was.furniture, now.furniture, never),
    columns: anew(was.columns, now.columns, never),
    masking: anew(was.masking, now.masking, never),
  };
  const drawn: Pick<Plan, List> = { ...touched, walls };
  const there = pictureLayerNames(now);
  const left = [...pictureLayerNames(was)].flatMap(([id, name]) => (there.get(id) === name ? [] : [name]));
  const anewNames = LISTS.flatMap((list) => drawn[list].map(({ id }) => pictureLayerName(list, id)));
  return { kind: "things", touched, gone: new Set([...left, ...anewNames]) };
}
