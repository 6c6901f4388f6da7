import { createStore, type StoreApi } from "zustand/vanilla";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import type { ShownPhoto } from "../check-store";
import {
  type Addable,
  addMark,
  type EyeWork,
  type Grip,
  gripAfter,
  gripsOf,
  markOfGrip,
  moveGrip,
  newWork,
  removeMark,
  type Spot,
} from "./eye-work";
import { forgetEye, keepEye, keptEye } from "./kept-eye";

/** What the page is at. */
export type EyeStage =
  | { readonly at: "choose" }
  | { readonly at: "working"; readonly words: string }
  | { readonly at: "refused"; readonly say: string; readonly remedy: string }
  /** Four corners are set, to see a picture straight on. */
  | { readonly at: "straighten" }
  | { readonly at: "marking" };

export type Eye = {
  /** False until the browser's storage has been looked into. */
  readonly opened: boolean;
  readonly keeping: boolean;
  readonly stage: EyeStage;
  readonly work: EyeWork | null;
  readonly selected: Grip | null;
  /** The work as it was before each step, the oldest first. */
  readonly earlier: readonly EyeWork[];
  readonly open: () => void;
  readonly show: (stage: EyeStage) => void;
  readonly take: (photo: Pick<ShownPhoto, "address" | "width" | "height">, widthMm?: string) => void;
  readonly select: (grip: Grip | null) => void;
  readonly begin: () => void;
  readonly move: (spot: Spot) => void;
  readonly rest: () => void;
  readonly undo: () => void;
  /** On to the next handle: of the mark on hand while it has one to set. */
  readonly goOn: () => void;
  readonly add: (what: Addable) => void;
  readonly remove: () => void;
  /** What is typed or chosen: kept at once. */
  readonly change: (changed: (work: EyeWork) => EyeWork) => void;
  readonly startAnew: () => void;
};

const MOST_EARLIER = 100;

/** The marks on one picture: pure steps, each kept at once. Knows no React. */
export function createEye(): StoreApi<Eye> {
  return createStore<Eye>((set, get) => {
    const keep = (work: EyeWork) => {
      const shelf = findShelf();
      set({ work, keeping: shelf !== null && keepEye(shelf, work) });
    };
    /** A step that can be taken back. */
    const step = (made: (work: EyeWork) => EyeWork, selected = get().selected) => {
      const { work, earlier } = get();
      if (!work) return;
      set({ earlier: [...earlier, work].slice(-MOST_EARLIER), selected });
      keep(made(work));
    };
    return {
      opened: false,
      keeping: true,
      stage: { at: "choose" },
      work: null,
      selected: null,
      earlier: [],
      open: () => {
        const shelf = findShelf();
        const work = shelf && keptEye(shelf);
        set({ opened: true, keeping: shelf !== null, work, stage: { at: work ? "marking" : "choose" } });
      },
      show: (stage) => set({ stage }),
      take: (photo, widthMm) => {
        set({ stage: { at: "marking" }, selected: null, earlier: [] });
        keep(newWork(photo, widthMm));
      },
      select: (selected) => set({ selected }),
      begin: () => {
        const { work, earlier } = get();
        if (work) set({ earlier: [...earlier, work].slice(-MOST_EARLIER) });
      },
      // A drag comes by at every frame: nothing is written to the storage until it rests.
      move: (spot) => {
        const { work, selected } = get();
        if (work && selected) set({ work: moveGrip(work, selected, spot) });
      },
      rest: () => {
        const { work, earlier } = get();
        if (!work) return;
        // A press that moved nothing is no step.
        if (earlier.at(-1) === work) set({ earlier: earlier.slice(0, -1) });
        keep(work);
      },
      undo: () => {
        const { earlier, selected } = get();
        const work = earlier.at(-1);
        if (!work) return;
        const isThere = selected !== null && gripThere(work, selected);
        set({ earlier: earlier.slice(0, -1), selected: isThere ? selected : null });
        keep(work);
      },
      goOn: () => {
        const { work, selected } = get();
        if (work && selected) set({ selected: gripAfter(work, selected) });
      },
      add: (what) => {
        const { work } = get();
        if (!work) return;
        const added = addMark(work, what);
        if (added.work === work) set({ selected: added.grip });
        else step(() => added.work, added.grip);
      },
      remove: () => {
        const { selected } = get();
        if (selected) step((work) => removeMark(work, markOfGrip(selected)), null);
      },
      change: (changed) => {
        const { work, earlier } = get();
        if (!work) return;
        // Taking a handle's move back leaves what was typed since.
        set({ earlier: earlier.map(changed) });
        keep(changed(work));
      },
      startAnew: () => {
        const shelf = findShelf();
        if (shelf) forgetEye(shelf);
        set({ work: null, selected: null, earlier: [], stage: { at: "choose" } });
      },
    };
  });
}

function gripThere(work: EyeWork, grip: Grip): boolean {
  return gripsOf(work).some(([each]) => each === grip);
}
