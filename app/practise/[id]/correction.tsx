"use client";

import { memo, useMemo } from "react";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { DrawList } from "@/app/_sheet/draw-list";
import { drawLinesOf } from "@/app/_sheet/drawings";
import type { DrawnPoints } from "@/app/_sheet/drawn-points";
import { AtPoint, IdeaMark, OwnMark, PlainLine, TrueMark } from "@/app/_sheet/end-marks";
import { planeOf } from "@/app/_sheet/plane-of";
import { OWN_LINES, TRUE_LINES } from "@/lib/drawing/draw-edges";
import type { GradedMark } from "@/lib/grading/grade";
import { placeShown } from "@/lib/grading/judge-mark";
import { type PracticeRoom, usePracticeRoom } from "./practice-context";

type Props = {
  readonly graded: GradedMark;
  /** On the sheet besides this point: its lines run to these. */
  readonly drawn: DrawnPoints;
  readonly letters?: boolean;
};

/** One correction: the student's lines in graphite, the true ones in red, the error between, both end marks. */
export const Correction = memo(function Correction({ graded, drawn, letters = true }: Props) {
  const room = usePracticeRoom();
  const scaleRatio = room.exercise.scaleRatio;
  const own: Place = graded.at;
  const truth: Place = graded.true;
  const lines = useMemo(
    () => [
      ...drawLinesOf(room, graded.point, own, drawn, OWN_LINES),
      ...drawLinesOf(room, graded.point, truth, drawn, TRUE_LINES),
    ],
    [room, graded.point, own, truth, drawn],
  );
  const idea = useMemo(() => ideaPlace(room, graded), [room, graded]);
  return (
    <g data-correction={graded.point}>
      <DrawList list={lines} scaleRatio={scaleRatio} />
      <PlainLine from={own} to={truth} scaleRatio={scaleRatio} className="off-line" />
      {idea && !within(graded) && <IdeaMark at={idea} scaleRatio={scaleRatio} />}
      <TrueMark at={truth} scaleRatio={scaleRatio} />
      <OwnMark at={own} scaleRatio={scaleRatio} />
      {letters && <CorrectionLetters own={own} truth={truth} scaleRatio={scaleRatio} />}
    </g>
  );
});

/** Where the wrong idea puts the point on the drawing that is marked: on the plan, where the picture shows it to stand. */
function ideaPlace({ exercise, points }: PracticeRoom, { point, habitPlace }: GradedMark): Place | null {
  if (!habitPlace || planeOf(exercise) === "picture") return habitPlace;
  const known = points.get(point);
  const place = known && placeShown(exercise, known, habitPlace);
  return place?.found ? [place.at[0], place.at[1]] : null;
}

function within({ offMm, toleranceMm }: GradedMark): boolean {
  return offMm !== null && offMm <= toleranceMm;
}

type LettersProps = { readonly own: Place; readonly truth: Place; readonly scaleRatio: number };

/** Letters stand this far over a mark, or under it, pixels. */
const OVER_PX = -21;
const UNDER_PX = 30;

/** "yours" and "true" over the higher mark and under the lower, so that they never lie on each other. */
function CorrectionLetters({ own, truth, scaleRatio }: LettersProps) {
  const trueIsUp = truth[1] > own[1];
  return (
    <>
      <AtPoint at={own} scaleRatio={scaleRatio}>
        <text className="letters mark-letters" y={trueIsUp ? UNDER_PX : OVER_PX} textAnchor="middle">
          yours
        </text>
      </AtPoint>
      <AtPoint at={truth} scaleRatio={scaleRatio}>
        <text className="letters p-red mark-letters" y={trueIsUp ? OVER_PX : UNDER_PX} textAnchor="middle">
          true
        </text>
      </AtPoint>
    </>
  );
}
