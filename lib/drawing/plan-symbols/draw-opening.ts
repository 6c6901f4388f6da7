import { upstageJamb } from "../../plan/door-hinges";
import type { Opening, Wall } from "../../plan/plan";
import type { DisplayItem } from "../display-list";
import { inFrame, type LocalFrame } from "../local-frame";
import { drawDoor } from "./draw-door";
import { drawHeader, letterArch } from "./draw-header";
import { drawNiche } from "./draw-niche";
import { drawWindow } from "./draw-window";

/** Plans are cut about 4 ft above the floor (Auburn THEA 2310 drafting notes). */
export const CUT_HEIGHT_M = 1.2192;

/** How deep an opening is drawn in a wall that has no thickness, metres: a 4 in reveal, so that its lines stand apart. */
const DRAWN_REVEAL_M = 0.1016;

/** An opening that stops this near the top of its wall has no header over it, metres. */
const NO_HEADER_M = 0.01;

/** Whether an opening is cut through by the plan, so that its wall is drawn open there; a high window or niche is not. */
export function isCut(opening: Opening): boolean {
  return opening.sill < CUT_HEIGHT_M || !(opening.kind === "window" || opening.kind === "niche");
}

/** The symbol of an opening. Frame: u along the wall from the opening's start jamb, v offstage of the drawn face. */
export function drawOpening(
  id: string,
  frame: LocalFrame,
  opening: Opening,
  { thickness, height }: Pick<Wall, "thickness" | "height">,
): readonly DisplayItem[] {
  const reveal = thickness > 0 ? thickness : DRAWN_REVEAL_M;
  const { kind, width } = opening;
  // A leaf hangs on the face itself, so a door in a wall without thickness gets no reveal for its header to span.
  const header = (deep: number) => (opening.head > height - NO_HEADER_M ? [] : drawHeader(id, frame, width, deep));
  switch (kind) {
    case "door":
      return [
        ...drawDoor(
          id,
          frame,
          opening,
          thickness,
          opening.hinge ?? upstageJamb(frame.origin, inFrame(frame, width, 0)),
        ),
        ...header(thickness),
      ];
    case "window":
      return drawWindow(id, frame, width, reveal, !isCut(opening));
    case "niche":
      return drawNiche(id, frame, opening, opening.depth ?? reveal, !isCut(opening));
    case "arch":
      return [...header(reveal), letterArch(id, frame, width, reveal)];
    case "passage":
      return header(reveal);
  }
}
