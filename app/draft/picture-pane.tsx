"use client";

import { type KeyboardEvent, useId, useMemo } from "react";
import { Pane } from "@/app/_sheet/pane";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { toPaper } from "@/app/_sheet/view";
import { apronDrop } from "@/lib/exercise/inside-frame";
import { BackWallLine } from "./back-wall-line";
import { useDesk, useDeskStore, useExercise } from "./draft-context";
import { MarkNumbers } from "./marks/mark-numbers";
import { isMarking, useMarkPointing } from "./marks/use-mark-pointing";
import { frameLayer, pictureLayers } from "./picture-layers";
import { Layers } from "./plan-pane";
import type { Remember } from "./remember";
import type { Drawn } from "./touched";
import { useBackWall } from "./use-back-wall";
import { useLayers } from "./use-layers";

const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };
const LABEL =
  "Picture, as the eye sees the set. Arrows up and down raise and lower the foot of the back wall; plus and minus zoom.";

const MARKING_LABEL =
  "Picture. Arrows go from point to point; Enter asks for it next, gives it, or leaves it out; Ctrl or Alt with an arrow moves it in " +
  "the order; plus and minus zoom.";

const drawFrame = (exercise: Drawn, remember: Remember) => [frameLayer(exercise, remember)];

/** The picture, which follows the plan as it is drawn. The back wall's foot can be taken hold of in it. */
export function PicturePane() {
  const { views, scaleRatio } = useSheet();
  const exercise = useExercise();
  const trying = useDesk((desk) => desk.trying);
  const rest = useMemo(() => ({ ...exercise, scaleRatio }), [exercise, scaleRatio]);
  const tried = useMemo(() => trying && { ...trying.exercise, scaleRatio }, [trying, scaleRatio]);
  const frame = useLayers(drawFrame, rest, tried);
  const set = useLayers(pictureLayers, rest, tried);
  const { svg, letGo, step } = useBackWall();
  const store = useDeskStore();
  const marks = useMarkPointing("picture");
  const marking = useDesk(isMarking);
  const opening = useId();
  const { stage, viewer } = tried ?? rest;
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
        drawingId="picture-drawing"
        aria-hidden="true"
        onSecondFinger={letGo}
        {...svg}
        live={
          <>
            <Layers layers={frame.moving} scaleRatio={scaleRatio} />
            <g clipPath={`url(#${opening})`}>
              <Layers layers={set.moving} scaleRatio={scaleRatio} />
            </g>
            {!marking && <BackWallLine stage={stage} viewer={viewer} scaleRatio={scaleRatio} />}
            <MarkNumbers plane="picture" />
          </>
        }
      >
        <clipPath id={opening}>
          <rect x={left} y={top} width={right - left} height={foot - top} />
        </clipPath>
        <Layers layers={frame.still} scaleRatio={scaleRatio} />
        <g clipPath={`url(#${opening})`}>
          <Layers layers={set.still} scaleRatio={scaleRatio} />
        </g>
      </Pane>
    </div>
  );
}
