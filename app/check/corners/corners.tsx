"use client";

import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { Press } from "@/app/_parts/press";
import { Handle } from "@/app/_photo/handle";
import { Nudges } from "@/app/_photo/nudges";
import { PHOTO_ID, PhotoPane, PhotoSheet, ZoomPresses } from "@/app/_photo/photo-pane";
import { useHandles } from "@/app/_photo/use-handles";
import type { FourPoints, OwnLines } from "@/app/_photo/worker/messages";
import { PlainLine } from "@/app/_sheet/end-marks";
import { Magnifier } from "@/app/_sheet/magnifier";
import type { Exercise } from "@/lib/exercise/exercise";
import { capital } from "@/lib/plan/first-letter";
import { type Listed, useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import type { ShownPhoto } from "../check-store";
import { boardSize, CORNERS, type Grip, type Grips, OWN_LINES, photoPoints, startGrips } from "./corner-marks";
import { ExerciseChoice } from "./exercise-choice";

type Props = {
  readonly photo: ShownPhoto;
  readonly exercise: Exercise | null;
  readonly catalogue: readonly Listed[];
  readonly onExercise: (id: string) => void;
  readonly onSet: (exercise: Exercise, photo: ShownPhoto, corners: FourPoints, ownLines: OwnLines | null) => void;
};

/** One millimetre of the board is one of what is drawn on it. */
const BOARD_RATIO = 1000;
const WORDS =
  "The photograph with a handle at each corner of the opening. Arrows move the one on hand, Shift for large steps, Alt for fine ones, Enter goes on to the next, plus and minus zoom.";

/** The four corners of the opening set by hand, for a drawing on any paper. */
export function Corners(props: Props) {
  const size = useMemo(() => boardSize(props.photo), [props.photo]);
  const bounds = useMemo(() => ({ left: 0, right: size.width, top: 0, bottom: -size.height }), [size]);
  return (
    <PhotoSheet bounds={bounds} scaleRatio={BOARD_RATIO}>
      <CornerBoard {...props} size={size} bounds={bounds} />
    </PhotoSheet>
  );
}

type State = { readonly grips: Grips; readonly selected: Grip; readonly earlier: readonly Grips[] };

function CornerBoard({
  photo,
  exercise,
  catalogue,
  onExercise,
  onSet,
  size,
  bounds,
}: Props & {
  readonly size: ReturnType<typeof boardSize>;
  readonly bounds: { left: number; right: number; top: number; bottom: number };
}) {
  const { store: check, homework } = useCheckRoom();
  const [store] = useState(() =>
    createStore<State>(() => ({ grips: startGrips(size), selected: "upper left", earlier: [] })),
  );
  const { grips, selected } = useStore(store);
  const [ownEye, setOwnEye] = useState(false);
  const [magnified, setMagnified] = useState(false);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const mayOwn = exercise?.task.kind === "plan-to-picture";
  const isRead = exercise?.task.kind === "picture-to-plan";
  const shown: readonly Grip[] = ownEye && mayOwn ? [...CORNERS, ...OWN_LINES] : CORNERS;

  const handles = useHandles({
    plane: "picture",
    bounds,
    places: () => new Map(shown.map((grip) => [grip, store.getState().grips[grip]])),
    selected: () => store.getState().selected,
    select: (grip) => store.setState({ selected: grip as Grip }),
    begin: () => store.setState(({ grips: was, earlier }) => ({ earlier: [...earlier, was].slice(-100) })),
    move: (at) => store.setState(({ grips: was, selected: grip }) => ({ grips: { ...was, [grip]: at } })),
    rest: () => {},
    undo: () =>
      store.setState(({ grips: was, earlier }) => ({ grips: earlier.at(-1) ?? was, earlier: earlier.slice(0, -1) })),
    settle: () =>
      store.setState(({ selected: grip }) => ({
        selected: shown[(shown.indexOf(grip) + 1) % shown.length] ?? "upper left",
      })),
  });
  const onHand = useCallback(() => store.getState().grips[store.getState().selected], [store]);

  const set = () => {
    if (!exercise || isRead) return;
    const { corners, ownLines } = photoPoints(grips, size);
    onSet(exercise, photo, corners, ownEye && mayOwn ? ownLines : null);
  };
  return (
    <CheckFrame title={exercise?.title ?? "Check"} board>
      <div className="check-sheet ruled">
        <div className="check-picture">
          <PhotoPane
            plane="picture"
            label={WORDS}
            address={photo.address}
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
                {shown.slice(4).map((grip) => (
                  <PlainLine
                    key={grip}
                    from={[grips["upper left"][0], grips[grip][1]]}
                    to={[grips["upper right"][0], grips[grip][1]]}
                    scaleRatio={BOARD_RATIO}
                    className="corner-line"
                  />
                ))}
                {shown.map((grip, i) => (
                  <g key={grip} data-handle={grip}>
                    <Handle
                      at={grips[grip]}
                      scaleRatio={BOARD_RATIO}
                      look={grip === selected ? "selected" : "settled"}
                      letters={i < 4 ? String(i + 1) : grip === "your horizon" ? "horizon" : "foot"}
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
              <span className="lettering">The photograph</span>
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
              Where is the proscenium opening?
            </h1>
            <p className="check-quiet">
              Drag each handle on to its corner of the opening: the lower two on the plaster line. Two fingers or the
              wheel bring it closer.
            </p>
            {!homework && <ExerciseChoice chosen={exercise?.id ?? null} catalogue={catalogue} onChoose={onExercise} />}
          </div>
          <ol className="point-rows corner-rows">
            {shown.map((grip, i) => (
              <li key={grip} className="point-row" data-chosen={grip === selected}>
                <button
                  type="button"
                  className="point-name"
                  aria-pressed={grip === selected}
                  onClick={() => store.setState({ selected: grip })}
                >
                  <span className="point-number">{i < 4 ? i + 1 : ""}</span>
                  <span>{capital(grip)}</span>
                </button>
              </li>
            ))}
          </ol>
          <div className="check-side-head">
            <Nudges onNudge={handles.nudge} />
            {isRead && (
              <p className="check-note">
                This exercise is read back on to the plan, and the picture's opening does not tell where that lies: it
                can be checked on its printed sheet only.
              </p>
            )}
            {mayOwn && (
              <label className="check-tick">
                <input type="checkbox" checked={ownEye} onChange={(event) => setOwnEye(event.target.checked)} />
                <span>I drew a horizon and a back wall of my own: mark it for the eye that they give</span>
              </label>
            )}
          </div>
          <div className="check-side-foot">
            <Press weight="main" onClick={set} aria-disabled={!exercise || isRead}>
              {exercise ? "Straighten it" : "Choose the exercise first"}
            </Press>
            <Press onClick={() => check.getState().show({ at: "choose" })}>Another photo</Press>
          </div>
        </section>
      </div>
    </CheckFrame>
  );
}
