"use client";

import { useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { AtPoint } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Affine, applyAffine, invertAffine } from "@/lib/draft/bring/affine";
import type { BroughtPoint, BroughtUnit } from "@/lib/draft/bring/brought";
import type { Placed, Placing } from "@/lib/draft/bring/place/place-brought";
import { placeFrame } from "@/lib/draft/bring/place/place-frame";
import type { DisplayItem, DrawingPoint } from "@/lib/drawing/display-list";
import { drawWall } from "@/lib/drawing/plan-symbols/draw-wall";
import { type Board, toBoard } from "./board";

/** From the plan back to the drawing; null where the drawing cannot be laid on the plan. */
export function wayBack(unit: BroughtUnit, { scale, centreLine, plasterLine }: Placing): Affine | null {
  const frame = placeFrame(unit, scale, centreLine, plasterLine);
  return frame.ok ? invertAffine(frame.toPlan) : null;
}

type Props = {
  readonly placed: Extract<Placed, { readonly ok: true }>;
  readonly back: Affine;
  readonly board: Board;
};

/** Where the word for the audience stands: beside the centre line, downstage of the plaster line, metres of the stage. */
const AUDIENCE_M = [3, -1.2] as const;

/** The walls and openings found, over the drawing that they were found in, and on which side the audience sits. */
export function PlacedLines({ placed, back, board }: Props) {
  const { scaleRatio } = useSheet();
  const list = useMemo(() => {
    const { plan } = placed.draft.exercise;
    const made = new Set(placed.made.flatMap((thing) => (thing.kind === "wall" ? [thing.id] : [])));
    const onBoard = (at: DrawingPoint) => toBoard(board, applyAffine(back, at) as BroughtPoint);
    return plan.walls
      .filter(({ id }) => made.has(id))
      .flatMap((wall) => drawWall(plan, wall))
      .flatMap((item): readonly DisplayItem[] =>
        item.kind === "stroke" && !item.fillOnly
          ? [{ ...item, points: item.points.map(onBoard), pencil: "blue", fill: "none", hand: false }]
          : [],
      );
  }, [placed, back, board]);
  return (
    <g className="bring-found">
      <DrawList list={list} scaleRatio={scaleRatio} />
      <AtPoint at={toBoard(board, applyAffine(back, AUDIENCE_M))} scaleRatio={scaleRatio}>
        <text textAnchor="middle" className="letters mark-letters p-blue">
          AUDIENCE
        </text>
      </AtPoint>
    </g>
  );
}
