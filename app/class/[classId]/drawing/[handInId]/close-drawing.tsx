"use client";

import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { DrawList } from "@/app/_sheet/draw-list";
import { Pane } from "@/app/_sheet/pane";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { planeOf } from "@/app/_sheet/plane-of";
import { ResultMarks, useResultLines } from "@/app/_sheet/result-drawing";
import type { SetRoom } from "@/app/_sheet/set-room";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import { type Plane, type PointOn, toPx, type View } from "@/app/_sheet/view";
import type { Grade } from "@/lib/grading/grade";
import type { useRedPencil } from "./red-pencil";

/** How far an arrow key moves the drawing, pixels. */
const KEY_STEP_PX = 60;
const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };
const ARROWS: Readonly<Record<string, readonly [right: number, down: number]>> = {
  ArrowLeft: [KEY_STEP_PX, 0],
  ArrowRight: [-KEY_STEP_PX, 0],
  ArrowUp: [0, KEY_STEP_PX],
  ArrowDown: [0, -KEY_STEP_PX],
};

type Props = {
  readonly paper: SetRoom;
  readonly grade: Grade;
  readonly label: string;
  /** What stays where it is when the drawing comes closer; null for its middle. */
  readonly about: readonly [number, number] | null;
  /** What draws on it; null where it is only looked at, and a finger or a mouse moves it. */
  readonly pencil: Pick<ReturnType<typeof useRedPencil>, "handlers" | "drop"> | null;
  /** Drawn over all of it, in millimetres of its paper. */
  readonly children: ReactNode;
};

/** A result to look at from close by: two fingers, the wheel, keys or presses bring it closer and move it. */
export function CloseDrawing({ paper, grade, label, about, pencil, children }: Props) {
  const plane = planeOf(paper.exercise);
  const { list, bounds, scaleRatio } = useResultLines({ paper, grade });
  const [views] = useState(() => createSheetViews(bounds, bounds));
  const sheet = useMemo(() => ({ views, scaleRatio }), [views, scaleRatio]);
  const close = useStore(views, (state) => state[plane].factor > 1);
  const frame = useRef<HTMLDivElement>(null);
  const hand = useHand((right, down) => views.getState().pan(plane, right, down));
  const zoom = (by: number) => {
    const view = viewOfPane(views.getState()[plane]) as View;
    views.getState().zoom(plane, by, about ? toPx(view, about as PointOn<Plane>) : undefined);
  };
  const whole = () => views.getState().whole(plane);
  const onKeyDown = (event: KeyboardEvent) => {
    const [by, arrow] = [ZOOM_KEYS[event.key], ARROWS[event.key]];
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (by) zoom(by);
    else if (event.key === "0") whole();
    else if (arrow && close) views.getState().pan(plane, ...arrow);
    else return;
    event.preventDefault();
  };
  useEffect(() => {
    const box = frame.current;
    // Over the whole drawing the wheel moves the page, as everywhere on it; it takes a pinch or a press to go closer.
    const leaveToPage = (event: WheelEvent) => {
      if (!event.ctrlKey && views.getState()[plane].factor === 1) event.stopPropagation();
    };
    box?.addEventListener("wheel", leaveToPage, { capture: true });
    return () => box?.removeEventListener("wheel", leaveToPage, { capture: true });
  }, [views, plane]);
  const ratio = (bounds.right - bounds.left) / (bounds.top - bounds.bottom);
  return (
    <SheetContext value={sheet}>
      <div
        ref={frame}
        className="work-drawing"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
        tabIndex={0}
        aria-label="The drawing. Plus brings it closer, minus takes it away, the arrows move it, 0 shows it whole."
        data-pencil={pencil !== null || undefined}
        data-close={close || undefined}
        style={{ aspectRatio: ratio }}
        onKeyDown={onKeyDown}
      >
        <Pane
          plane={plane}
          drawingId="work"
          role="img"
          aria-label={label}
          live={children}
          {...(pencil ? pencil.handlers : hand)}
          onSecondFinger={pencil?.drop}
        >
          <DrawList list={list} scaleRatio={scaleRatio} />
          <ResultMarks grade={grade} scaleRatio={scaleRatio} />
        </Pane>
      </div>
      <div className="work-zoom">
        <Press weight="small" onClick={() => zoom(ZOOM_STEP)}>
          Closer
        </Press>
        <Press weight="small" onClick={() => zoom(1 / ZOOM_STEP)} aria-disabled={!close}>
          Farther
        </Press>
        <Press weight="small" onClick={whole} aria-disabled={!close}>
          Whole
        </Press>
        <p className="class-quiet">
          {pencil ? "One finger draws, two bring it closer and move it." : "Two fingers bring it closer and move it."}
        </p>
      </div>
    </SheetContext>
  );
}

/** One finger, or the mouse held down, moves the drawing. Two fingers are the pane's own affair. */
function useHand(move: (right: number, down: number) => void) {
  const held = useRef(new Map<number, readonly [number, number]>());
  const end = (event: PointerEvent) => held.current.delete(event.pointerId);
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button === 0) held.current.set(event.pointerId, [event.clientX, event.clientY]);
    },
    onPointerMove: (event: PointerEvent) => {
      const was = held.current.get(event.pointerId);
      if (!was) return;
      held.current.set(event.pointerId, [event.clientX, event.clientY]);
      if (held.current.size === 1) move(event.clientX - was[0], event.clientY - was[1]);
    },
    onPointerUp: end,
    onPointerCancel: end,
    onPointerLeave: end,
  };
}
