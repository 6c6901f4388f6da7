"use client";

import { useMemo, useState } from "react";
import { BlueLines, LayingEdge } from "@/app/_sheet/blue-lines";
import { DrawList } from "@/app/_sheet/draw-list";
import { Pane } from "@/app/_sheet/pane";
import type { RulePlace } from "@/app/_sheet/rule-graduations";
import { ScaleRule } from "@/app/_sheet/scale-rule";
import { SheetContext, useSheet } from "@/app/_sheet/sheet-context";
import type { useStraightedge } from "@/app/_sheet/use-straightedge";
import { toPaper } from "@/app/_sheet/view";
import type { DisplayItem } from "@/lib/drawing/display-list";
import { drawPlan } from "@/lib/drawing/draw-plan";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import { AskedInPlan } from "./asked-in-plan";
import { LegibleScale } from "./legible-scale";
import { usePractice, usePracticeRoom } from "./practice-context";
import { RuleNotes, ruleEdges } from "./rule-notes";

type Props = {
  readonly asked: ProjectedPoint;
  /** Set while the straightedge is laid here. */
  readonly edge: ReturnType<typeof useStraightedge> | null;
};

/** The ground plan, with the point asked lit in it, and the scale rule where the place is to be read. */
export function PlanPane({ asked, edge }: Props) {
  const { exercise } = usePracticeRoom();
  const sheet = useSheet();
  const { scaleRatio, units, task } = exercise;
  const [place, setPlace] = useState<RulePlace>(() => {
    const [x, y] = toPaper([0, -exercise.stage.apron / 2], scaleRatio);
    return { x, y, turnDeg: 0 };
  });
  const [up, setUp] = useState(ruleEdges(units)[0] ?? exercise.scale);
  const ruled = task.dimensions === "rule";
  return (
    <div className="plan-place">
      <LegibleScale plane="plan">
        <PlanDrawing asked={asked} edge={edge}>
          {ruled && (
            // The rule is as long as it is on the paper, whatever the letters' size.
            <SheetContext value={sheet}>
              <ScaleRule place={place} onPlace={setPlace} edge={up} units={units} />
            </SheetContext>
          )}
        </PlanDrawing>
      </LegibleScale>
      {ruled && <RuleNotes units={units} edge={up} onEdge={setUp} place={place} onPlace={setPlace} />}
    </div>
  );
}

function PlanDrawing({ asked, edge, children }: Props & { readonly children: React.ReactNode }) {
  const { exercise, bounds, truePaper } = useLegible();
  const { scaleRatio } = exercise;
  const list = useMemo(() => drawPlan(exercise).map(nameInside), [exercise]);
  const allLines = usePractice((practice) => practice.attempt.lines);
  const lines = useMemo(() => allLines.filter((line) => line.plane === "plan"), [allLines]);
  return (
    <Pane
      plane="plan"
      drawingId="plan-drawing"
      role="group"
      aria-label="Ground plan, with the point asked lit."
      onSecondFinger={edge?.letGo}
      {...(edge?.svg ?? {})}
    >
      <DrawList list={list} scaleRatio={scaleRatio} />
      <BlueLines lines={lines} bounds={bounds.plan} scaleRatio={scaleRatio} />
      <AskedInPlan point={asked} plan={list} />
      {edge && <LayingEdge laying={edge.laying} bounds={bounds.plan} scaleRatio={scaleRatio} />}
      {children && <g transform={`scale(${truePaper})`}>{children}</g>}
    </Pane>
  );
}

/** The room inside, and the true paper's millimetre in those it is laid out in. */
function useLegible() {
  const room = usePracticeRoom();
  return { ...room, truePaper: room.paperRatio / room.exercise.scaleRatio };
}

/** The plaster line's name goes under the line, not past its end, so that a narrow pane has room for the plan. */
function nameInside(item: DisplayItem): DisplayItem {
  if (item.kind !== "lettering" || item.id !== "plan.stage.plaster-line.name") return item;
  return { ...item, anchor: "end", shiftMm: [-item.shiftMm[0], item.shiftMm[1]] };
}
