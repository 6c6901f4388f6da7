import { createStore, type StoreApi } from "zustand/vanilla";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import type { SheetCode } from "@/lib/sheet/sheet-code";
import {
  asRead,
  type CheckedDrawing,
  type CheckedPoint,
  changePoint,
  isRight,
  mayConfirm,
  movePoint,
  nextOpen,
  notDrawn,
} from "./checked-drawing";
import { type CheckDesk, forgetCheck, keepCheck, keptCheck } from "./kept-check";
import type { Shown } from "./worker/messages";

/** A photograph as the page shows it. */
export type ShownPhoto = Omit<Shown, "picture"> & { readonly address: string };

/** How well the sheet lies in the photograph. */
export type PhotoFacts = Pick<CheckedDrawing, "residualMm" | "doubts">;

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
  | ({ readonly at: "found"; readonly code: SheetCode; readonly photo: ShownPhoto } & PhotoFacts)
  | { readonly at: "corners"; readonly photo: ShownPhoto }
  /** The readings are confirmed, or the result is shown: the drawing says which. */
  | { readonly at: "drawing" };

export type Check = {
  /** False until the browser's storage has been looked into. */
  readonly opened: boolean;
  readonly keeping: boolean;
  readonly stage: Stage;
  readonly drawing: CheckedDrawing | null;
  /** The point on hand. */
  readonly selected: string | null;
  /** Points as they were before each move, the oldest first. */
  readonly earlier: readonly CheckedPoint[];
  /** Looks for the drawing that is kept; it waits where the address names another exercise. */
  readonly open: (asked: string | null) => void;
  readonly show: (stage: Stage) => void;
  readonly take: (drawing: CheckedDrawing) => void;
  readonly select: (point: string | null) => void;
  readonly begin: () => void;
  readonly move: (at: Place) => void;
  readonly rest: () => void;
  readonly undo: () => void;
  readonly say: (what: "right" | "not drawn" | "as read") => void;
  readonly confirm: () => boolean;
  /** Back from the result to the points. */
  readonly reopen: () => void;
  readonly handedIn: (id: string) => void;
  readonly startAnew: () => void;
};

export type CheckStore = StoreApi<Check>;

/** Enough for any patience. */
const MOST_EARLIER = 100;

/** The work on one photograph: pure steps of a drawing, each kept at once. Knows no React. */
export function createCheck(desk: CheckDesk): CheckStore {
  return createStore<Check>((set, get) => {
    const keep = (drawing: CheckedDrawing) => {
      const shelf = findShelf();
      set({ drawing, keeping: shelf !== null && keepCheck(shelf, desk, drawing) });
    };
    const change = (made: (one: CheckedPoint) => CheckedPoint): CheckedDrawing | null => {
      const { drawing, selected } = get();
      return drawing && selected !== null ? changePoint(drawing, selected, made) : null;
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
      select: (selected) => set({ selected }),
      begin: () => {
        const { drawing, selected, earlier } = get();
        const one = drawing?.points.find(({ point }) => point === selected);
        if (one) set({ earlier: [...earlier, one].slice(-MOST_EARLIER) });
      },
      // A drag comes here at every frame: nothing is written to the storage until it rests.
      move: (at) => {
        const drawing = change(movePoint(at));
        if (drawing) set({ drawing });
      },
      rest: () => {
        const { drawing } = get();
        if (drawing) keep(drawing);
      },
      undo: () => {
        const { drawing, earlier } = get();
        const last = earlier.at(-1);
        if (!drawing || !last) return;
        set({ earlier: earlier.slice(0, -1), selected: last.point });
        keep(changePoint(drawing, last.point, () => last));
      },
      say: (what) => {
        get().begin();
        const drawing = change(what === "right" ? isRight : what === "not drawn" ? notDrawn : asRead);
        if (!drawing) return;
        // What is settled leads on to what is not.
        if (what !== "as read") set({ selected: nextOpen(drawing) ?? get().selected });
        keep(drawing);
      },
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
