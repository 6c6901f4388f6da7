"use client";

import { type PointerEvent, useRef } from "react";
import { viewOfPane } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { fromPx, type Plane, type PxPoint, type View } from "@/app/_sheet/view";
import { useRoom } from "./demonstration-context";
import type { Place } from "./demonstration-store";
import { guessLabel } from "./guess-label";

/** A tap moves no further than this, pixels. */
const TAP_PX = 10;

/** What the pointer does on a drawing: it draws with the pencil, or sets down a guess that was called out. */
export function usePanePointer(plane: Plane) {
  const { views } = useSheet();
  const room = useRoom();
  const pointer = useRef<number | null>(null);
  const pressed = useRef<PxPoint>([0, 0]);
  const drawing = useRef(false);

  const pxOf = (event: PointerEvent<SVGSVGElement>): PxPoint => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    return [event.clientX - left, event.clientY - top];
  };
  const placeOf = (px: PxPoint): Place => {
    const [across, up] = fromPx(viewOfPane(views.getState()[plane]) as View, px);
    return [across, up];
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || !event.isPrimary || pointer.current !== null) return;
    const { pencil, begin } = room.store.getState();
    pointer.current = event.pointerId;
    pressed.current = pxOf(event);
    drawing.current = pencil !== null;
    if (!drawing.current) return;
    event.currentTarget.setPointerCapture?.(event.pointerId);
    begin(plane, placeOf(pressed.current));
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    if (pointer.current === event.pointerId && drawing.current) room.store.getState().draw(placeOf(pxOf(event)));
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    if (pointer.current !== event.pointerId) return;
    pointer.current = null;
    const px = pxOf(event);
    const tapped = Math.hypot(px[0] - pressed.current[0], px[1] - pressed.current[1]) <= TAP_PX;
    const { trying, guess } = room.store.getState();
    if (!drawing.current && tapped && trying === "waiting" && plane === room.plane) guess(placeOf(px), guessLabel());
    drawing.current = false;
  };
  /** Two fingers zoom: what the first had begun is undone. */
  const letGo = () => {
    if (drawing.current) room.store.getState().rubOut("last");
    pointer.current = null;
    drawing.current = false;
  };
  return { svg: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: letGo }, letGo };
}
