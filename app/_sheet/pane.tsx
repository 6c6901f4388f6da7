"use client";

import { type ReactNode, type SVGProps, useLayoutEffect, useRef } from "react";
import { viewOfPane } from "./pane-state";
import { useSheet } from "./sheet-context";
import { useZoomGestures } from "./use-zoom-gestures";
import { type Plane, paperMatrix, pxPerMm } from "./view";

type Props = Omit<SVGProps<SVGSVGElement>, "ref"> & {
  readonly plane: Plane;
  /** The drawing, in paper millimetres. */
  readonly children: ReactNode;
  readonly drawingId: string;
  /** What moves, in paper millimetres: a sheet of its own over the drawing, so that the drawing is not painted again. */
  readonly live?: ReactNode;
  /** Laid over the drawing, in pixels. */
  readonly over?: ReactNode;
  /** A second finger came down: what the first had begun is to be undone. */
  readonly onSecondFinger?: (() => void) | undefined;
};

/** A window on one drawing of the sheet. Zoom and pan move its group without rendering anything. */
export function Pane({ plane, children, drawingId, live, over, onSecondFinger, ...svgProps }: Props) {
  const { views, scaleRatio } = useSheet();
  const frame = useRef<HTMLDivElement>(null);
  const group = useRef<SVGGElement>(null);
  const liveGroup = useRef<SVGGElement>(null);
  useZoomGestures(plane, frame, onSecondFinger);

  useLayoutEffect(() => {
    const box = frame.current;
    if (!box) return;
    const measure = () => views.getState().resize(plane, { width: box.clientWidth, height: box.clientHeight });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    return () => watch.disconnect();
  }, [plane, views]);

  useLayoutEffect(() => {
    const show = () => {
      const pane = views.getState()[plane];
      const view = viewOfPane(pane);
      const mm = pxPerMm(view, scaleRatio);
      for (const each of [group, liveGroup]) each.current?.setAttribute("transform", paperMatrix(view, scaleRatio));
      frame.current?.style.setProperty("--unit", String(1 / mm));
      frame.current?.style.setProperty("--whole-mm", String(mm / pane.factor));
    };
    show();
    return views.subscribe((now, before) => {
      if (now[plane] !== before[plane]) show();
    });
  }, [plane, views, scaleRatio]);

  return (
    <div ref={frame} className="pane" data-plane={plane}>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the place around it names the drawing */}
      <svg {...svgProps} className="pane-drawing">
        <g ref={group} id={drawingId} data-ratio={scaleRatio}>
          {children}
        </g>
      </svg>
      <svg aria-hidden="true" className="pane-drawing pane-live">
        <g ref={liveGroup} id={`${drawingId}-live`}>
          {live}
        </g>
      </svg>
      {over}
    </div>
  );
}
