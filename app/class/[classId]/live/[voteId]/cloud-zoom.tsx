"use client";

import { useEffect } from "react";
import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Plane, type PointOn, toPx, type View } from "@/app/_sheet/view";
import type { CloudRoom } from "./cloud-room";

/** How much of the pane's smaller side the marks take when they are shown, from the middle out. */
const ROOM_SHARE = 0.36;
/** No closer than this: the room must see where on the stage it is. */
const MOST_CLOSER = 4;

type Props = {
  readonly plane: Plane;
  readonly room: CloudRoom | null;
  /** Which marks are shown: with every other ones the drawing comes closer to them anew. */
  readonly shown: string;
};

/** Brings the cloud closer, by itself when it is shown: marks that a room calls near lie on each other in the whole drawing. */
export function CloudZoom({ plane, room, shown }: Props) {
  const { views } = useSheet();
  const pictureSize = useStore(views, (state) => state.picture.size);
  const planSize = useStore(views, (state) => state.plan.size);
  const { width, height } = plane === "picture" ? pictureSize : planSize;
  // biome-ignore lint/correctness/useExhaustiveDependencies: when other marks are shown, and when either pane is laid out anew
  useEffect(() => {
    if (!room || width === 0 || height === 0) return;
    const sheet = views.getState();
    sheet.whole(plane);
    const view = viewOfPane(views.getState()[plane]) as View;
    const [right, down] = toPx(view, room.centre as PointOn<Plane>);
    const closer = (ROOM_SHARE * Math.min(width, height)) / (room.radius * view.pxPerMetre);
    if (!(closer > 1)) return;
    sheet.zoom(plane, Math.min(closer, MOST_CLOSER), [right, down]);
    sheet.pan(plane, width / 2 - right, height / 2 - down);
  }, [views, plane, shown, pictureSize, planSize]);
  const closer = () => {
    const sheet = views.getState();
    const view = viewOfPane(sheet[plane]) as View;
    sheet.zoom(plane, ZOOM_STEP ** 2, room ? toPx(view, room.centre as PointOn<Plane>) : undefined);
  };
  return (
    <div className="front-presses">
      <Press weight="small" onClick={closer}>
        Closer
      </Press>
      <Press weight="small" onClick={() => views.getState().whole(plane)}>
        Whole
      </Press>
    </div>
  );
}
