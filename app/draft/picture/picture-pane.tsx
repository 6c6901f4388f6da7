"use client";

import { type KeyboardEvent, useCallback, useId, useMemo, useState } from "react";
import { Pane } from "@/app/_sheet/pane";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { toPaper } from "@/app/_sheet/view";
import { apronDrop } from "@/lib/exercise/inside-frame";
import { shownDraft } from "../desk/desk";
import { useDesk, useDeskStore, useExercise } from "../desk/draft-context";
import type { Remember } from "../layers/remember";
import type { Drawn } from "../layers/touched";
import { useLayers } from "../layers/use-layers";
import { createHideLayers } from "../live/hide-layers";
import { LiveCanvas } from "../live/live-canvas";
import type { LivePaper } from "../live/live-paper";
import { paintPicture } from "../live/paint-picture";
import { createPictureChange, SET } from "../live/picture-change";
import { MarkNumbers } from "../marks/mark-numbers";
import { isMarking, useMarkPointing } from "../marks/use-mark-pointing";
import { Layers } from "../plan/plan-pane";
import { useSeenPicture } from "../seen/use-seen-picture";
import { BackWallLine } from "./back-wall-line";
import { frameBeforeSet, frameLayer, pictureLayers } from "./picture-layers";
import { useBackWall } from "./use-back-wall";

const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };
const LABEL =
  "Picture, as the eye sees the set. Arrows up and down raise and lower the foot of the back wall; plus and minus zoom.";

const MARKING_LABEL =
  "Picture. Arrows go from point to point; Enter asks for it next, gives it, or leaves it out; Ctrl or Alt with an arrow moves it in " +
  "the order; plus and minus zoom.";

const DRAWING_ID = "picture-drawing";
/** The layers that hang on the eye and the stage alone. */
const FRAME = "frame";
const BACK_WALL = "back-wall";
const ALL: ReadonlySet<string> = new Set([SET, FRAME, BACK_WALL]);

const drawFrame = (exercise: Drawn, remember: Remember) => [frameLayer(exercise, remember)];
const drawBeforeSet = (exercise: Drawn, remember: Remember) => [frameBeforeSet(exercise, remember)];
const drawNothing = () => [];

/** The picture, which follows the plan as it is drawn. The back wall's foot can be taken hold of in it. */
export function PicturePane() {
  const { views, scaleRatio } = useSheet();
  const store = useDeskStore();
  const exercise = useExercise();
  const rest = useMemo(() => ({ ...exercise, scaleRatio }), [exercise, scaleRatio]);
  const [asSeen, setAsSeen] = useState(true);
  // Points to be asked for stand at the back of things as well: while they are chosen the set is seen through.
  const marking = useDesk(isMarking);
  const seen = useSeenPicture(asSeen && !marking, exercise);
  const through = marking || !asSeen || seen.kind === "cannot";
  const frame = useLayers(through || seen.kind === "none" ? drawFrame : drawBeforeSet, rest);
  const set = useLayers(through ? pictureLayers : drawNothing, rest);
  /** The set whose picture lies there. Until that of the set as it is now has been worked out, what changed is painted over it. */
  const drawn = through ? exercise : seen.kind === "seen" ? seen.of : null;
  const layers = through ? set.still : seen.kind === "seen" ? seen.layers : set.still;
  const change = useMemo(() => createPictureChange(), []);
  const hide = useMemo(() => createHideLayers(() => document.getElementById(DRAWING_ID)), []);
  const paint = useCallback(
    (paper: LivePaper) => {
      const desk = store.getState();
      const now = shownDraft(desk).exercise;
      const otherView = now.stage !== exercise.stage || now.viewer !== exercise.viewer;
      const changed = change(otherView ? null : drawn, now);
      hide(otherView ? ALL : changed.gone);
      paintPicture(paper, desk, changed);
    },
    [store, change, hide, exercise, drawn],
  );
  const hangsOn = useCallback(() => {
    const { plan, stage, viewer, units } = shownDraft(store.getState()).exercise;
    return [plan, stage, viewer, units];
  }, [store]);
  const { svg, letGo, step } = useBackWall();
  const marks = useMarkPointing("picture");
  const opening = useId();
  const { stage, viewer } = rest;
  const half = stage.opening.width / 2;
  const [left, top] = toPaper([-half, stage.opening.height], scaleRatio);
  const [right, foot] = toPaper([half, apronDrop(stage, viewer)], scaleRatio);

  const onKeyDown = (event: KeyboardEvent) => {
    const zoom = ZOOM_KEYS[event.key];
    if (isMarking(store.getState()) && marks.key(event)) return;
    if (zoom) views.getState().zoom("picture", zoom);
    else if (event.key === "0") views.getState().whole("picture");
    else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      event.preventDefault();
      step(event.key === "ArrowUp" ? 1 : -1, event.repeat);
    }
  };
  return (
    <>
      <div
        className="draft-keys"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
        tabIndex={0}
        aria-label={marking ? MARKING_LABEL : LABEL}
        onKeyDown={onKeyDown}
      >
        <Pane
          plane="picture"
          drawingId={DRAWING_ID}
          aria-hidden="true"
          onSecondFinger={letGo}
          {...svg}
          live={<MarkNumbers plane="picture" />}
          over={<LiveCanvas plane="picture" paint={paint} hangsOn={hangsOn} />}
        >
          <clipPath id={opening}>
            <rect x={left} y={top} width={right - left} height={foot - top} />
          </clipPath>
          <Layers layers={frame.still} scaleRatio={scaleRatio} />
          <g clipPath={`url(#${opening})`}>
            <g data-layer={SET}>
              <Layers layers={layers} scaleRatio={scaleRatio} />
            </g>
          </g>
          <g data-layer={BACK_WALL}>
            {!marking && <BackWallLine stage={stage} viewer={viewer} scaleRatio={scaleRatio} />}
          </g>
        </Pane>
      </div>
      {seen.kind !== "cannot" && (
        <label className="draft-through">
          <input type="checkbox" checked={through} disabled={marking} onChange={() => setAsSeen(!asSeen)} />
          See through the set{marking && ", as long as points are chosen"}
        </label>
      )}
    </>
  );
}
