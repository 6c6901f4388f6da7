import { CAP_SHARE } from "@/lib/drawing/lettering-box";
import { LETTER_MM } from "@/lib/drawing/make-stroke";

/** Letter sizes by the width of the screen, pixels: 32 and more from the narrower projector up. */
const SENTENCE_PX = [
  { from: 1900, px: 44 },
  { from: 1600, px: 38 },
  { from: 1260, px: 32 },
  { from: 1000, px: 26 },
  { from: 700, px: 22 },
  { from: 0, px: 17 },
] as const;

/** Font size of a note lettered on a drawing, in its millimetres: letters are so much of their font high. */
const NOTE_FONT_MM = LETTER_MM.note / CAP_SHARE;

/** From this width on a screen is one that a room looks at. */
const ROOM_PX = 1260;
/** Below this width, or higher than wide, the words go under the drawings. */
const WIDE_PX = 900;

/** Font size of the sentence, pixels. */
export function sentencePx(width: number): number {
  return SENTENCE_PX.find(({ from }) => width >= from)?.px ?? 17;
}

/** Letters on a drawing may be this much smaller than the sentence, and on a screen for a room no smaller than that. */
const LETTER_SHARE = 0.82;
const LEAST_ROOM_PX = 32;

/** Pixels of a drawing's millimetre at which its notes can be read as far off as the sentence. */
export function letterUnitPx(width: number): number {
  const least = width >= ROOM_PX ? LEAST_ROOM_PX : 0;
  return Math.max(sentencePx(width) * LETTER_SHARE, least) / NOTE_FONT_MM;
}

export function isNarrow({ width, height }: { readonly width: number; readonly height: number }): boolean {
  return width < WIDE_PX || height > width;
}
