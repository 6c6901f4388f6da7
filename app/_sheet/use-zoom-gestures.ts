"use client";

import { type RefObject, useEffect, useRef } from "react";
import { useSheet } from "./sheet-context";
import type { Plane, PxPoint } from "./view";

/** How much one notch of a wheel (about 100 pixels of it) magnifies. */
const WHEEL_PER_PX = 0.0022;
const MIDDLE_BUTTON = 4;

/** Wheel and trackpad, two fingers, and the middle button zoom and pan one pane. */
export function useZoomGestures(
  plane: Plane,
  frame: RefObject<HTMLElement | null>,
  onSecondFinger?: (() => void) | undefined,
) {
  const { views } = useSheet();
  const second = useRef(onSecondFinger);
  second.current = onSecondFinger;

  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    const fingers = new Map<number, PxPoint>();

    const place = (event: { clientX: number; clientY: number }): PxPoint => {
      const { left, top } = box.getBoundingClientRect();
      return [event.clientX - left, event.clientY - top];
    };
    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 33 : 1;
      views.getState().zoom(plane, Math.exp(-event.deltaY * lines * WHEEL_PER_PX), place(event));
    };
    const down = (event: PointerEvent) => {
      if (event.pointerType !== "touch") return;
      fingers.set(event.pointerId, place(event));
      if (fingers.size === 2) second.current?.();
    };
    const move = (event: PointerEvent) => {
      const here = place(event);
      if (event.pointerType === "mouse" && (event.buttons & MIDDLE_BUTTON) !== 0) {
        views.getState().pan(plane, event.movementX, event.movementY);
        return;
      }
      const was = fingers.get(event.pointerId);
      if (!was) return;
      fingers.set(event.pointerId, here);
      const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
      if (fingers.size !== 2 || !other) return;
      pinch(was, here, other);
    };
    const pinch = (was: PxPoint, here: PxPoint, other: PxPoint) => {
      const spread = Math.hypot(here[0] - other[0], here[1] - other[1]);
      const spreadWas = Math.hypot(was[0] - other[0], was[1] - other[1]);
      views.getState().pan(plane, (here[0] - was[0]) / 2, (here[1] - was[1]) / 2);
      if (spreadWas > 1) {
        const between: PxPoint = [(here[0] + other[0]) / 2, (here[1] + other[1]) / 2];
        views.getState().zoom(plane, spread / spreadWas, between);
      }
    };
    const up = (event: PointerEvent) => fingers.delete(event.pointerId);

    box.addEventListener("wheel", wheel, { passive: false });
    box.addEventListener("pointerdown", down);
    box.addEventListener("pointermove", move);
    for (const end of ["pointerup", "pointercancel"] as const) window.addEventListener(end, up);
    return () => {
      box.removeEventListener("wheel", wheel);
      box.removeEventListener("pointerdown", down);
      box.removeEventListener("pointermove", move);
      for (const end of ["pointerup", "pointercancel"] as const) window.removeEventListener(end, up);
    };
  }, [plane, frame, views]);
}
