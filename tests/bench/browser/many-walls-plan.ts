import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { newDraft } from "@/lib/draft/new-draft";
import { writeDraft } from "@/lib/draft/write-draft";
import type { Exercise } from "@/lib/exercise/exercise";
import type { PlanPoint } from "@/lib/stage/frame";

const RUNS = 15;
const WALLS_A_RUN = 20;
export const WALLS = RUNS * WALLS_A_RUN;
/** Every so many walls one has an arch in it. */
const WALLS_AN_ARCH = 5;

/** The corner of a run of walls that zigzags across the stage, metres. */
export function cornerOf(run: number, i: number): PlanPoint {
  return [-4.4 + i * 0.44, 0.6 + run * 0.42 + (i % 2) * 0.2];
}

/** The middle of a wall of a run, metres. */
export function middleOf(run: number, i: number): PlanPoint {
  const [a, b] = [cornerOf(run, i), cornerOf(run, i + 1)];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** A kept plan of three hundred walls, as the browser has it. */
export function keptPlan(): { readonly text: string; readonly exercise: Exercise } {
  let draft = newDraft("m");
  const edit = (change: Parameters<typeof applyEdit>[1]) => {
    const edited = applyEdit(draft, change);
    if (!edited.ok) throw new Error(edited.say);
    draft = edited.draft;
  };
  for (let run = 0; run < RUNS; run++) {
    const corners = Array.from({ length: WALLS_A_RUN + 1 }, (_, i) => cornerOf(run, i));
    edit({ edit: "add-walls", corners, closed: false, height: 2.4, thickness: 0.03 });
  }
  draft.exercise.plan.walls.forEach(({ id }, i) => {
    if (i % WALLS_AN_ARCH !== 0) return;
    const arch = { kind: "arch", at: 0.1, width: 0.2, sill: 0, head: 2, depth: null } as const;
    edit({ edit: "add-opening", wall: id, opening: { ...arch, leaves: 1, hinge: null, swing: "offstage" } });
  });
  const file = writeDraft(draft);
  const begun = { hand: { kind: "choose" }, measures: null, done: [], undone: [] };
  const text = JSON.stringify({
    format: "plasterline.draft/1",
    title: "Many",
    changed: "",
    now: file,
    base: file,
    ...begun,
  });
  return { text, exercise: draft.exercise };
}
