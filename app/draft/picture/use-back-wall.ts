"use client";

import { type PointerEvent, useRef } from "react";
import { viewOfPane } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { fromPx, type PxPoint, toPx } from "@/app/_sheet/view";
import { printLength } from "@/lib/measure/print-length";
import { project } from "@/lib/perspective/project";
import { floorHeight, type Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { useDeskStore } from "../desk/draft-context";
import { isMarking, useMarkPointing } from "../marks/use-mark-pointing";

/** How near a point must be pressed, pixels. */
const POINT_PX = { mouse: 12, touch: 22 } as const;
/** A press that moves no more than this is no push, pixels. */
const STILL_PX = 4;
/** How near the line of the back wall's foot must be pressed, pixels. */
const REACH_PX = { mouse: 8, touch: 22 } as const;
/** Of the height between floor and eye, what is kept free at either end: nearer no eye could stand. */
const MARGIN = 0.02;

/** Where the back wall's foot stands in the picture, metres above the plaster line's. Null behind the eye, which no draft has. */
export function backWallRise(stage: Stage, viewer: Viewer): number | null {
  const foot = project(viewer, [0, stage.depth, floorHeight(stage, stage.depth)]);
  return foot.seen ? foot.at[1] : null;
}

/** The back wall's foot taken hold of in the picture: up brings the eye nearer, down takes it farther off. Elsewhere the paper is pushed. */
export function useBackWall() {
  const { views } = useSheet();
  const store = useDeskStore();
  const marks = useMarkPointing("picture");
  const hold = useRef<{
    readonly pointer: number;
    readonly wall: boolean;
    readonly from: PxPoint;
    last: PxPoint;
    moved: boolean;
  } | null>(null);

  const within = (rise: number, stage: Stage, viewer: Viewer) => {
    const least = floorHeight(stage, stage.depth);
    const room = viewer.eyeHeight - least;
    return Math.min(Math.max(rise, least + MARGIN * room), viewer.eyeHeight - MARGIN * room);
  };
  const rounded = (rise: number) => {
    const step = store.getState().history.draft.exercise.units === "ft-in" ? 0.0254 : 0.01;
    return Math.round(rise / step) * step;
  };
  const at = (event: PointerEvent<SVGSVGElement>): PxPoint => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    return [event.clientX - left, event.clientY - top];
  };
  const riseAt = (px: PxPoint) => {
    const { stage, viewer } = store.getState().history.draft.exercise;
    const [, up] = fromPx(viewOfPane(views.getState().picture), px);
    return within(rounded(up), stage, viewer);
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    const { stage, viewer } = store.getState().history.draft.exercise;
    const rise = backWallRise(stage, viewer);
    const px = at(event);
    const line = rise === null ? null : toPx(viewOfPane(views.getState().picture), [0, rise]);
    const reach = event.pointerType === "touch" ? REACH_PX.touch : REACH_PX.mouse;
    event.currentTarget.setPointerCapture?.(event.pointerId);
    const wall = line !== null && Math.abs(px[1] - line[1]) <= reach && !isMarking(store.getState());
    hold.current = { pointer: event.pointerId, wall, from: px, last: px, moved: false };
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const held = hold.current;
    if (held?.pointer !== event.pointerId) return;
    const px = at(event);
    const desk = store.getState();
    if (!held.moved && Math.hypot(px[0] - held.from[0], px[1] - held.from[1]) <= STILL_PX) return;
    held.moved = true;
    if (held.wall) {
      const rise = riseAt(px);
      desk.tryOut({ edit: "set-back-wall-rise", rise });
      desk.note(sayEye());
    } else views.getState().pan("picture", px[0] - held.last[0], px[1] - held.last[1]);
    held.last = px;
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    const held = hold.current;
    hold.current = null;
    const desk = store.getState();
    if (held?.pointer !== event.pointerId) return;
    if (isMarking(desk) && !held.moved) {
      const view = viewOfPane(views.getState().picture);
      const reach = event.pointerType === "touch" ? POINT_PX.touch : POINT_PX.mouse;
      marks.press(fromPx(view, at(event)), reach / view.pxPerMetre);
    }
    if (!held.wall || !desk.trying) return;
    desk.apply({ edit: "set-back-wall-rise", rise: riseAt(at(event)) });
    desk.say(sayEye());
  };
  const sayEye = () => {
    const { trying, history } = store.getState();
    const { viewer, units } = (trying ?? history.draft).exercise;
    return `The eye stands ${printLength(viewer.distance, units, "near")} before the plaster line.`;
  };
  const letGo = () => {
    if (hold.current?.wall) store.getState().tryOut(null);
    hold.current = null;
  };
  /** One inch or centimetre of the picture, by keys. */
  const step = (up: 1 | -1, joins: boolean) => {
    const { history, apply, say } = store.getState();
    const { stage, viewer, units } = history.draft.exercise;
    const rise = history.draft.backWallRise ?? backWallRise(stage, viewer);
    if (rise === null) return;
    const by = units === "ft-in" ? 0.0254 : 0.01;
    apply({ edit: "set-back-wall-rise", rise: within(rounded(rise) + up * by, stage, viewer) }, { joins });
    say(sayEye());
  };
  return { letGo, step, svg: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: letGo } };
}
