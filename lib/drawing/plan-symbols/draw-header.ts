import type { DisplayItem } from "../display-list";
import { shiftBeside } from "../lettering-box";
import { allInFrame, inFrame, type LocalFrame } from "../local-frame";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/**
 * The header over an opening, above the cut of the plan and so hidden: a line at each face of the wall, or one where the
 * wall is drawn without a thickness (`reveal` 0). Frame as for a door. Common practice, no source.
 */
export function drawHeader(id: string, frame: LocalFrame, width: number, reveal: number): readonly DisplayItem[] {
  const across = (name: string, v: number) =>
    makeStroke(
      `${id}.header.${name}`,
      allInFrame(frame, [
        [0, v],
        [width, v],
      ]),
      { line: "hidden" },
    );
  return [across("onstage", 0), ...(reveal > 0 ? [across("offstage", reveal)] : [])];
}

/** ARCH, since in plan nothing else tells one from a passage: clear of the header, offstage of it, however the wall runs. */
export function letterArch(id: string, frame: LocalFrame, width: number, reveal: number): DisplayItem {
  const heightMm = LETTER_MM.small;
  const shiftMm = shiftBeside(frame.across, "ARCH", heightMm, 0.9);
  return makeLettering(`${id}.arch`, inFrame(frame, width / 2, reveal), "ARCH", { heightMm, shiftMm });
}
