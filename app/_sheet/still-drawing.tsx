import type { CSSProperties } from "react";
import type { DisplayList } from "@/lib/drawing/display-list";
import { DrawList } from "./draw-list";
import { type Bounds, toPaper } from "./view";

type Props = {
  readonly list: DisplayList;
  readonly bounds: Bounds;
  readonly scaleRatio: number;
  /** Pixels of a millimetre of paper, for the weight of its lines. */
  readonly pxPerMm: number;
  /** The same for its lines alone, where they should not be as much thicker as the paper is larger. */
  readonly linePxPerMm?: number;
  readonly label: string;
  readonly children?: React.ReactNode;
};

/** A drawing that is only looked at: no zoom, no marks to place. It needs no script. */
export function StillDrawing({ list, bounds, scaleRatio, pxPerMm, linePxPerMm, label, children }: Props) {
  const [left, top] = toPaper([bounds.left, bounds.top], scaleRatio);
  const [right, bottom] = toPaper([bounds.right, bounds.bottom], scaleRatio);
  return (
    <svg
      role="img"
      aria-label={label}
      viewBox={`${left} ${top} ${right - left} ${bottom - top}`}
      className="pane still"
      style={{ "--whole-mm": linePxPerMm ?? pxPerMm, "--unit": 1 / pxPerMm } as CSSProperties}
    >
      <DrawList list={list} scaleRatio={scaleRatio} />
      {children}
    </svg>
  );
}
