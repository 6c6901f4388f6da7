"use client";

import { useMemo } from "react";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Plane, toPaper } from "@/app/_sheet/view";
import { ruledPath } from "@/lib/drawing/hand-stroke";
import { useDemonstration } from "./demonstration-context";
import type { PencilLine } from "./demonstration-store";

/** What was drawn by free hand at this step, on one drawing. */
export function PencilLines({ plane }: { readonly plane: Plane }) {
  const { scaleRatio } = useSheet();
  const at = useDemonstration((demonstration) => demonstration.at);
  const all = useDemonstration((demonstration) => demonstration.lines);
  const lines = useMemo(() => all.filter((line) => line.plane === plane && line.step === at), [all, plane, at]);
  return lines.map((line) => (
    <path key={line.id} d={pathOf(line, scaleRatio)} className={`free-line p-${line.colour}`} data-free={line.colour} />
  ));
}

/** A tap is a dot: a line of no length with round ends. */
function pathOf({ points }: PencilLine, scaleRatio: number): string {
  const onPaper = points.map((point) => toPaper(point, scaleRatio));
  const [first] = onPaper;
  return first && onPaper.length === 1 ? ruledPath([first, first]) : ruledPath(onPaper);
}
