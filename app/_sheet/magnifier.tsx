"use client";

import { type ReactNode, useLayoutEffect, useRef } from "react";
import { GLASS_PX, magnify, POWER } from "./magnify";
import { viewOfPane } from "./pane-state";
import { useSheet } from "./sheet-context";
import { type Plane, type PointOn, pxPerMm, toPx } from "./view";

type Props = {
  readonly plane: Plane;
  /** The group it looks at. */
  readonly drawingId: string;
  /** Reads where the mark stands. */
  readonly mark: () => readonly [number, number] | null;
  /** Calls back whenever the mark moves. */
  readonly watch: (moved: () => void) => () => void;
  /** Laid over the glass. */
  readonly children?: ReactNode;
};

/** Shows what the finger hides: the drawing round the mark, larger, in the corner away from it. */
export function Magnifier({ plane, drawingId, mark, watch, children }: Props) {
  const { views, scaleRatio } = useSheet();
  const glass = useRef<HTMLDivElement>(null);
  const group = useRef<SVGGElement>(null);

  useLayoutEffect(() => {
    const look = () => {
      const at = mark();
      const box = glass.current;
      if (!box) return;
      box.style.display = at ? "" : "none";
      if (!at) return;
      const pane = views.getState()[plane];
      const view = viewOfPane(pane);
      const [x] = toPx(view, at as PointOn<Plane>);
      // The group inside has its own view already; the glass brings that to its own.
      const { origin } = magnify(view, at).view;
      const [right, down] = [origin[0] - POWER * view.origin[0], origin[1] - POWER * view.origin[1]];
      group.current?.setAttribute("transform", `translate(${right} ${down}) scale(${POWER})`);
      box.style.setProperty("--unit", String(1.4 / (pxPerMm(view, scaleRatio) * POWER)));
      box.dataset.corner = x > pane.size.width / 2 ? "left" : "right";
    };
    look();
    const stops = [watch(look), views.subscribe(look)];
    return () => {
      for (const stop of stops) stop();
    };
  }, [plane, mark, watch, views, scaleRatio]);

  return (
    <div ref={glass} className="magnifier" aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: hidden from readers; it repeats the drawing */}
      <svg width={GLASS_PX} height={GLASS_PX}>
        <g ref={group}>
          <use href={`#${drawingId}`} />
          <use href={`#${drawingId}-live`} />
        </g>
      </svg>
      {children}
    </div>
  );
}
