import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";

/** What a part of "Make it an exercise" works on. */
export type ExercisePart = {
  readonly draft: Draft;
  /** Makes an edit; null when it is made, else why it cannot be. */
  readonly apply: (change: Edit) => string | null;
};
