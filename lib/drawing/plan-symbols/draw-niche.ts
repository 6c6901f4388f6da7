import type { DisplayItem } from "../display-list";
import { allInFrame, type LocalFrame } from "../local-frame";
import { makeStroke } from "../make-stroke";

/**
 * A niche in plan: the wall's face turned in by the niche's depth and back out, with the edge of its sill where it has
 * one. Frame as for a door; depth runs offstage from the drawn face, past the back of the wall where it is deeper. One
 * above the cut is drawn hidden.
 */
export function drawNiche(
  id: string,
  frame: LocalFrame,
  { width, sill }: { readonly width: number; readonly sill: number },
  depth: number,
  aboveCut: boolean,
): readonly DisplayItem[] {
  const recess = allInFrame(frame, [
    [0, 0],
    [0, depth],
    [width, depth],
    [width, 0],
  ]);
  if (aboveCut) return [makeStroke(`${id}.recess`, recess, { line: "hidden" })];
  return [
    makeStroke(`${id}.recess`, recess, { weight: "extra-thick", hand: true, fill: "paper" }),
    ...(sill > 0
      ? [
          makeStroke(
            `${id}.sill`,
            allInFrame(frame, [
              [0, 0],
              [width, 0],
            ]),
            { hand: true },
          ),
        ]
      : []),
  ];
}
