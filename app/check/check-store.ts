import { createStore, type StoreApi } from "zustand/vanilla";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { type CheckedDrawing, mayConfirm, nextOpen } from "@/app/_photo/checked-drawing";
import { type PointDesk, pointSteps } from "@/app/_photo/point-desk";
import type { Shown } from "@/app/_photo/worker/messages";
import type { SheetCode } from "@/lib/sheet/sheet-code";
import { type CheckDesk, forgetCheck, keepCheck, keptCheck } from "./kept-check";

/** A photograph as the page shows it. */
export type ShownPhoto = Omit<Shown, "picture"> & { readonly address: string };

/** What the page is at. */
export type Stage =
  | { readonly at: "choose" }
  | { readonly at: "working"; readonly words: string }
  | {
      readonly at: "refused";
      readonly say: string;
      readonly remedy: string;
      /** Where it is there, its corners can be set by hand. */
      readonly photo: ShownPhoto | null;
    }
  /** A sheet was found; its exercise is still to come from the server. */
  | {
      readonly at: "found";
      readonly code: SheetCode;
      readonly photo: ShownPhoto;
      readonly residualMm: CheckedDrawing["residualMm"];
    }
  | { readonly at: "corners"; readonly photo: ShownPhoto }
  /** The readings are confirmed, or the result is shown: the drawing says which. */
  | { readonly at: "drawing" };

export type Check = PointDesk & {
  /** False until the browser's storage has been looked into. */
  readonly opened: boolean;
  readonly keeping: boolean;
  readonly stage: Stage;
  /** Looks for the drawing that is kept; it waits where the address names another exercise. */
  readonly open: (asked: string | null) => void;
  readonly show: (stage: Stage) => void;
  readonly take: (drawing: CheckedDrawing) => void;
  readonly confirm: () => boolean;
  /** Back from the result to the points. */
  readonly reopen: () => void;
  readonly handedIn: (id: string) => void;
  readonly startAnew: () => void;
};

export type CheckStore = StoreApi<Check>;

/** The work on one photograph: pure steps of a drawing, each kept at once. Knows no React. */
export function createCheck(desk: CheckDesk): CheckStore {
  return createStore<Check>((set, get) => {
    const keep = (drawing: CheckedDrawing) => {
      const shelf = findShelf();
      set({ drawing, keeping: shelf !== null && keepCheck(shelf, desk, drawing) });
    };
    return {
      opened: false,
      keeping: true,
      stage: { at: "choose" },
      drawing: null,
      selected: null,
      earlier: [],
      open: (asked) => {
        const shelf = findShelf();
        const drawing = shelf && keptCheck(shelf, desk);
        const here = drawing && (asked === null || asked === drawing.exercise);
        set({
          opened: true,
          keeping: shelf !== null,
          drawing,
          ...(here ? { stage: { at: "drawing" }, selected: drawing.confirmed ? null : nextOpen(drawing) } : {}),
        });
      },
      show: (stage) => set({ stage }),
      take: (drawing) => {
        set({ stage: { at: "drawing" }, selected: nextOpen(drawing), earlier: [] });
        keep(drawing);
      },
      // A drag comes by at every frame: nothing is written to the storage until it rests.
      ...pointSteps(get, set, keep),
      confirm: () => {
        const { drawing } = get();
        if (!drawing || !mayConfirm(drawing)) return false;
        set({ selected: null, earlier: [] });
        keep({ ...drawing, confirmed: true });
        return true;
      },
      reopen: () => {
        const { drawing } = get();
        if (drawing) keep({ ...drawing, confirmed: false });
      },
      handedIn: (id) => {
        const { drawing } = get();
        if (drawing) keep({ ...drawing, handedIn: id });
      },
      startAnew: () => {
        const shelf = findShelf();
        if (shelf) forgetCheck(shelf, desk);
        set({ drawing: null, selected: null, earlier: [], stage: { at: "choose" } });
      },
    };
  });
}
