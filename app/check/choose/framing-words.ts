import type { FrameAnswer } from "@/app/_photo/worker/messages";

export type Framing = {
  readonly words: string;
  /** All is well enough to press the shutter. */
  readonly ready: boolean;
};

/** The shutter is pressed by itself from so many marks; fewer could be read as well, but the student can do better. */
const ENOUGH = 7;
/** A mark that moves less than this between two frames rests, share of the frame. */
const REST = 0.012;

/** What to say of a frame while framing, the worst first, against the frame before it. */
export function sayFrame(frame: FrameAnswer, before: FrameAnswer | null): Framing {
  const { seen, dark, tilted } = frame;
  if (seen === 0)
    return {
      words: dark ? "It is dark: more light on the paper." : "No mark of a sheet is seen yet: hold the camera over it.",
      ready: false,
    };
  if (seen < ENOUGH) return { words: `${seen} of 8 marks seen: bring the whole sheet into view.`, ready: false };
  if (dark) return { words: "The whole sheet is in view, but it is dark: more light on the paper.", ready: false };
  if (tilted) return { words: "The whole sheet is in view: hold the camera more straight down.", ready: false };
  if (!before || !rests(frame, before)) return { words: `${seen} of 8 marks seen: hold still.`, ready: false };
  return { words: "That is it.", ready: true };
}

function rests({ at }: FrameAnswer, before: FrameAnswer): boolean {
  const was = new Map(before.at.map(([id, x, y]) => [id, [x, y] as const]));
  const moves = at.flatMap(([id, x, y]) => {
    const old = was.get(id);
    return old ? [Math.hypot(x - old[0], y - old[1])] : [];
  });
  return moves.length >= 4 && Math.max(...moves) < REST;
}
