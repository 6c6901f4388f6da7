"use client";

import { type KeyboardEvent, type ReactNode, type SVGProps, useMemo, useState } from "react";
import { Pane } from "@/app/_sheet/pane";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { SheetContext, useSheet } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import { type Bounds, type Plane, toPaper } from "@/app/_sheet/view";
import { useZoom } from "@/app/_sheet/zoom-presses";
import "./photo.css";

type Place = readonly [number, number];

/** A drawing board for one photograph: zoom and pan are its own. */
export function PhotoSheet({
  bounds,
  scaleRatio,
  children,
}: {
  readonly bounds: Bounds;
  readonly scaleRatio: number;
  readonly children: ReactNode;
}) {
  const [views] = useState(() => createSheetViews(bounds, bounds));
  const sheet = useMemo(() => ({ views, scaleRatio }), [views, scaleRatio]);
  return <SheetContext value={sheet}>{children}</SheetContext>;
}

export const PHOTO_ID = "photo-drawing";

type Props = Omit<SVGProps<SVGSVGElement>, "ref" | "onKeyDown"> & {
  readonly plane: Plane;
  readonly label: string;
  readonly address: string;
  /** What the photograph shows, metres. */
  readonly bounds: Bounds;
  readonly keys?: (event: KeyboardEvent) => void;
  /** What zooming keeps in its place. */
  readonly about: () => Place | null;
  readonly children?: ReactNode;
  readonly live?: ReactNode;
  readonly over?: ReactNode;
  readonly onSecondFinger?: () => void;
};

const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };

/** A photograph as one drawing of the board, with what is drawn over it. Keys zoom it, and move what they are given to. */
export function PhotoPane({ plane, label, address, bounds, keys, about, children, ...pane }: Props) {
  const { scaleRatio } = useSheet();
  const zoom = useZoom(plane, about);
  const [left, top] = toPaper([bounds.left, bounds.top], scaleRatio);
  const [right, bottom] = toPaper([bounds.right, bounds.bottom], scaleRatio);
  const onKeyDown = (event: KeyboardEvent) => {
    const times = ZOOM_KEYS[event.key];
    if (times) zoom.by(times);
    else if (event.key === "0") zoom.all();
    else keys?.(event);
  };
  return (
    <div
      className="photo-keys"
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
      tabIndex={0}
      aria-label={label}
      onKeyDown={onKeyDown}
    >
      <Pane plane={plane} drawingId={PHOTO_ID} aria-hidden="true" {...pane}>
        <image
          href={address}
          x={left}
          y={top}
          width={right - left}
          height={bottom - top}
          preserveAspectRatio="none"
          className="photo-image"
        />
        {children}
      </Pane>
    </div>
  );
}
