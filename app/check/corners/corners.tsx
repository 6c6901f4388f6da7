"use client";

import { useEffect, useMemo, useRef, useState } from "react";
import { Press } from "@/app/_parts/press";
import { BOARD_RATIO, CornerLines } from "@/app/_photo/corner-lines";
import { type BoardSize, boardSize, CORNERS, type Grip, OWN_LINES, photoPoints } from "@/app/_photo/corner-marks";
import { CornerRows } from "@/app/_photo/corner-rows";
import { HandledPhoto } from "@/app/_photo/handled-photo";
import { Nudges } from "@/app/_photo/nudges";
import { PhotoSheet } from "@/app/_photo/photo-pane";
import { useGrips } from "@/app/_photo/use-grips";
import type { FourPoints, OwnLines } from "@/app/_photo/worker/messages";
import type { Bounds } from "@/app/_sheet/view";
import type { Exercise } from "@/lib/exercise/exercise";
import { type Listed, useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import type { ShownPhoto } from "../check-store";
import { ExerciseChoice } from "./exercise-choice";

type Props = {
  readonly photo: ShownPhoto;
  readonly exercise: Exercise | null;
  readonly catalogue: readonly Listed[];
  readonly onExercise: (id: string) => void;
  readonly onSet: (exercise: Exercise, photo: ShownPhoto, corners: FourPoints, ownLines: OwnLines | null) => void;
};

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

function CornerBoard({
  photo,
  exercise,
  catalogue,
  onExercise,
  onSet,
  size,
  bounds,
}: Props & {
  readonly size: BoardSize;
  readonly bounds: Bounds;
}) {
  const { store: check, homework } = useCheckRoom();
  const [ownEye, setOwnEye] = useState(false);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const mayOwn = exercise?.task.kind === "plan-to-picture";
  const isRead = exercise?.task.kind === "picture-to-plan";
  const shown: readonly [Grip, ...Grip[]] = ownEye && mayOwn ? [...CORNERS, ...OWN_LINES] : CORNERS;
  const { grips, selected, select, handles, onHand, watch } = useGrips(shown, size, bounds);

  const set = () => {
    if (!exercise || isRead) return;
    const { corners, ownLines } = photoPoints(grips, size);
    onSet(exercise, photo, corners, ownEye && mayOwn ? ownLines : null);
  };
  return (
    <CheckFrame title={exercise?.title ?? "Check"} board>
      <div className="check-sheet ruled">
        <HandledPhoto
          plane="picture"
          label={WORDS}
          address={photo.address}
          bounds={bounds}
          handles={handles}
          onHand={onHand}
          watch={watch}
          caption="The photograph"
          live={<CornerLines grips={grips} shown={shown} selected={selected} />}
        />
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
          <div className="point-rows">
            <CornerRows shown={shown} selected={selected} select={select} />
          </div>
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
