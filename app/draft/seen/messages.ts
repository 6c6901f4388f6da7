import type { VisibleThing } from "@/lib/drawing/draw-visible-set";
import type { Exercise } from "@/lib/exercise/exercise";

/** What the page asks: what the eye sees of this set. */
export type Asked = Pick<Exercise, "plan" | "stage" | "viewer">;
export type Answer = readonly VisibleThing[];
