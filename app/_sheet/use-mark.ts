"use client";

import { type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import type { PointingDevice } from "@/lib/exercise/marks";
import { type Compass, constrain, NUDGE_STEPS_MM, type NudgeStep, nudge } from "./constrain";
import { viewOfPane } from "./pane-state";
import { FREE, type Held, type Hold, move, press, release } from "./pick-up";
import { useSheet } from "./sheet-context";
import { type Bounds, type Plane, type PointOn, type PxPoint, toPx, type View } from "./view";

export type MarkMoves<P extends Plane> = {
  readonly plane: P;
  readonly bounds: Bounds;
  /** Where it stands now, read when needed, so that moving it renders nothing here. */
  readonly mark: () => PointOn<P> | null;
  /** Where the keys start it from when it is not on the sheet. */
  readonly start: PointOn<P>;
  readonly begin: () => void;
  readonly move: (at: PointOn<P> | null, device: PointingDevice) => void;
  readonly rest: () => void;
  readonly commit: () => void;
  readonly undo: () => void;
};

const ARROWS: Readonly<Record<string, Compass>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

/** Room kept between a nudged mark and the edge of its pane. */
const EDGE_PX = 40;

/** One hook for pointer, touch, pen and keys on a mark; `constrain` has the last word for all of them. */
export function useMark<P extends Plane>(moves: MarkMoves<P>, step: NudgeStep) {
  const { views, scaleRatio } = useSheet();
  const hold = useRef<Hold>(FREE);
  const corner = useRef<PxPoint>([0, 0]);
  const pointer = useRef<number | null>(null);
  const [pointing, setPointing] = useState<{ device: PointingDevice; held: boolean; down: boolean } | null>(null);

  const view = () => viewOfPane(views.getState()[moves.plane]) as View<P>;
  const place = (event: PointerEvent): PxPoint => [
    event.clientX - corner.current[0],
    event.clientY - corner.current[1],
  ];
  const put = (held: Held<P>, device: PointingDevice) => {
    hold.current = held.hold;
    if (held.at) moves.move(constrain(held.at, moves.bounds) as PointOn<P>, device);
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || pointer.current !== null || !event.isPrimary) return;
    const { left, top } = event.currentTarget.getBoundingClientRect();
    corner.current = [left, top];
    pointer.current = event.pointerId;
    event.currentTarget.setPointerCapture?.(event.pointerId);
    const device = deviceOf(event);
    if (hold.current.kind !== "held") moves.begin();
    put(press(hold.current, view(), place(event), moves.mark(), device), device);
    setPointing({ device, held: false, down: true });
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const hovering = hold.current.kind === "held" && pointer.current === null && event.pointerType !== "touch";
    if (hovering) {
      const { left, top } = event.currentTarget.getBoundingClientRect();
      corner.current = [left, top];
    }
    if (!hovering && pointer.current !== event.pointerId) return;
    const device = deviceOf(event);
    put(move(hold.current, view(), place(event)), device);
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    if (pointer.current !== event.pointerId) return;
    pointer.current = null;
    hold.current = release(hold.current);
    setPointing({ device: deviceOf(event), held: hold.current.kind === "held", down: false });
    moves.rest();
  };
  /** The gesture was something else: the mark goes back to where it was. */
  const letGo = () => {
    if (pointer.current === null && hold.current.kind === "free") return;
    pointer.current = null;
    hold.current = FREE;
    setPointing(null);
    moves.undo();
  };

  const step1 = (toward: Compass, size: NudgeStep) => {
    moves.begin();
    const from = moves.mark();
    const at = from ? nudge(from, toward, NUDGE_STEPS_MM[size], scaleRatio, moves.bounds) : moves.start;
    moves.move(at as PointOn<P>, "keys");
    hold.current = FREE;
    setPointing({ device: "keys", held: false, down: false });
    moves.rest();
    keepInSight(at as PointOn<P>);
  };
  const keepInSight = (at: PointOn<P>) => {
    const { size } = views.getState()[moves.plane];
    const [x, y] = toPx(view(), at);
    const right = x < EDGE_PX ? EDGE_PX - x : x > size.width - EDGE_PX ? size.width - EDGE_PX - x : 0;
    const down = y < EDGE_PX ? EDGE_PX - y : y > size.height - EDGE_PX ? size.height - EDGE_PX - y : 0;
    if (right !== 0 || down !== 0) views.getState().pan(moves.plane, right, down);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const toward = ARROWS[event.key];
    if (toward) {
      event.preventDefault();
      step1(toward, event.altKey ? "fine" : event.shiftKey ? "coarse" : step);
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      if (event.repeat) return;
      if (hold.current.kind === "held") {
        hold.current = FREE;
        setPointing(null);
        moves.rest();
      } else moves.commit();
    } else if (event.key === "Escape") letGo();
    else if (event.key === "Backspace" || (event.key.toLowerCase() === "z" && (event.ctrlKey || event.metaKey))) {
      event.preventDefault();
      moves.undo();
    }
  };

  return {
    pointing,
    nudge: step1,
    letGo,
    svg: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: letGo },
    onKeyDown,
  };
}

function deviceOf(event: PointerEvent): PointingDevice {
  return event.pointerType === "touch" || event.pointerType === "pen" ? event.pointerType : "mouse";
}
