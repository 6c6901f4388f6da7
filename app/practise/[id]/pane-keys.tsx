"use client";

import type { KeyboardEvent, ReactNode } from "react";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Plane } from "@/app/_sheet/view";
import { zoomAboutMark } from "./zoom-about-mark";

type Props = {
  readonly plane: Plane;
  readonly label: string;
  /** Set while keys place the mark here. */
  readonly keys: ((event: KeyboardEvent) => void) | null;
  /** What zooming keeps in its place. */
  readonly about: () => Place | null;
  readonly children: ReactNode;
};

const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };

/** The place of a drawing that is worked by keys: they zoom it, and move the mark where it is placed there. */
export function PaneKeys({ plane, label, keys, about, children }: Props) {
  const { views } = useSheet();
  const onKeyDown = (event: KeyboardEvent) => {
    const zoom = ZOOM_KEYS[event.key];
    if (zoom) zoomAboutMark(views, plane, about(), zoom);
    else if (event.key === "0") views.getState().whole(plane);
    else keys?.(event);
  };
  return (
    <div
      className={plane === "picture" ? "picture-keys" : "plan-keys"}
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
      tabIndex={0}
      aria-label={label}
      onKeyDown={onKeyDown}
    >
      {children}
    </div>
  );
}
