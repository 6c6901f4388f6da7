"use client";

import { type PointerEvent, useRef, useState } from "react";
import { createStore, type StoreApi } from "zustand/vanilla";
import { CATCH_PX, type CatchPoint, catchPoint } from "./catch-points";
import { viewOfPane } from "./pane-state";
import { useSheet } from "./sheet-context";
import { fromPx, type Plane, type PxPoint, type View } from "./view";

type End = CatchPoint & { readonly free: boolean };

/** A line being laid: its first end, and where the other would go now. */
export type Laying = { readonly from: End | null; readonly to: End | null };

export type StraightedgeMoves = {
  readonly plane: Plane;
  readonly points: readonly CatchPoint[];
  readonly draw: (from: CatchPoint, to: CatchPoint) => void;
};

const FREE_END = "a free end";
/** A press that moves no further than this is a tap: the other end comes with the next tap. */
const TAP_PX = 6;
/** Ends closer than this make no line, metres. */
const NO_LENGTH_M = 1e-6;

/** Lays the straightedge with a drag, or with two taps. What is being laid lives in a store of its own. */
export function useStraightedge({ plane, points, draw }: StraightedgeMoves) {
  const { views } = useSheet();
  const [laying] = useState<StoreApi<Laying>>(() => createStore<Laying>(() => ({ from: null, to: null })));
  const down = useRef<PxPoint | null>(null);

  const endAt = (event: PointerEvent<SVGSVGElement>): [End, PxPoint] => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const px: PxPoint = [event.clientX - left, event.clientY - top];
    const view = viewOfPane(views.getState()[plane]) as View;
    const reach = CATCH_PX[event.pointerType as keyof typeof CATCH_PX] ?? CATCH_PX.touch;
    const caught = catchPoint(px, view, points, reach);
    return [caught ? { ...caught, free: false } : { at: fromPx(view, px), name: FREE_END, free: true }, px];
  };
  const finish = (to: End) => {
    const { from } = laying.getState();
    laying.setState({ from: null, to: null });
    if (from && Math.hypot(to.at[0] - from.at[0], to.at[1] - from.at[1]) > NO_LENGTH_M) draw(from, to);
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture?.(event.pointerId);
    const [end, px] = endAt(event);
    down.current = px;
    if (laying.getState().from) laying.setState({ to: end });
    else laying.setState({ from: end, to: null });
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    if (event.pointerType === "touch" && !down.current) return;
    laying.setState({ to: endAt(event)[0] });
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    const start = down.current;
    if (!start) return;
    down.current = null;
    const [end, px] = endAt(event);
    const dragged = Math.hypot(px[0] - start[0], px[1] - start[1]) > TAP_PX;
    const second = laying.getState().to !== null && laying.getState().from !== null;
    if (dragged || (second && event.type === "pointerup" && isOther(end))) finish(end);
  };
  const isOther = (end: End) => {
    const { from } = laying.getState();
    return from !== null && Math.hypot(end.at[0] - from.at[0], end.at[1] - from.at[1]) > NO_LENGTH_M;
  };
  const letGo = () => {
    down.current = null;
    laying.setState({ from: null, to: null });
  };
  return { laying, letGo, svg: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: letGo } };
}
