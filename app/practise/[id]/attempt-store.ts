import { createStore, type StoreApi } from "zustand/vanilla";
import {
  type Attempt,
  addLine,
  beginMove,
  commitMark,
  goOn,
  isFinished,
  moveMark,
  newAttempt,
  type Place,
  removeAllLines,
  removeLine,
  takeHint,
  undoMove,
} from "@/app/_parts/kept-work/attempt";
import { findShelf, type Shelf } from "@/app/_parts/kept-work/shelf";
import type { ConstructionLine } from "@/app/_sheet/construction-line";
import type { Exercise } from "@/lib/exercise/exercise";
import type { PointingDevice } from "@/lib/exercise/marks";
import { ownDesk, type WorkDesk } from "./work-desk";

export type Practice = {
  /** The points asked, in order. */
  readonly asked: readonly string[];
  readonly attempt: Attempt;
  /** False until the browser's storage has been looked into; the server does not know it. */
  readonly opened: boolean;
  /** False where nothing can be kept. */
  readonly keeping: boolean;
  readonly open: () => void;
  readonly begin: () => void;
  readonly move: (at: Place | null, device: PointingDevice) => void;
  /** Keeps where the mark has come to; called when a move ends. */
  readonly rest: () => void;
  readonly undo: () => void;
  readonly commit: () => void;
  readonly next: () => void;
  readonly again: () => void;
  readonly draw: (line: Omit<ConstructionLine, "id">) => void;
  readonly rub: (id: number) => void;
  readonly rubAll: () => void;
  readonly stand: (figure: boolean) => void;
  /** Takes a hint for the point now asked. */
  readonly hint: (point: string) => void;
};

export type PracticeStore = StoreApi<Practice>;

/** The work on one exercise: pure steps of an attempt, each kept at once. Knows no React. */
export function createPractice(
  exercise: Exercise,
  now: () => Date = () => new Date(),
  desk: WorkDesk = ownDesk,
): PracticeStore {
  let shelf: Shelf | null = null;
  return createStore<Practice>((set, get) => {
    const keep = (attempt: Attempt) => {
      const keeping = shelf !== null && desk.keep(shelf, attempt);
      set({ attempt, keeping });
    };
    /** Goes on from a mark; from the last one, to the end. */
    const goOnFrom = (before: Attempt) => {
      const attempt = goOn(before);
      if (isFinished(attempt, exercise.task.marks) && before.correcting) desk.finish(shelf, exercise, attempt, now());
      keep(attempt);
    };
    return {
      asked: exercise.task.marks,
      attempt: newAttempt(exercise),
      opened: false,
      keeping: true,
      open: () => {
        shelf = findShelf();
        const kept = desk.kept(shelf, exercise);
        const fits = kept?.marks.every((mark, i) => mark.point === exercise.task.marks[i]);
        set({ attempt: kept && fits ? kept : get().attempt, opened: true, keeping: shelf !== null });
      },
      begin: () => set({ attempt: beginMove(get().attempt) }),
      // A drag comes here at every frame: nothing is written to the storage until it rests.
      move: (at, device) => set({ attempt: moveMark(get().attempt, at, device) }),
      rest: () => keep(get().attempt),
      undo: () => keep(undoMove(get().attempt)),
      commit: () => {
        const attempt = commitMark(get().attempt, exercise.task.marks);
        // Where corrections wait, the mark is only set down.
        if (desk.held) goOnFrom(attempt);
        else keep(attempt);
      },
      next: () => goOnFrom(get().attempt),
      again: () => keep({ ...newAttempt(exercise), figure: get().attempt.figure }),
      draw: (line) => keep(addLine(get().attempt, line)),
      rub: (id) => keep(removeLine(get().attempt, id)),
      rubAll: () => keep(removeAllLines(get().attempt)),
      hint: (point) => keep(takeHint(get().attempt, point)),
      stand: (figure) => keep({ ...get().attempt, figure }),
    };
  });
}
