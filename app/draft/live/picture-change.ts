import type { DisplayList } from "@/lib/drawing/display-list";
import type { Exercise } from "@/lib/exercise/exercise";
import { type Memory, rememberIn } from "../layers/remember";
import { changedInPicture } from "../picture/changed-in-picture";
import { pictureLayers } from "../picture/picture-layers";
import { createSeeThrough } from "../picture/see-through";

export type Seen = Pick<Exercise, "plan" | "stage" | "viewer">;

/** What is painted over a picture that is out of date, and which of its layers are taken off for it. */
export type PictureChange = { readonly lists: readonly DisplayList[]; readonly gone: ReadonlySet<string> };

/** The layer that holds all of the set. */
export const SET = "set";
const NOTHING: PictureChange = { lists: [], gone: new Set() };
const WHOLE_SET: ReadonlySet<string> = new Set([SET]);

/**
 * From a picture of a set as it was to one of it as it is, in see-through lines: of what changed, or of all where the eye or the
 * stage is another, or there is no picture yet. Asked again for the same, it is not worked out again.
 */
export function createPictureChange(): (shown: Seen | null, now: Seen) => PictureChange {
  const seeThrough = createSeeThrough();
  let lately: Memory = new Map();
  let last: { readonly shown: Seen | null; readonly now: Seen; readonly change: PictureChange } | null = null;

  const work = (shown: Seen | null, now: Seen): PictureChange => {
    if (shown && shown.plan === now.plan && shown.stage === now.stage && shown.viewer === now.viewer) return NOTHING;
    const changed = shown ? changedInPicture(shown, now) : ({ kind: "view" } as const);
    if (changed.kind === "view") return { lists: [seeThrough(now)], gone: WHOLE_SET };
    const memory: Memory = new Map();
    const layers = pictureLayers(now, rememberIn(memory, lately), changed.touched);
    lately = memory;
    const stood = last?.change.gone;
    const isSame = stood?.size === changed.gone.size && [...changed.gone].every((name) => stood.has(name));
    return { lists: layers.map(({ list }) => list), gone: stood && isSame ? stood : changed.gone };
  };
  return (shown, now) => {
    if (last?.shown !== shown || last.now !== now) last = { shown, now, change: work(shown, now) };
    return last.change;
  };
}
