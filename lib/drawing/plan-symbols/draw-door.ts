import type { Opening } from "../../plan/plan";
import { arcPoints } from "../arc-points";
import type { DisplayItem } from "../display-list";
import { allInFrame, inFrame, type LocalFrame } from "../local-frame";
import { makeStroke } from "../make-stroke";

/**
 * A door in plan: each leaf standing open at a right angle to the wall, with the arc its edge swings through to where it
 * shuts. Frame: u along the wall from the opening's start jamb, v offstage of the drawn face. A leaf hangs on the face it
 * swings toward. `hinge` is the jamb that carries a single leaf.
 */
export function drawDoor(
  id: string,
  frame: LocalFrame,
  opening: Pick<Opening, "width" | "leaves" | "swing">,
  thickness: number,
  hinge: "start" | "end",
): readonly DisplayItem[] {
  const { width, leaves, swing } = opening;
  const face = swing === "offstage" ? thickness : 0;
  const out = swing === "offstage" ? 1 : -1;
  const leaf = width / leaves;
  const hung = leaves === 2 ? (["start", "end"] as const) : [hinge];
  return hung.flatMap((jamb) => {
    const pivot = jamb === "start" ? 0 : width;
    const shut = jamb === "start" ? 0 : Math.PI;
    const name = leaves === 2 ? `.${jamb}` : "";
    const arc = arcPoints([pivot, face], [leaf, leaf], (out * Math.PI) / 2, out * shut);
    return [
      makeStroke(`${id}.leaf${name}`, [inFrame(frame, pivot, face), inFrame(frame, pivot, face + out * leaf)], {
        weight: "thick",
        hand: true,
      }),
      makeStroke(`${id}.swing${name}`, allInFrame(frame, arc), { hand: true }),
    ];
  });
}
