import type { DisplayItem } from "../display-list";
import { allInFrame, type LocalFrame } from "../local-frame";
import { makeStroke } from "../make-stroke";

/**
 * A window in plan: the sill's two edges across the opening and the line of the glass between them. Frame as for a door;
 * `reveal` is how deep the opening is drawn. One above the cut is drawn hidden, over a wall that runs on beneath it.
 */
export function drawWindow(
  id: string,
  frame: LocalFrame,
  width: number,
  reveal: number,
  aboveCut: boolean,
): readonly DisplayItem[] {
  const line = aboveCut ? ("hidden" as const) : ("solid" as const);
  const across = (name: string, v: number) =>
    makeStroke(
      `${id}.${name}`,
      allInFrame(frame, [
        [0, v],
        [width, v],
      ]),
      { line, hand: !aboveCut },
    );
  const jamb = (name: string, u: number) =>
    makeStroke(
      `${id}.${name}`,
      allInFrame(frame, [
        [u, 0],
        [u, reveal],
      ]),
      { line, hand: !aboveCut },
    );
  return [
    across("sill.onstage", 0),
    across("sill.offstage", reveal),
    across("glass", reveal / 2),
    jamb("jamb.start", 0),
    jamb("jamb.end", width),
  ];
}
