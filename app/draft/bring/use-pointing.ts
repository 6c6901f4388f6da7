"use client";

import { type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import { constrain } from "@/app/_sheet/constrain";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { fromPx, type PointOn, type PxPoint, toPx } from "@/app/_sheet/view";
import type { BroughtPoint } from "@/lib/draft/bring/brought";
import { type Catching, catchPlace, nextPlace } from "@/lib/draft/bring/pointing/catch-place";
import { type Held, PLACES, type PlaceName } from "@/lib/draft/bring/pointing/pointing";
import { type Board, fromBoard, toBoard } from "./board";
import type { PointingStore } from "./pointing-store";

/** How near a line must be to catch what points, pixels. */
const CATCH_PX = { mouse: 9, pen: 10, touch: 16 } as const;
/** How near a place must be to be taken hold of, pixels. */
const REACH_PX = { mouse: 12, pen: 14, touch: 24 } as const;
/** A press that moves no more than this is no drag, pixels. */
const STILL_PX = 4;
/** How far an arrow goes, pixels: with Alt, alone. What is nearer than the second share of it catches. */
const STEP_PX = { fine: 1, plain: 8 } as const;
const STEP_CATCH = 0.55;
/** How far Shift and an arrow go where no line is that way, pixels. */
const JUMP_PX = 60;
const EDGE_PX = 40;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };

type Gesture = { readonly pointer: number; readonly from: PxPoint; readonly place: PlaceName | null };

/**
 * Mouse, pen, finger and keys on what is pointed at. While a place is asked for they aim, and set it where they are let go; when
 * all are set they drag a place, or push the paper.
 */
