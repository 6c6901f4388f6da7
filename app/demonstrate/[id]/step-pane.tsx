"use client";

import { type ReactNode, useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { AtPoint } from "@/app/_sheet/end-marks";
import { Pane } from "@/app/_sheet/pane";
import { SheetContext, useSheet } from "@/app/_sheet/sheet-context";
import type { Plane } from "@/app/_sheet/view";
import type { DrawnPlane } from "@/lib/drawing/demonstration/draw-demonstration";
import type { Fitted } from "@/lib/drawing/demonstration/fit-drawing";
import { Guesses } from "./guesses";
import { PencilLines } from "./pencil-lines";
import { usePanePointer } from "./use-pane-pointer";

type Props = {
  readonly plane: Plane;
  readonly drawn: DrawnPlane;
  readonly fitted: Fitted;
  readonly label: string;
  readonly kind: string;
};

/** One drawing of the step on the sheet, with what is drawn over it by hand. */
export function StepPane({ fitted, ...drawing }: Props) {
  const sheet = useSheet();
  const { scaleRatio } = fitted;
  const inside = useMemo(() => ({ ...sheet, scaleRatio }), [sheet, scaleRatio]);
  return (
    <SheetContext value={inside}>
      <div className="demonstration-place" data-plane={drawing.plane}>
        <Drawing {...drawing} />
      </div>
    </SheetContext>
  );
}

function Drawing({ plane, drawn, label, kind }: Omit<Props, "fitted">): ReactNode {
  const { scaleRatio } = useSheet();
  const { svg, letGo } = usePanePointer(plane);
  const { sheet, set, construction, lit } = drawn;
  const graphite = (
    <g key="set" className="on-set" data-finished={kind === "finished" || undefined}>
      <DrawList list={set} scaleRatio={scaleRatio} />
    </g>
  );
  const blue = (
    <g key="construction" className="on-construction">
      <DrawList list={construction} scaleRatio={scaleRatio} />
    </g>
  );
  return (
    <Pane
      plane={plane}
      drawingId={`${plane}-drawing`}
      role="img"
      aria-label={label}
      onSecondFinger={letGo}
      {...svg}
      live={
        <>
          <Guesses plane={plane} />
          <PencilLines plane={plane} />
        </>
      }
    >
      <g className="on-sheet">
        <DrawList list={sheet} scaleRatio={scaleRatio} />
      </g>
      {lit && plane === "plan" && <Lit at={lit} scaleRatio={scaleRatio} />}
      {/* A point set down is drawn over the lines that found it. */}
      {kind === "set-down" ? [blue, graphite] : [graphite, blue]}
      {lit && plane === "picture" && <Lit at={lit} scaleRatio={scaleRatio} />}
      {lit && <LitPoint at={lit} scaleRatio={scaleRatio} />}
    </Pane>
  );
}

type LitProps = { readonly at: readonly [number, number]; readonly scaleRatio: number };

/** The place spoken of, brightened. */
function Lit({ at, scaleRatio }: LitProps) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <circle r={11} className="lit-place" />
    </AtPoint>
  );
}

function LitPoint({ at, scaleRatio }: LitProps) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <circle r={3.4} className="mark-point" data-lit="" />
    </AtPoint>
  );
}
