"use client";

import { PlainLine } from "@/app/_sheet/end-marks";
import { CORNERS, type Grip, type Grips } from "./corner-marks";
import { Handle } from "./handle";

/** One millimetre of the board is one of what is drawn on it. */
export const BOARD_RATIO = 1000;

type Props = { readonly grips: Grips; readonly shown: readonly Grip[]; readonly selected: Grip };

/** The sides between four corners, a level line at each other handle, and the handles. */
export function CornerLines({ grips, shown, selected }: Props) {
  const sides = CORNERS.map((corner, i) => [corner, grips[corner], grips[CORNERS[(i + 1) % 4] ?? corner]] as const);
  const levels = shown
    .filter((grip) => numberOf(grip) === "")
    .map((grip) => {
      const up = grips[grip][1];
      return [grip, [grips["upper left"][0], up], [grips["upper right"][0], up]] as const;
    });
  return (
    <>
      {[...sides, ...levels].map(([grip, from, to]) => (
        <PlainLine key={grip} from={from} to={to} scaleRatio={BOARD_RATIO} className="corner-line" />
      ))}
      {shown.map((grip) => (
        <g key={grip} data-handle={grip}>
          <Handle
            at={grips[grip]}
            scaleRatio={BOARD_RATIO}
            look={grip === selected ? "selected" : "settled"}
            letters={numberOf(grip) || (grip === "your horizon" ? "horizon" : "foot")}
          />
        </g>
      ))}
    </>
  );
}

/** A corner's number as it is lettered beside it; empty for a line of the student's own. */
export function numberOf(grip: Grip): string {
  const i = (CORNERS as readonly Grip[]).indexOf(grip);
  return i < 0 ? "" : String(i + 1);
}