export function usePointing(pointing: PointingStore, board: Board, catching: Catching | null) {
  const { views } = useSheet();
  const gesture = useRef<(Gesture & { last: PxPoint; moved: boolean }) | null>(null);
  const [finger, setFinger] = useState(false);
  const [keyed, setKeyed] = useState(false);
  const { tell } = pointing.getState();

  const view = () => viewOfPane(views.getState().plan);
  /** A pixel of the pane as a place of the drawing. */
  const placeOf = (px: PxPoint): BroughtPoint => fromBoard(board, constrain(fromPx(view(), px), board.bounds));
  const pxOf = (at: BroughtPoint) => toPx(view(), toBoard(board, at) as PointOn<"plan">);
  const unitsOf = (px: number) => px / view().pxPerMetre / board.metres;
  const caught = (at: BroughtPoint, px: number): Held =>
    (catching && catchPlace(catching, at, unitsOf(px))) ?? { at, by: null };

  const read = (event: PointerEvent<SVGSVGElement>) => {
    setKeyed(false);
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const px: PxPoint = [event.clientX - left, event.clientY - top];
    const device = event.pointerType === "touch" || event.pointerType === "pen" ? event.pointerType : "mouse";
    return { px, device } as const;
  };
  const placeUnder = (px: PxPoint, reach: number): PlaceName | null => {
    const { places } = pointing.getState();
    const off = (name: PlaceName) => {
      const at = places[name];
      if (!at) return Number.POSITIVE_INFINITY;
      const [x, y] = pxOf(at);
      return Math.hypot(px[0] - x, px[1] - y);
    };
    return PLACES.filter((name) => off(name) <= reach).sort((a, b) => off(a) - off(b))[0] ?? null;
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture?.(event.pointerId);
    const { px, device } = read(event);
    const { asked } = pointing.getState();
    const place = asked ? null : placeUnder(px, REACH_PX[device]);
    gesture.current = { pointer: event.pointerId, from: px, place, last: px, moved: false };
    if (!asked) return;
    setFinger(device === "touch");
    tell({ do: "hold", held: caught(placeOf(px), CATCH_PX[device]) });
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const { px, device } = read(event);
    const { asked } = pointing.getState();
    const now = gesture.current;
    if (asked) {
      const hovering = device !== "touch" && event.buttons === 0;
      if (hovering || now?.pointer === event.pointerId)
        tell({ do: "hold", held: caught(placeOf(px), CATCH_PX[device]) });
      return;
    }
    if (!now || now.pointer !== event.pointerId) return;
    if (!now.moved && Math.hypot(px[0] - now.from[0], px[1] - now.from[1]) <= STILL_PX) return;
    if (now.place) {
      setFinger(device === "touch");
      tell({ do: "hold", held: caught(placeOf(px), CATCH_PX[device]) });
    } else views.getState().pan("plan", px[0] - now.last[0], px[1] - now.last[1]);
    now.last = px;
    now.moved = true;
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    const now = gesture.current;
    gesture.current = null;
    setFinger(false);
    if (!now || now.pointer !== event.pointerId) return;
    const { px, device } = read(event);
    const held = caught(placeOf(px), CATCH_PX[device]);
    if (pointing.getState().asked) {
      tell({ do: "hold", held });
      tell({ do: "set" });
      if (device === "touch") tell({ do: "hold", held: null });
    } else if (now.place && now.moved) tell({ do: "move", place: now.place, to: held.at });
  };
  /** The gesture was something else: nothing is set. */
  const letGo = () => {
    gesture.current = null;
    setFinger(false);
    tell({ do: "hold", held: null });
  };
  const onPointerLeave = (event: PointerEvent<SVGSVGElement>) => {
    if (event.pointerType === "mouse" && event.buttons === 0) tell({ do: "hold", held: null });
  };

  const keepInSight = (at: BroughtPoint) => {
    const { size } = views.getState().plan;
    const [x, y] = pxOf(at);
    const past = (value: number, most: number) =>
      value < EDGE_PX ? EDGE_PX - value : value > most - EDGE_PX ? most - EDGE_PX - value : 0;
    const [right, down] = [past(x, size.width), past(y, size.height)];
    if (right !== 0 || down !== 0) views.getState().pan("plan", right, down);
  };
  const step = (way: readonly [number, number], size: "fine" | "plain" | "jump") => {
    const { held, places, asked } = pointing.getState();
    if (!asked) return;
    const from = held?.at ?? places[asked] ?? board.middle;
    const jump = size === "jump" && catching ? nextPlace(catching, from, way, JUMP_REACH_M / board.metres) : null;
    const by = unitsOf(size === "jump" ? JUMP_PX : STEP_PX[size]);
    const [x, y] = constrain(toBoard(board, [from[0] + way[0] * by, from[1] + way[1] * by]), board.bounds);
    const free = fromBoard(board, [x, y]);
    const next = held === null ? { at: from, by: null } : size === "fine" ? { at: free, by: null } : jump;
    const after = next ?? caught(free, STEP_PX.plain * STEP_CATCH);
    tell({ do: "hold", held: after });
    setKeyed(true);
    keepInSight(after.at);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const zoom = ZOOM_KEYS[event.key];
    const way = ARROWS[event.key];
    const undoes = event.key.toLowerCase() === "z" && (event.ctrlKey || event.metaKey);
    if (event.key === "Backspace" || undoes) {
      event.preventDefault();
      tell({ do: "take back" });
    } else if (event.ctrlKey || event.metaKey) return;
    else if (zoom) views.getState().zoom("plan", zoom, middlePx());
    else if (event.key === "0") views.getState().whole("plan");
    else if (way) {
      event.preventDefault();
      step(way, event.shiftKey ? "jump" : event.altKey ? "fine" : "plain");
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      if (!event.repeat) tell({ do: "set" });
    } else if (event.key === "Escape") tell({ do: "hold", held: null });
  };
  /** Keys zoom about what is held, so that it stays in sight. */
  const middlePx = (): PxPoint | undefined => {
    const { held } = pointing.getState();
    return held ? pxOf(held.at) : undefined;
  };

  return {
    finger,
    keyed,
    letGo,
    onKeyDown,
    svg: { onPointerDown, onPointerMove, onPointerUp, onPointerLeave, onPointerCancel: letGo },
  };
}

/** A jump goes no farther than across the whole board, metres of it. */
const JUMP_REACH_M = 12;
