"use client";

import { type KeyboardEvent, type ReactNode, useCallback, useMemo, useState } from "react";
import { BlueLines, LayingEdge } from "@/app/_sheet/blue-lines";
import { DrawList } from "@/app/_sheet/draw-list";
import type { DrawnPoints } from "@/app/_sheet/drawn-points";
import { Magnifier } from "@/app/_sheet/magnifier";
import { Pane } from "@/app/_sheet/pane";
import { drawPlanSoFar } from "@/app/_sheet/plan-so-far";
import { planeOf } from "@/app/_sheet/plane-of";
import type { RulePlace } from "@/app/_sheet/rule-graduations";
import { ScaleRule } from "@/app/_sheet/scale-rule";
import { SheetContext, useSheet } from "@/app/_sheet/sheet-context";
import type { useMark } from "@/app/_sheet/use-mark";
import type { useStraightedge } from "@/app/_sheet/use-straightedge";
import { toPaper } from "@/app/_sheet/view";
import type { DisplayItem } from "@/lib/drawing/display-list";
import { drawPlan } from "@/lib/drawing/draw-plan";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { AskedInPlan } from "./asked-in-plan";
import { Correction } from "./correction";
import { LegibleScale } from "./legible-scale";
import { PaneKeys } from "./pane-keys";
import { PendingMark } from "./pending-mark";
import { usePractice, usePracticeRoom } from "./practice-context";
import { RuleNotes, ruleEdges } from "./rule-notes";

type Props = {
  /** Set while the pointer places the mark here. */
  readonly mark: ReturnType<typeof useMark> | null;
  /** Set while keys place it here. */
  readonly keys: ((event: KeyboardEvent) => void) | null;
  readonly held: boolean;
  /** Set while the straightedge is laid here. */
  readonly edge: ReturnType<typeof useStraightedge> | null;
  readonly asked: ProjectedPoint;
  readonly drawn: DrawnPoints;
  readonly graded: GradedMark | null;
  readonly magnified: boolean;
  readonly tools: ReactNode;
};

type DrawingProps = Omit<Props, "keys" | "tools"> & {
  /** The scale rule, where it lies on the plan. */
  readonly children: ReactNode;
};

const DRAWING_ID = "plan-drawing";
const KEYS_WORDS =
  "Plan. Arrows move the mark, Shift for large steps, Alt for fine ones, Enter sets it down, Backspace takes a move back, plus and minus zoom.";

/**
 * The ground plan. Either with the point asked lit in it, and the scale rule where the place is to be read; or, where the
 * plan is read back out of the picture, only as far as it has been read, with the mark placed on it.
 */
export function PlanPane({ keys, tools, ...drawing }: Props) {
  const { exercise, store } = usePracticeRoom();
  const sheet = useSheet();
  const { scaleRatio, units, task } = exercise;
  const [place, setPlace] = useState<RulePlace>(() => {
    const [x, y] = toPaper([0, -exercise.stage.apron / 2], scaleRatio);
    return { x, y, turnDeg: 0 };
  });
  const [up, setUp] = useState(ruleEdges(units)[0] ?? exercise.scale);
  const ruled = task.dimensions === "rule";
  const rule = ruled && (
    // The rule is as long as it is on the paper, whatever the letters' size.
    <SheetContext value={sheet}>
      <ScaleRule place={place} onPlace={setPlace} edge={up} units={units} />
    </SheetContext>
  );
  return (
    <div className="plan-place">
      {planeOf(exercise) === "plan" ? (
        <PaneKeys plane="plan" label={KEYS_WORDS} keys={keys} about={() => store.getState().attempt.pending}>
          <LegibleScale plane="plan">
            <PlanToMark {...drawing}>{rule}</PlanToMark>
          </LegibleScale>
        </PaneKeys>
      ) : (
        <LegibleScale plane="plan">
          <PlanDrawing {...drawing}>{rule}</PlanDrawing>
        </LegibleScale>
      )}
      {ruled && <RuleNotes units={units} edge={up} onEdge={setUp} place={place} onPlace={setPlace} />}
      {tools}
    </div>
  );
}

function PlanDrawing({ asked, edge, children }: DrawingProps) {
  const { exercise, bounds } = usePracticeRoom();
  const { scaleRatio } = exercise;
  const list = useMemo(() => drawPlan(exercise).map(nameInside), [exercise]);
  return (
    <Pane
      plane="plan"
      drawingId={DRAWING_ID}
      role="group"
      aria-label="Ground plan, with the point asked lit."
      onSecondFinger={edge?.letGo}
      {...(edge?.svg ?? {})}
    >
      <DrawList list={list} scaleRatio={scaleRatio} />
      <OwnLines />
      <AskedInPlan point={asked} plan={list} />
      {edge && <LayingEdge laying={edge.laying} bounds={bounds.plan} scaleRatio={scaleRatio} />}
      <TrueSize>{children}</TrueSize>
    </Pane>
  );
}

/** The plan that is read back: only what is given or set down, the mark, and its correction. */
function PlanToMark({ mark, held, edge, asked, drawn, graded, magnified, children }: DrawingProps) {
  const room = usePracticeRoom();
  const { exercise, bounds, store } = room;
  const { scaleRatio } = exercise;
  const list = useMemo(() => drawPlanSoFar(room, drawn), [room, drawn]);
  const pending = useCallback(() => store.getState().attempt.pending, [store]);
  return (
    <Pane
      plane="plan"
      drawingId={DRAWING_ID}
      onSecondFinger={edge?.letGo ?? mark?.letGo}
      role="group"
      aria-label="Ground plan, as far as it has been read back."
      {...(edge?.svg ?? mark?.svg ?? {})}
      live={
        <>
          {!graded && <PendingMark asked={asked.name} drawn={drawn} held={held} />}
          {edge && <LayingEdge laying={edge.laying} bounds={bounds.plan} scaleRatio={scaleRatio} />}
        </>
      }
      over={
        magnified && !graded ? (
          <Magnifier plane="plan" drawingId={DRAWING_ID} mark={pending} watch={store.subscribe} />
        ) : null
      }
    >
      <DrawList list={list} scaleRatio={scaleRatio} />
      <OwnLines />
      {graded && <Correction graded={graded} drawn={drawn} />}
      <TrueSize>{children}</TrueSize>
    </Pane>
  );
}

/** The student's construction lines on the plan. */
function OwnLines() {
  const { exercise, bounds } = usePracticeRoom();
  const all = usePractice((practice) => practice.attempt.lines);
  const lines = useMemo(() => all.filter((line) => line.plane === "plan"), [all]);
  return <BlueLines lines={lines} bounds={bounds.plan} scaleRatio={exercise.scaleRatio} />;
}

/** What is inside is laid out in the true paper's millimetres. */
function TrueSize({ children }: { readonly children: ReactNode }) {
  const { exercise, paperRatio } = usePracticeRoom();
  return children && <g transform={`scale(${paperRatio / exercise.scaleRatio})`}>{children}</g>;
}

/** The plaster line's name goes under the line, not past its end, so that a narrow pane has room for the plan. */
function nameInside(item: DisplayItem): DisplayItem {
  if (item.kind !== "lettering" || item.id !== "plan.stage.plaster-line.name") return item;
  return { ...item, anchor: "end", shiftMm: [-item.shiftMm[0], item.shiftMm[1]] };
}
