"use client";

import { useMemo, useState } from "react";
import { Press } from "@/app/_parts/press";
import { BOARD_RATIO, CornerLines } from "@/app/_photo/corner-lines";
import { type BoardSize, boardSize, CORNERS, photoPoints } from "@/app/_photo/corner-marks";
import { CornerRows } from "@/app/_photo/corner-rows";
import { HandledPhoto } from "@/app/_photo/handled-photo";
import { Nudges } from "@/app/_photo/nudges";
import { PhotoSheet } from "@/app/_photo/photo-pane";
import { useGrips } from "@/app/_photo/use-grips";
import type { FourPoints } from "@/app/_photo/worker/messages";
import type { Bounds } from "@/app/_sheet/view";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import { useExercise } from "../desk/draft-context";
import { TypedLength } from "../fields/typed-length";
import type { OpenedPicture, Trouble } from "./open-tracing";
import { useAddress } from "./under-plan";

type Corner = (typeof CORNERS)[number];
type Props = {
  readonly picture: OpenedPicture;
  readonly trouble: Trouble | null;
  /** The four corners in the picture's pixels, and how wide and high the rectangle is, metres. */
  readonly onSet: (corners: FourPoints, size: readonly [width: number, height: number]) => void;
  readonly onLeave: () => void;
};

const WORDS =
  "The photograph with a handle at each corner of a rectangle on it. Arrows move the one on hand, Shift for large steps, Alt for fine ones, Enter goes on to the next, plus and minus zoom.";

/** A photograph taken at a slant is seen straight on, by the corners of a rectangle that lies flat on its paper. */
export function StraightenPicture(props: Props) {
  const size = useMemo(() => boardSize({ ...props.picture, scale: 1 }), [props.picture]);
  const bounds = useMemo(() => ({ left: 0, right: size.width, top: 0, bottom: -size.height }), [size]);
  return (
    <PhotoSheet bounds={bounds} scaleRatio={BOARD_RATIO}>
      <Board {...props} size={size} bounds={bounds} />
    </PhotoSheet>
  );
}

type BoardProps = Props & { readonly size: BoardSize; readonly bounds: Bounds };

function Board({ picture, trouble, onSet, onLeave, size, bounds }: BoardProps) {
  const { units } = useExercise();
  const example = units === "m" ? "297 mm" : '11"';
  const { grips, selected, select, handles, onHand, watch } = useGrips<Corner>(CORNERS, size, bounds);
  const [typed, setTyped] = useState({ width: "", height: "" });
  const address = useAddress(picture.picture);
  const [width, height] = [typedLength(typed.width, units), typedLength(typed.height, units)];
  const isReady = width.ok && height.ok && width.metres > 0 && height.metres > 0;
  const set = () => {
    if (isReady) onSet(photoPoints(grips, size).corners, [width.metres, height.metres]);
  };
  return (
    <div className="check-sheet trace-corners ruled">
      <HandledPhoto
        plane="picture"
        label={WORDS}
        address={address ?? ""}
        bounds={bounds}
        handles={handles}
        onHand={onHand}
        watch={watch}
        caption="The photograph"
        live={<CornerLines grips={grips} shown={CORNERS} selected={selected} />}
      />
      <section className="draft-content" aria-label="Corners">
        <p>
          Drag the handles on to the corners of a rectangle whose sides you know and that lies flat on the paper: the
          sheet's own edge, the frame of the drawing, or a square of its grid. The larger it is, the better.
        </p>
        <CornerRows shown={CORNERS} selected={selected} select={select} />
        <Nudges onNudge={handles.nudge} />
        <p>Both sides in one measure, on the paper or on the stage: only how they compare counts.</p>
        <div className="draft-fields">
          <TypedLength
            label="How wide it is"
            value={typed.width}
            units={units}
            example={example}
            onChange={(text) => setTyped({ ...typed, width: text })}
          />
          <TypedLength
            label="How high it is"
            value={typed.height}
            units={units}
            example={example}
            onChange={(text) => setTyped({ ...typed, height: text })}
          />
        </div>
        {trouble && (
          <p className="draft-wrong" role="alert">
            {trouble.say} {trouble.remedy}
          </p>
        )}
        <div className="draft-presses">
          <Press weight="main" aria-disabled={!isReady} onClick={set}>
            {isReady ? "Straighten it" : "Say its sides first"}
          </Press>
          <Press onClick={onLeave}>Leave it as it is</Press>
        </div>
      </section>
    </div>
  );
}
