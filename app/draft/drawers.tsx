"use client";

import type { Thing } from "@/lib/draft/draft";
import { DRAWERS, type Drawer } from "./desk/desk";
import { useDesk, useDeskStore } from "./desk/draft-context";
import { useApply } from "./desk/use-apply";
import { Fetched } from "./fetched/fetched";
import { fetchAhead, namePart } from "./fetched/part";
import { DrawDrawer } from "./hand/draw-drawer";
import { StageDrawer } from "./stage/stage-drawer";
import { ThingsDrawer } from "./things/things-drawer";

const WORDS: Readonly<Record<Drawer, string>> = {
  stage: "Stage and eye",
  draw: "Draw",
  things: "On the plan",
  notes: "Notes",
  exercise: "Make it an exercise",
};

const NOTES = namePart("Notes", async () => (await import("./notes/notes-drawer")).NotesDrawer);
const EXERCISE = namePart("Make it an exercise", async () => (await import("./exercise/exercise-desk")).ExerciseDesk);
const AHEAD: Partial<Readonly<Record<Drawer, () => void>>> = {
  notes: () => fetchAhead(NOTES),
  exercise: () => fetchAhead(EXERCISE),
};

/** Beside the drawings: one of five things to see to, in the order a plan is made. `plan` is what the plan is kept under. */
export function Drawers({ plan }: { readonly plan: string }) {
  const drawer = useDesk((desk) => desk.drawer);
  const draft = useDesk((desk) => desk.history.draft);
  const store = useDeskStore();
  const apply = useApply();
  const showInNotes = (things: readonly Thing[]) => store.getState().choose(things, "notes");
  return (
    <section className="draft-desk" aria-label="Beside the drawings">
      <nav className="draft-drawers" aria-label="What to see to">
        {DRAWERS.map((each) => (
          <button
            key={each}
            type="button"
            className="draft-drawer"
            aria-pressed={drawer === each}
            onPointerEnter={AHEAD[each]}
            onFocus={AHEAD[each]}
            onClick={() => store.getState().setDrawer(each)}
          >
            {WORDS[each]}
          </button>
        ))}
      </nav>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <div className="draft-content" tabIndex={0}>
        {drawer === "stage" && <StageDrawer />}
        {drawer === "draw" && <DrawDrawer />}
        {drawer === "things" && <ThingsDrawer />}
        {drawer === "notes" && (
          <Fetched part={NOTES} given={{ draft, apply, show: showInNotes, lay: store.getState().showSight }} />
        )}
        {drawer === "exercise" && <Fetched part={EXERCISE} given={{ draft, apply, plan }} />}
      </div>
    </section>
  );
}
