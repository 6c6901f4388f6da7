import type { DisplayItem } from "../display-list";
import { shiftBeside } from "../lettering-box";
import { allInFrame, inFrame, type LocalFrame } from "../local-frame";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/**
 * An arch or a passage in plan: nothing stands in the opening, and the header over it, above the cut, shows as hidden
 * lines. Frame as for a door. An arch is lettered, since in plan nothing else tells it from a passage.
 */
export function drawHeader(
  id: string,
  frame: LocalFrame,
  opening: { readonly width: number; readonly kind: "arch" | "passage" },
  reveal: number,
): readonly DisplayItem[] {
  const { width, kind } = opening;
  const across = (name: string, v: number) =>
    makeStroke(
      `${id}.header.${name}`,
      allInFrame(frame, [
        [0, v],
        [width, v],
      ]),
      { line: "hidden" },
    );
  const lines = [across("onstage", 0), across("offstage", reveal)];
  return kind === "passage" ? lines : [...lines, letterArch(id, frame, width, reveal)];
}

/** Clear of the header, offstage of it, whichever way the wall runs. */
function letterArch(id: string, frame: LocalFrame, width: number, reveal: number): DisplayItem {
  const heightMm = LETTER_MM.small;
  const shiftMm = shiftBeside(frame.across, "ARCH", heightMm, 0.9);
  return makeLettering(`${id}.arch`, inFrame(frame, width / 2, reveal), "ARCH", { heightMm, shiftMm });
}
