"use client";

import { memo } from "react";
import type { Step } from "@/lib/construction/step";
import { runOn } from "./catch-points";
import { AtPoint, PlainLine } from "./end-marks";
import type { Bounds } from "./view";

type Props = {
  readonly steps: readonly Step[];
  /** How many of them are drawn. */
  readonly shown: number;
  /** The last crossing is left to be found: a hint draws the lines and not the place. */
  readonly openEnded?: boolean;
  readonly bounds: Bounds;
  readonly scaleRatio: number;
};

/** A ruler construction as far as it has been played: exact blue lines, the step on hand drawn strongest. */
export const ConstructionDrawing = memo(function ConstructionDrawing(props: Props) {
  const { steps, shown, openEnded = false } = props;
  return (
    <g data-construction={shown}>
      {steps.slice(0, shown).map((step, i) =>
        openEnded && i === steps.length - 1 ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: a construction's steps are numbered and never move
          <StepDrawing key={i} step={step} current={i === shown - 1} {...props} />
        ),
      )}
    </g>
  );
});

function StepDrawing({
  step,
  current,
  steps,
  bounds,
  scaleRatio,
}: Props & { readonly step: Step; readonly current: boolean }) {
  const strength = current ? "construction-line on-hand" : "construction-line";
  if (step.do === "line") {
    const ends = runOn(step.through[0], step.through[1], widenTo(bounds, step.through));
    return ends && <PlainLine from={ends[0]} to={ends[1]} scaleRatio={scaleRatio} className={strength} />;
  }
  if (step.do === "measure") {
    const start = typeof step.from === "number" ? steps[step.from - 1] : null;
    const from: readonly [number, number] = start && start.do !== "line" ? start.at : [0, 0];
    return (
      <>
        <PlainLine from={from} to={step.at} scaleRatio={scaleRatio} className={`${strength} measured`} />
        <Tick at={step.at} scaleRatio={scaleRatio} current={current} upright={step.on === "upright"} />
      </>
    );
  }
  return <Crossing at={step.at} scaleRatio={scaleRatio} current={current} />;
}

/** Lines run on past the drawing's edges and past the points they go through, off the paper or not. */
function widenTo({ left, right, bottom, top }: Bounds, through: readonly (readonly [number, number])[]): Bounds {
  const width = right - left;
  const xs = through.map(([x]) => x);
  const ys = through.map(([, y]) => y);
  return {
    left: Math.min(left - width, ...xs),
    right: Math.max(right + width, ...xs),
    bottom: Math.min(bottom - width, ...ys),
    top: Math.max(top + width, ...ys),
  };
}

type PointProps = { readonly at: readonly [number, number]; readonly scaleRatio: number; readonly current: boolean };

/** Where a measure ends: a tick across the line it was laid off on. */
function Tick({ at, scaleRatio, current, upright }: PointProps & { readonly upright: boolean }) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <path
        d={upright ? "M-6 0H6" : "M0 -6V6"}
        className={current ? "construction-tick on-hand" : "construction-tick"}
      />
    </AtPoint>
  );
}

/** Where two lines cross: a small open circle. */
function Crossing({ at, scaleRatio, current }: PointProps) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <circle r={current ? 6 : 4} className={current ? "construction-point on-hand" : "construction-point"} />
    </AtPoint>
  );
}
