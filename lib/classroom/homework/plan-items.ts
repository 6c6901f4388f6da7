import { type No, no } from "../accounts/answer";
import type { HomeworkItemTable } from "../store/tables/homework-tables";
import type { ChangeHomework, SetHomework } from "./requests";

type Before = Readonly<Pick<HomeworkItemTable, "id" | "taken_out_at">>;
type Placed<Each> = Each & { readonly place: number };

/** What becomes of the exercises of a homework: places count from 1 in the order that is wanted. */
export type ItemPlan = {
  readonly ok: true;
  /** Those that stay, and those that were taken out and come back. */
  readonly keep: readonly Placed<{ readonly itemId: string; readonly weight: number }>[];
  readonly add: readonly Placed<{ readonly chosen: SetHomework["items"][number] }>[];
  /** Those that are in now and are wanted no more. */
  readonly takeOut: readonly string[];
};

/** Plans the change from the exercises that are, or were, in a homework to those that are wanted. */
export function planItems(before: readonly Before[], wanted: ChangeHomework["items"]): ItemPlan | No<"unknown"> {
  const placed = wanted.map((item, i) => ({ item, place: i + 1 }));
  const keep = placed.flatMap(({ item, place }) =>
    item.source === "kept" ? [{ itemId: item.itemId, weight: item.weight, place }] : [],
  );
  const add = placed.flatMap(({ item, place }) => (item.source === "kept" ? [] : [{ chosen: item, place }]));
  const kept = new Set(keep.map(({ itemId }) => itemId));
  if (kept.size < keep.length || keep.some(({ itemId }) => !before.some(({ id }) => id === itemId)))
    return no("unknown", "One of the exercises is in this homework no more. Load the page anew.");
  const takeOut = before.filter(({ id, taken_out_at }) => taken_out_at === null && !kept.has(id)).map(({ id }) => id);
  return { ok: true, keep, add, takeOut };
}
