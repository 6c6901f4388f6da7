"use client";

import { useMemo, useState } from "react";
import type { SheetPlace } from "@/app/_parts/course/course-words";
import { type Place, stepOf } from "@/app/_parts/kept-work/attempt";
import type { CatchPoint } from "@/app/_sheet/catch-points";
import type { NudgeStep } from "@/app/_sheet/constrain";
import { drawnPoints } from "@/app/_sheet/drawn-points";
import { planeOf } from "@/app/_sheet/plane-of";
import { useMark } from "@/app/_sheet/use-mark";
import { useStraightedge } from "@/app/_sheet/use-straightedge";
import type { Plane } from "@/app/_sheet/view";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import { toPaperMm } from "@/lib/measure/scale";
import { blueCrossings, catchList } from "./catch-list";
import { ConstructionNotes } from "./construction-notes";
import { Notes } from "./notes";
import { PicturePane } from "./picture-pane";
import { PlanPane } from "./plan-pane";
import { usePractice, usePracticeRoom } from "./practice-context";
import { SheetFrame } from "./sheet-frame";
import { stepTitle } from "./step-words";
import { StraightedgeNotes } from "./straightedge-notes";
import { ToolRow } from "./tool-row";
import { useGrade } from "./use-grade";
import { usePlayer } from "./use-player";

/** Crossing lines this near to a point on paper fix it, mm: a pencil's width. */
const FIXES_MM = 0.5;

/** Whether one of the crossings of the student's blue lines is the point asked. */
function linesFix(crossings: readonly CatchPoint[], truth: Place | undefined, scaleRatio: number): boolean {
  return (
    truth !== undefined &&
    crossings.some(({ at }) => toPaperMm(Math.hypot(at[0] - truth[0], at[1] - truth[1]), scaleRatio) < FIXES_MM)
  );
}

/** The drawing board: the sheet with its two drawings, and the step beside them. */
export function Board({ sheet }: { readonly sheet: SheetPlace }) {
  const room = usePracticeRoom();
  const { exercise, store, points, truth, bounds, work } = room;
  const marks = usePractice((practice) => practice.attempt.marks);
  const lines = usePractice((practice) => practice.attempt.lines);
  const correcting = usePractice((practice) => practice.attempt.correcting);
  const step = usePractice((practice) => stepOf(practice.attempt));
  const grade = useGrade();
  const [size, setSize] = useState<NudgeStep>("plain");
  const [ruling, setRuling] = useState(false);
  const [otherAway, setOtherAway] = useState(false);
  const [magnified, setMagnified] = useState(false);

  const asked = points.get(exercise.task.marks[step] ?? "") as ProjectedPoint;
  // The point on hand is not "on the sheet" while its correction is on view: both its places are drawn.
  const drawn = useMemo(
    () => drawnPoints(exercise, truth, correcting ? marks.slice(0, -1) : marks),
    [exercise, truth, marks, correcting],
  );
  const onPicture = useMemo(() => catchList(room, "picture", drawn, lines), [room, drawn, lines]);
  const onPlan = useMemo(() => catchList(room, "plan", drawn, lines), [room, drawn, lines]);

  const plane = planeOf(exercise);
  const { begin, move, rest, commit, undo, draw } = store.getState();
  const mark = useMark(
    {
      plane,
      bounds: bounds[plane],
      mark: () => store.getState().attempt.pending,
      start: (asked.over ? drawn.get(asked.over) : undefined) ?? [0, 0],
      begin,
      move,
      rest,
      commit,
      undo,
    },
    size,
  );
  const rule = (on: Plane) => (from: CatchPoint, to: CatchPoint) =>
    draw({ plane: on, from: from.at, to: to.at, through: [from.name, to.name] });
  const pictureEdge = useStraightedge({ plane: "picture", points: onPicture, draw: rule("picture") });
  const planEdge = useStraightedge({ plane: "plan", points: onPlan, draw: rule("plan") });
  const graded = correcting ? (grade.marks.find((each) => each.point === asked.name) ?? null) : null;

  const player = usePlayer(asked.name, graded);
  const fixed = useMemo(
    () => linesFix(blueCrossings(room, plane, drawn, lines), truth.get(asked.name), exercise.scaleRatio),
    [room, plane, drawn, lines, truth, asked, exercise],
  );

  const finger = mark.pointing?.down === true && mark.pointing.device !== "mouse";
  const shared = { asked, drawn, graded, held: mark.pointing?.held ?? false, magnified: magnified || finger };
  const paneOf = (pane: Plane, edge: ReturnType<typeof useStraightedge>) => ({
    ...shared,
    mark: plane === pane && !graded && !ruling ? mark : null,
    keys: plane === pane && !graded ? mark.onKeyDown : null,
    edge: ruling ? edge : null,
    tools: plane === pane && (
      <ToolRow
        straightedge={ruling}
        magnifier={magnified}
        otherAway={otherAway}
        onStraightedge={setRuling}
        onMagnifier={setMagnified}
        onOtherAway={setOtherAway}
      />
    ),
  });
  return (
    <SheetFrame sheet={sheet} grade={grade} otherAway={otherAway}>
      <PicturePane {...paneOf("picture", pictureEdge)} played={player.played} />
      <PlanPane {...paneOf("plan", planEdge)} />
      {ruling ? (
        <section className="notes" aria-label="Straightedge">
          <StraightedgeNotes points={{ picture: onPicture, plan: onPlan }} onAway={() => setRuling(false)} />
        </section>
      ) : player.open && player.played ? (
        <ConstructionNotes
          construction={player.played.construction}
          title={`How to find ${stepTitle(asked).replace(/^The/, "the")}`}
          shown={player.played.shown}
          onShown={player.show}
          onAway={player.close}
          away={graded ? "Back to the words" : "Back to the mark"}
        />
      ) : (
        <Notes
          asked={asked}
          step={step}
          graded={graded}
          mark={mark}
          size={size}
          onSize={setSize}
          player={player}
          fixed={fixed && !graded && !work?.homework.held}
        />
      )}
    </SheetFrame>
  );
}
