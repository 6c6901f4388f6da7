"use client";

import { useEffect, useMemo, useRef, useState } from "react";
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
import { CheckFrame } from "../check-frame";
import { readMm } from "../read-mm";
import { useEyeRoom } from "./eye-context";
import { countSpots, type EyeWork } from "./eye-work";
import { TypedField } from "./typed-field";

type Corner = (typeof CORNERS)[number];
type Props = {
  readonly work: EyeWork;
  readonly onSet: (corners: FourPoints, size: readonly [width: number, height: number]) => void;
};

const WORDS =
  "The picture with a handle at each corner of a rectangle on its paper. Arrows move the one on hand, Shift for large steps, Alt for fine ones, Enter goes on to the next, plus and minus zoom.";

/** The corners of any rectangle that lies flat on the paper, to see a picture straight on that was taken aslant. */
export function StraightenEye(props: Props) {
  const size = useMemo(() => boardSize({ ...props.work.photo, scale: 1 }), [props.work.photo]);
  const bounds = useMemo(() => ({ left: 0, right: size.width, top: 0, bottom: -size.height }), [size]);
  return (
    <PhotoSheet bounds={bounds} scaleRatio={BOARD_RATIO}>
      <StraightenBoard {...props} size={size} bounds={bounds} />
    </PhotoSheet>
  );
}

function StraightenBoard({ work, onSet, size, bounds }: Props & { readonly size: BoardSize; readonly bounds: Bounds }) {
  const { store: eye } = useEyeRoom();
  const { grips, selected, select, handles, onHand, watch } = useGrips<Corner>(CORNERS, size, bounds);
  const [typed, setTyped] = useState({ width: "", height: "" });
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const [width, height] = [readMm(typed.width), readMm(typed.height)];
  const set = () => {
    if (width.ok && height.ok) onSet(photoPoints(grips, size).corners, [width.mm, height.mm]);
  };
  return (
    <CheckFrame title="Check" board>
      <div className="check-sheet ruled">
        <HandledPhoto
          plane="picture"
          label={WORDS}
          address={work.photo.address}
          bounds={bounds}
          handles={handles}
          onHand={onHand}
          watch={watch}
          caption="The picture"
          live={<CornerLines grips={grips} shown={CORNERS} selected={selected} />}
        />
        <section className="check-side" aria-label="Corners">
          <div className="check-side-head">
            <h1 ref={head} tabIndex={-1} className="check-side-title">
              Straighten the picture
            </h1>
            <p className="check-quiet">
              Only for a picture taken aslant. Drag the handles on to the corners of a rectangle that lies flat on the
              paper: the paper's own edge, or a frame drawn round the drawing. Not one of the set: that is in
              perspective.
            </p>
          </div>
          <div className="eye-rows">
            <CornerRows shown={CORNERS} selected={selected} select={select} />
            <div className="eye-part">
              <Nudges onNudge={handles.nudge} />
              <TypedField
                words="How wide the rectangle is"
                value={typed.width}
                unit="mm"
                example={`297 or 11"`}
                narrow
                trouble={typed.width !== "" && !width.ok ? width.say : null}
                onChange={(value) => setTyped({ ...typed, width: value })}
              />
              <TypedField
                words="How high it is"
                value={typed.height}
                unit="mm"
                example={`210 or 8 1/2"`}
                narrow
                trouble={typed.height !== "" && !height.ok ? height.say : null}
                onChange={(value) => setTyped({ ...typed, height: value })}
              />
              {countSpots(work) > 0 && <p className="check-note">What you have marked so far comes off with it.</p>}
            </div>
          </div>
          <div className="check-side-foot">
            <Press weight="main" onClick={set} aria-disabled={!(width.ok && height.ok)}>
              {width.ok && height.ok ? "Straighten it" : "Say its size first"}
            </Press>
            <Press onClick={() => eye.getState().show({ at: "marking" })}>Leave it as it is</Press>
          </div>
        </section>
      </div>
    </CheckFrame>
  );
}
