"use client";

import { type ReactNode, type SVGProps, useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { AtPoint } from "@/app/_sheet/end-marks";
import { Pane } from "@/app/_sheet/pane";
import { SheetContext, useSheet } from "@/app/_sheet/sheet-context";
import type { Plane } from "@/app/_sheet/view";
import type { DrawnPlane } from "@/lib/drawing/demonstration/draw-demonstration";

type Props = Omit<SVGProps<SVGSVGElement>, "ref"> & {
  readonly plane: Plane;
  readonly drawn: DrawnPlane;
  /** The scale its letters are laid out for. */
  readonly scaleRatio: number;
  /** What is laid over the drawing, in its own paper millimetres. */
  readonly live?: ReactNode;
  readonly over?: ReactNode;
  readonly onSecondFinger?: (() => void) | undefined;
};

/** One drawing of a vote: the sheet with what was asked before, and the point lit where it is read. */
export function VotePane({ drawn, scaleRatio, ...pane }: Props) {
  const sheet = useSheet();
  const inside = useMemo(() => ({ ...sheet, scaleRatio }), [sheet, scaleRatio]);
  const { plane } = pane;
  return (
    <SheetContext value={inside}>
      <Pane {...pane} drawingId={`${plane}-drawing`}>
        <DrawList list={drawn.sheet} scaleRatio={scaleRatio} />
        <DrawList list={drawn.set} scaleRatio={scaleRatio} />
        <DrawList list={drawn.construction} scaleRatio={scaleRatio} />
        {drawn.lit && (
          <AtPoint at={drawn.lit} scaleRatio={scaleRatio}>
            <circle r={8} className="lit-point" />
            <circle r={1.8} className="mark-point" />
          </AtPoint>
        )}
      </Pane>
    </SheetContext>
  );
}
