import { askWorker } from "@/app/_parts/ask-worker";
import type { Exercise } from "@/lib/exercise/exercise";
import type { SheetCode } from "@/lib/sheet/sheet-code";
import type {
  Answer,
  Asked,
  DrawingAnswer,
  FourPoints,
  FrameAnswer,
  LinesAnswer,
  NameAnswer,
  PhotoAnswer,
  StraightAnswer,
} from "./worker/messages";

/** What the page asks its worker; each answer comes in its own time, and a failure is an error in words. */
export type WorkerDesk = {
  readonly readPhoto: (file: Blob, look: boolean, step: (words: string) => void) => Promise<PhotoAnswer>;
  readonly readDrawing: (
    asked: Extract<Asked, { readonly ask: "drawing" | "corners" }>,
    step: (words: string) => void,
  ) => Promise<DrawingAnswer>;
  /** Of the sheet found last. */
  readonly showName: (exercise: Exercise, code: SheetCode) => Promise<NameAnswer>;
  /** Opens a picture in which no sheet is looked for, to be shown as large as is asked for. */
  readonly openPicture: (file: Blob, longerPx: number) => Promise<PhotoAnswer>;
  /** Of the photograph opened last, and so are the next two. */
  readonly straighten: (corners: FourPoints, size: readonly [width: number, height: number]) => Promise<StraightAnswer>;
  /** The same with all that lies round the rectangle. */
  readonly straightenAll: (
    corners: FourPoints,
    size: readonly [width: number, height: number],
    longerPx: number,
  ) => Promise<StraightAnswer>;
  readonly findLines: () => Promise<LinesAnswer>;
  readonly readFrame: (frame: ImageBitmap) => Promise<FrameAnswer>;
  readonly close: () => void;
};

/** A desk with a worker that is started at the first question. */
export function openWorkerDesk(start: () => Worker): WorkerDesk {
  const { ask, close } = askWorker<Asked, Answer>(start, "What reads photographs could not be started.");
  return {
    readPhoto: async (file, look, step) => (await ask({ ask: "photo", file, look }, step)) as PhotoAnswer,
    readDrawing: async (asked, step) => (await ask(asked, step)) as DrawingAnswer,
    showName: async (exercise, code) => (await ask({ ask: "name", exercise, code })) as NameAnswer,
    straighten: async (corners, size) =>
      (await ask({ ask: "straighten", corners, size, round: "a little" })) as StraightAnswer,
    openPicture: async (file, longerPx) => (await ask({ ask: "photo", file, look: false, longerPx })) as PhotoAnswer,
    straightenAll: async (corners, size, longerPx) =>
      (await ask({ ask: "straighten", corners, size, round: "all", longerPx })) as StraightAnswer,
    findLines: async () => (await ask({ ask: "lines" })) as LinesAnswer,
    readFrame: async (frame) => (await ask({ ask: "frame", frame }, undefined, [frame])) as FrameAnswer,
    close,
  };
}

/** The worker itself, as the builder makes it. */
export function startCheckWorker(): Worker {
  return new Worker(new URL("./worker/check-worker.ts", import.meta.url), { type: "module" });
}
