"use client";

import { memo } from "react";
import { useStore } from "zustand";
import type { StoreApi } from "zustand/vanilla";
import { runOn } from "./catch-points";
import type { ConstructionLine } from "./construction-line";
import { CaughtMark, PlainLine } from "./end-marks";
import type { Laying } from "./use-straightedge";
import type { Bounds } from "./view";

/** Lines run this many times the drawing's size past its edges, so that they reach the pane's. */
const PAST = 1;

function widen({ left, right, bottom, top }: Bounds): Bounds {
  const [across, up] = [(right - left) * PAST, (top - bottom) * PAST];
  return { left: left - across, right: right + across, bottom: bottom - up, top: top + up };
}

type LinesProps = {
  readonly lines: readonly ConstructionLine[];
  readonly bounds: Bounds;
  readonly scaleRatio: number;
};

/** The construction lines of one drawing. */
export const BlueLines = memo(function BlueLines({ lines, bounds, scaleRatio }: LinesProps) {
  return lines.map((line) => {
    const ends = runOn(line.from, line.to, widen(bounds));
    return (
      ends && (
        <g key={line.id} data-blue={line.id}>
          <PlainLine from={ends[0]} to={ends[1]} scaleRatio={scaleRatio} className="blue-line" />
        </g>
      )
    );
  });
});

/** The straightedge as it is being laid: caught points are squared, and the line is seen before it is drawn. */
export function LayingEdge({
  laying,
  bounds,
  scaleRatio,
}: {
  readonly laying: StoreApi<Laying>;
  readonly bounds: Bounds;
  readonly scaleRatio: number;
}) {
  const { from, to } = useStore(laying);
  const ends = from && to ? runOn(from.at, to.at, widen(bounds)) : null;
  return (
    <g>
      {ends && <PlainLine from={ends[0]} to={ends[1]} scaleRatio={scaleRatio} className="blue-line laying" />}
      {from && <CaughtMark at={from.at} scaleRatio={scaleRatio} />}
      {to && !to.free && <CaughtMark at={to.at} scaleRatio={scaleRatio} />}
    </g>
  );
}
