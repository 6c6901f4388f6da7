"use client";

import { useMemo } from "react";
import type { Place } from "@/app/_progress/attempt";
import { OwnMark, PlainLine, TrueMark } from "@/app/_sheet/end-marks";
import { StillDrawing } from "@/app/_sheet/still-drawing";
import { drawEdges, GIVEN_LINES, OWN_LINES, TRUE_LINES } from "@/lib/drawing/draw-edges";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { Grade } from "@/lib/grading/grade";
import type { PicturePoint } from "@/lib/stage/frame";
import { usePracticeRoom } from "./practice-context";

/** Pixels of a millimetre of paper that its lines' weights are for. */
const PX_PER_MM = 3.4;

/** The whole drawing: the true set in red under the student's own, with every error. */
export function ResultDrawing({ grade }: { readonly grade: Grade }) {
  const { exercise, truth, edges, points, bounds } = usePracticeRoom();
  const list = useMemo(() => {
    const set = { plan: exercise.plan, points };
    const given = places(exercise.task.given, truth);
    const all = places([...exercise.task.given, ...exercise.task.marks], truth);
    const own = new Map([...given, ...grade.marks.map((mark) => [mark.point, mark.at as PicturePoint] as const)]);
    return [
      ...drawSheetPicture(exercise),
      ...drawEdges(edges, given, GIVEN_LINES, set),
      ...drawEdges(edges, all, { ...TRUE_LINES, weight: "thin" }, set),
      ...drawEdges(edges, own, OWN_LINES, set),
    ];
  }, [exercise, truth, edges, points, grade]);
  const { scaleRatio } = exercise;
  return (
    <StillDrawing
      list={list}
      bounds={bounds.picture}
      scaleRatio={scaleRatio}
      pxPerMm={PX_PER_MM}
      label="Your whole drawing, with the true places in red. The table tells each error."
    >
      {grade.marks.map((mark) => (
        <g key={mark.point}>
          <PlainLine from={mark.at} to={mark.true} scaleRatio={scaleRatio} className="off-line" />
          <TrueMark at={mark.true} scaleRatio={scaleRatio} />
          <OwnMark at={mark.at} scaleRatio={scaleRatio} />
        </g>
      ))}
    </StillDrawing>
  );
}

function places(names: readonly string[], truth: ReadonlyMap<string, Place>): Map<string, PicturePoint> {
  return new Map(
    names.flatMap((name) => {
      const at = truth.get(name);
      return at ? [[name, at as PicturePoint] as const] : [];
    }),
  );
}
