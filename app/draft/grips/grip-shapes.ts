import type { Handle } from "@/lib/draft/reshape/handle";

const SQUARE = "M-5 -5H5V5H-5Z";

/** What is pulled is a square, what adds a corner a cross in a lozenge, what turns an arc with its arrows, what goes both ways a lozenge. */
export const GRIP_SHAPES: Readonly<Record<Handle["kind"], string>> = {
  corner: SQUARE,
  end: SQUARE,
  top: "M-6 4L0 -6L6 4Z",
  size: SQUARE,
  edge: "M0 -7L7 0L0 7L-7 0ZM-3 0H3M0 -3V3",
  jamb: "M-7 0L0 -7L7 0L0 7Z",
  turn: "M-8 4A8.5 8.5 0 0 1 8 4M-8 4L-9.5 -2M-8 4L-2.5 1.5M8 4L9.5 -2M8 4L2.5 1.5",
};
