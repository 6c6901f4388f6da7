import type { Shelf } from "@/app/_parts/kept-work/shelf";
import { sheetFrame, toSheet } from "@/app/_photo/places";
import type { ReadDrawing } from "@/app/_photo/worker/messages";
import type { PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";

/** What the worker would answer of a true drawing; some of its points in doubt, some not found. */
export function readAs(
  exercise: Exercise,
  sheet: PracticeSheet,
  states: Readonly<Record<string, "doubtful" | "missing">> = {},
  ownEye: ReadDrawing["ownEye"] = null,
): ReadDrawing {
  const frame = sheetFrame(sheet);
  const points = exercisePoints(exercise);
  return {
    kind: "read",
    paper: sheet.paper,
    box: { left: 20, top: 20, right: 180, bottom: 120 },
    picture: new Blob(["pixels"], { type: "image/jpeg" }),
    ownEye,
    doubts: [],
    reading: {
      lines: [],
      corners: [],
      points: exercise.task.marks.map((point) => {
        const at = points.get(point)?.picture;
        const missing = states[point] === "missing" || !at;
        return {
          point,
          at: missing ? null : toSheet(frame, at),
          sure: missing ? 0 : states[point] === "doubtful" ? 0.4 : 0.9,
          corner: null,
        };
      }),
    },
  };
}

/** A browser's storage that forgets at the end. */
export function memoryShelf(): Shelf {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
    key: (i) => [...kept.keys()][i] ?? null,
    get length() {
      return kept.size;
    },
  };
}
