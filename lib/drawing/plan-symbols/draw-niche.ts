import type { DisplayItem } from "../display-list";
import { allInFrame, type LocalFrame } from "../local-frame";
import { makeStroke } from "../make-stroke";

/**
 * A niche in plan: the wall's face turned in by the niche's depth and back out. Frame as for a door; depth runs offstage
 * from the drawn face, past the back of the wall where it is deeper. One above the cut is drawn hidden.
 */
export function drawNiche(
  id: string,
  frame: LocalFrame,
  width: number,
  depth: number,
  aboveCut: boolean,
): readonly DisplayItem[] {
  const recess = allInFrame(frame, [
    [0, 0],
    [0, depth],
    [width, depth],
    [width, 0],
  ]);
  return aboveCut
    ? [makeStroke(`${id}.recess`, recess, { line: "hidden" })]
    : [makeStroke(`${id}.recess`, recess, { weight: "extra-thick", hand: true, fill: "paper" })];
}
