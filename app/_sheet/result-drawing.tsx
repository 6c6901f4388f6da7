"use client";

import { type ReactNode, useMemo } from "react";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { displayBounds } from "@/lib/drawing/display-bounds";
import { GIVEN_LINES, OWN_LINES, TRUE_LINES } from "@/lib/drawing/draw-edges";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { Grade } from "@/lib/grading/grade";
import { toPaperMm } from "@/lib/measure/scale";
import { edgesIn } from "./drawings";
import { OwnMark, PlainLine, TrueMark } from "./end-marks";
import { nameCorners } from "./plan-so-far";
import { planeOf } from "./plane-of";
import { emptyPlan } from "./ruled-plan";
import type { SetRoom } from "./set-room";
import { StillDrawing } from "./still-drawing";
import type { Bounds } from "./view";

/** Pixels of a millimetre of paper that its lines' weights are for. */
const PX_PER_MM = 3.4;
/** Seen from close by, lines are this much heavier than on the whole sheet. */
const CLOSE_LINES = 2;
/** A wider sheet is laid out as if it were this wide, millimetres, so that its letters and marks can be told on a screen. */
const WIDEST_MM = 260;
/** White paper under the lowest lettering, millimetres. */
const FOOT_MM = 1.5;

type Result = { readonly paper: SetRoom; readonly grade: Grade };

type Props = Result & {
  /** What the drawing is called to those who do not see it; left out, it is the reader's own. */
  readonly label?: string;
  /** The part of the drawing to be seen, metres; left out, all of it. */
  readonly part?: Bounds;
  /** Drawn over all of it. */
  readonly children?: ReactNode;
};

/** The whole drawing: the true set in red under the student's own, with every error. */
export function ResultDrawing({ paper, grade, label, part, children }: Props) {
  const plane = planeOf(paper.exercise);
  const { list, bounds, scaleRatio } = useResultLines({ paper, grade });
  const { left, right } = paper.bounds[plane];
  return (
    <StillDrawing
      list={list}
      bounds={part ?? bounds}
      scaleRatio={scaleRatio}
      pxPerMm={part ? (PX_PER_MM * (right - left)) / (part.right - part.left) : PX_PER_MM}
      linePxPerMm={part ? CLOSE_LINES * PX_PER_MM : PX_PER_MM}
      label={
        label ??
        `${plane === "plan" ? "The plan as you read it" : "Your whole drawing"}, with the true places in red. The table tells each error.`
      }
    >
      <ResultMarks grade={grade} scaleRatio={scaleRatio} />
      {children}
    </StillDrawing>
  );
}

/** The lines of a result, the room that they take, metres, and the scale that they are laid out for. */
export function useResultLines({ paper, grade }: Result) {
  const plane = planeOf(paper.exercise);
  const { truth } = paper;
  const whole = paper.bounds[plane];
  const room = useMemo(() => {
    return { ...paper, exercise: { ...paper.exercise, scaleRatio: shownRatio(paper) } };
  }, [paper]);
  const { exercise } = room;
  const { scaleRatio } = exercise;
  const list = useMemo(() => {
    const given = places(exercise.task.given, truth);
    const all = places([...exercise.task.given, ...exercise.task.marks], truth);
    const own = new Map([...given, ...grade.marks.map((mark): [string, Place] => [mark.point, mark.at])]);
    const lines = [
      ...(plane === "plan" ? emptyPlan(exercise) : drawSheetPicture(exercise)),
      ...edgesIn(room, given, GIVEN_LINES),
      ...edgesIn(room, all, { ...TRUE_LINES, weight: "thin" }),
      ...edgesIn(room, own, OWN_LINES),
    ];
    return plane === "plan" ? [...lines, ...nameCorners(room, all, lines)] : lines;
  }, [room, exercise, plane, truth, grade]);
  const bounds = useMemo((): Bounds => {
    const foot = displayBounds(list, scaleRatio)?.[1] ?? whole.bottom;
    return { ...whole, bottom: Math.min(whole.bottom, foot - (FOOT_MM * scaleRatio) / 1000) };
  }, [list, whole, scaleRatio]);
  return { list, bounds, scaleRatio };
}

/** Every mark of a result with the true place, and a line between the two. */
export function ResultMarks({ grade, scaleRatio }: Pick<Result, "grade"> & { readonly scaleRatio: number }) {
  return grade.marks.map((mark) => (
    <g key={mark.point}>
      <PlainLine from={mark.at} to={mark.true} scaleRatio={scaleRatio} className="off-line" />
      <TrueMark at={mark.true} scaleRatio={scaleRatio} />
      <OwnMark at={mark.at} scaleRatio={scaleRatio} />
    </g>
  ));
}

/** Stage metres to the millimetres of paper that the drawing is laid out in. */
export function shownRatio({ exercise, bounds }: Pick<SetRoom, "exercise" | "bounds">): number {
  const { left, right } = bounds[planeOf(exercise)];
  return exercise.scaleRatio * Math.max(1, toPaperMm(right - left, exercise.scaleRatio) / WIDEST_MM);
}

function places(names: readonly string[], truth: ReadonlyMap<string, Place>): Map<string, Place> {
  return new Map(
    names.flatMap((name): [string, Place][] => {
      const at = truth.get(name);
      return at ? [[name, at]] : [];
    }),
  );
}
