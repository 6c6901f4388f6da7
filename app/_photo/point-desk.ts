import type { Place } from "@/app/_parts/kept-work/attempt";
import {
  asRead,
  type CheckedDrawing,
  type CheckedPoint,
  changePoint,
  isRight,
  movePoint,
  nextOpen,
  notDrawn,
  type Said,
} from "./checked-drawing";

/** The readings of one photograph under the hand: pure steps, each of which can be taken back. */
export type PointDesk = {
  readonly drawing: CheckedDrawing | null;
  /** The point on hand. */
  readonly selected: string | null;
  /** Points as they were before each move, the oldest first. */
  readonly earlier: readonly CheckedPoint[];
  readonly select: (point: string | null) => void;
  readonly begin: () => void;
  readonly move: (at: Place) => void;
  readonly rest: () => void;
  readonly undo: () => void;
  readonly say: (what: Said) => void;
};

type Kept = Pick<PointDesk, "drawing" | "selected" | "earlier">;
type Steps = Omit<PointDesk, keyof Kept>;

/** Enough for any patience. */
const MOST_EARLIER = 100;

const STEPS: Readonly<Record<Said, (one: CheckedPoint) => CheckedPoint>> = {
  right: isRight,
  "not drawn": notDrawn,
  "as read": asRead,
};

/** What can be done to the points of a drawing; `keep` takes the drawing after each step, but not at each frame of a drag. */
export function pointSteps(
  get: () => Kept,
  set: (part: Partial<Kept>) => void,
  keep: (drawing: CheckedDrawing) => void,
): Steps {
  const change = (made: (one: CheckedPoint) => CheckedPoint): CheckedDrawing | null => {
    const { drawing, selected } = get();
    return drawing && selected !== null ? changePoint(drawing, selected, made) : null;
  };
  const begin = () => {
    const { drawing, selected, earlier } = get();
    const one = drawing?.points.find(({ point }) => point === selected);
    if (one) set({ earlier: [...earlier, one].slice(-MOST_EARLIER) });
  };
  return {
    select: (selected) => set({ selected }),
    begin,
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
      begin();
      const drawing = change(STEPS[what]);
      if (!drawing) return;
      // What is settled leads on to what is not.
      if (what !== "as read") set({ selected: nextOpen(drawing) ?? get().selected });
      keep(drawing);
    },
  };
}
