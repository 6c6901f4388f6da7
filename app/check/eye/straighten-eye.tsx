"use client";

import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { Press } from "@/app/_parts/press";
import { Handle } from "@/app/_photo/handle";
import { Nudges } from "@/app/_photo/nudges";
import { PHOTO_ID, PhotoPane, PhotoSheet, ZoomPresses } from "@/app/_photo/photo-pane";
import { useHandles } from "@/app/_photo/use-handles";
import type { FourPoints } from "@/app/_photo/worker/messages";
import { PlainLine } from "@/app/_sheet/end-marks";
import { Magnifier } from "@/app/_sheet/magnifier";
import type { Bounds } from "@/app/_sheet/view";
import { capital } from "@/lib/plan/first-letter";
import { CheckFrame } from "../check-frame";
import { boardSize, CORNERS, photoPoints, startGrips } from "../corners/corner-marks";
import { readMm } from "../read-mm";
import { BOARD_RATIO } from "./board";
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

function StraightenBoard({
  work,
  onSet,
  size,
  bounds,
}: Props & { readonly size: ReturnType<typeof boardSize>; readonly bounds: Bounds }) {
  const { store: eye } = useEyeRoom();
  const [store] = useState(() =>
    createStore(() => ({ grips: startGrips(size), selected: "upper left" as Corner, earlier: [startGrips(size)] })),
  );
  const { grips, selected } = useStore(store);
  const [typed, setTyped] = useState({ width: "", height: "" });
  const [magnified, setMagnified] = useState(false);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const [width, height] = [readMm(typed.width), readMm(typed.height)];
  const handles = useHandles({
    plane: "picture",
    bounds,
    places: () => new Map(CORNERS.map((corner) => [corner, store.getState().grips[corner]])),
    selected: () => store.getState().selected,
    select: (corner) => store.setState({ selected: corner as Corner }),
    begin: () => store.setState(({ grips: was, earlier }) => ({ earlier: [...earlier, was].slice(-100) })),
    move: (at) => store.setState(({ grips: was, selected: corner }) => ({ grips: { ...was, [corner]: at } })),
    rest: () => {},
    undo: () =>
      store.setState(({ grips: was, earlier }) => ({ grips: earlier.at(-1) ?? was, earlier: earlier.slice(0, -1) })),
    settle: () =>
      store.setState(({ selected: corner }) => ({ selected: CORNERS[(CORNERS.indexOf(corner) + 1) % 4] ?? corner })),
  });
  const onHand = useCallback(() => store.getState().grips[store.getState().selected], [store]);
  const set = () => {
    if (width.ok && height.ok) onSet(photoPoints(grips, size).corners, [width.mm, height.mm]);
  };
  return (
    <CheckFrame title="Check" board>
      <div className="check-sheet ruled">
        <div className="check-picture">
          <PhotoPane
            plane="picture"
            label={WORDS}
            address={work.photo.address}
            bounds={bounds}
            keys={handles.onKeyDown}
            about={onHand}
            onSecondFinger={handles.letGo}
            {...handles.svg}
            live={
              <>
                {CORNERS.map((corner, i) => (
                  <PlainLine
                    key={corner}
                    from={grips[corner]}
                    to={grips[CORNERS[(i + 1) % 4] ?? corner]}
                    scaleRatio={BOARD_RATIO}
                    className="corner-line"
                  />
                ))}
                {CORNERS.map((corner, i) => (
                  <g key={corner} data-handle={corner}>
                    <Handle
                      at={grips[corner]}
                      scaleRatio={BOARD_RATIO}
                      look={corner === selected ? "selected" : "settled"}
                      letters={String(i + 1)}
                    />
                  </g>
                ))}
              </>
            }
            over={
              (magnified || handles.pointing?.down) && (
                <Magnifier plane="picture" drawingId={PHOTO_ID} mark={onHand} watch={store.subscribe} />
              )
            }
          />
          <div className="check-tools">
            <p className="check-drawn">
              <span className="lettering">The picture</span>
            </p>
            <Press weight="small" aria-pressed={magnified} onClick={() => setMagnified(!magnified)}>
              Magnifier
            </Press>
            <ZoomPresses plane="picture" about={onHand} />
          </div>
        </div>
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
            <ol className="corner-rows">
              {CORNERS.map((corner, i) => (
                <li key={corner} className="point-row" data-chosen={corner === selected}>
                  <button
                    type="button"
                    className="point-name"
                    aria-pressed={corner === selected}
                    onClick={() => store.setState({ selected: corner })}
                  >
                    <span className="point-number">{i + 1}</span>
                    <span>{capital(corner)}</span>
                  </button>
                </li>
              ))}
            </ol>
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
