"use client";

import { type PointerEvent, useRef } from "react";
import { viewOfPane } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { useMark } from "@/app/_sheet/use-mark";
import { type Bounds, type Plane, type PointOn, toPx, type View } from "@/app/_sheet/view";

type Place = readonly [number, number];

export type Handles = {
  readonly plane: Plane;
  readonly bounds: Bounds;
  /** Where each handle stands; one that is nowhere yet is left out. Read when needed. */
  readonly places: () => ReadonlyMap<string, Place>;
  readonly selected: () => string | null;
  readonly select: (name: string) => void;
  readonly begin: () => void;
  readonly move: (at: Place) => void;
  readonly rest: () => void;
  readonly undo: () => void;
  readonly settle: () => void;
};

/** A tap may tremble by this much. */
const TREMBLE_PX = 5;
/** A press so near to a handle takes it, pixels. */
const REACH_PX: Readonly<Record<string, number>> = { mouse: 14, pen: 18, touch: 28 };

/**
 * Several handles worked like one mark: a press takes the nearest, which the keys then move as well. A press beside them all
 * brings the one on hand there, as on the drawing board; with none on hand it does nothing.
 */
export function useHandles(handles: Handles) {
  const { views } = useSheet();
  const { plane, bounds, places, selected, begin, move, rest, undo, settle } = handles;
  const at = () => {
    const name = selected();
    return name === null ? null : (places().get(name) ?? null);
  };
  const mark = useMark<Plane>(
    {
      plane,
      bounds,
      mark: at as () => PointOn<Plane> | null,
      start: middleOf(bounds) as PointOn<Plane>,
      begin,
      move: (to) => to && move([to[0], to[1]]),
      rest,
      commit: settle,
      undo,
    },
    "plain",
  );

  /** Where the press came down that chose another handle. */
  const chosen = useRef<Place | null>(null);
  const nearest = (event: PointerEvent<SVGSVGElement>): string | null => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const view = viewOfPane(views.getState()[plane]) as View<Plane>;
    const reach = REACH_PX[event.pointerType] ?? 28;
    let best: { readonly name: string; readonly far: number } | null = null;
    for (const [name, place] of places()) {
      const [x, y] = toPx(view, place as PointOn<Plane>);
      // Of two as near, the one on hand.
      const far = Math.hypot(event.clientX - left - x, event.clientY - top - y) - (name === selected() ? 4 : 0);
      if (far <= reach && (!best || far < best.far)) best = { name, far };
    }
    return best?.name ?? null;
  };
  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    // A mark that was picked up follows the pointer: the press puts it down, wherever.
    const name = mark.pointing?.held ? null : nearest(event);
    const isOther = name !== null && name !== selected();
    chosen.current = isOther ? [event.clientX, event.clientY] : null;
    if (isOther) handles.select(name);
    if (selected() !== null) mark.svg.onPointerDown(event);
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    const from = chosen.current;
    chosen.current = null;
    mark.svg.onPointerUp(event);
    // A tap that chose another handle has not picked it up as well.
    if (from && Math.hypot(event.clientX - from[0], event.clientY - from[1]) <= TREMBLE_PX) mark.letGo();
  };
  return { ...mark, svg: { ...mark.svg, onPointerDown, onPointerUp } };
}

function middleOf({ left, right, bottom, top }: Bounds): Place {
  return [(left + right) / 2, (bottom + top) / 2];
}
