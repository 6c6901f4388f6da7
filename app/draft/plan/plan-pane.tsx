"use client";

import { memo, useCallback, useMemo } from "react";
import { useShallow } from "zustand/react/shallow";
import { DrawList } from "@/app/_sheet/draw-list";
import { Magnifier } from "@/app/_sheet/magnifier";
import { magnify } from "@/app/_sheet/magnify";
import { Pane } from "@/app/_sheet/pane";
import { viewOfPane } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Thing } from "@/lib/draft/draft";
import { indexThings } from "@/lib/draft/snapping/thing-at";
import { shownDraft } from "../desk/desk";
import { useDesk, useDeskStore, useExercise } from "../desk/draft-context";
import { grippedThing, handleNamed, isQuiet } from "../grips/grip";
import { Grips } from "../grips/grips";
import { withRun } from "../hand/aim-at";
import type { Layer } from "../layers/remember";
import { useLayers } from "../layers/use-layers";
import { createHideLayers } from "../live/hide-layers";
import { LiveCanvas } from "../live/live-canvas";
import type { LivePaper } from "../live/live-paper";
import { paintPlan } from "../live/paint-plan";
import { MarkNumbers } from "../marks/mark-numbers";
import { isMarking } from "../marks/use-mark-pointing";
import { SightOverPlan } from "../notes/sight-over-plan";
import { UnderPlan } from "../trace/under-plan";
import { chosenLines } from "./chosen-lines";
import { planLayers } from "./plan-layers";
import { usePlanKeys } from "./use-plan-keys";
import { usePlanPointer } from "./use-plan-pointer";

const DRAWING_ID = "plan-drawing";
const LABEL =
  "Ground plan. Arrows move the pencil along the grid, or what is chosen; Shift for large steps, Enter sets the pencil down, " +
  "or takes hold of one handle after another of what is chosen; Backspace takes the last corner back or takes away what is " +
  "chosen or held, Escape ends, plus and minus zoom.";
const MARKING_LABEL =
  "Ground plan. Arrows go from point to point; Enter asks for it next, gives it, or leaves it out; Ctrl or Alt with an arrow moves " +
  "it in the order; plus and minus zoom.";
/** The layer of what is chosen, and that of its handles. */
const CHOSEN = "chosen";
const GRIPS = "grips";

/** The plan that is drawn on. */
export function PlanPane() {
  const { views, scaleRatio } = useSheet();
  const exercise = useExercise();
  const index = useMemo(() => indexThings(exercise.plan), [exercise.plan]);
  const { hand, measures } = useDesk(useShallow(({ hand, measures }) => ({ hand, measures })));
  const draft = useDesk((desk) => desk.history.draft);
  const sofar = useMemo(() => withRun(draft, hand, measures), [draft, hand, measures]);
  const under = useMemo(() => ({ index, sofar }), [index, sofar]);
  const { finger, letGo, svg } = usePlanPointer(under);
  const onKeyDown = usePlanKeys(under);
  const store = useDeskStore();
  const marking = useDesk(isMarking);

  const rest = useMemo(() => ({ ...exercise, scaleRatio }), [exercise, scaleRatio]);
  const layers = useLayers(planLayers, rest);
  const hide = useMemo(
    () => createHideLayers(() => document.getElementById(DRAWING_ID)?.closest(".pane") ?? null, CHOSEN, GRIPS),
    [],
  );
  // While something is dragged nothing here renders: what moves is painted, and what it stands in for taken off the paper.
  const paint = useCallback(
    (paper: LivePaper) => {
      const desk = store.getState();
      hide(desk.trying && layers.tried(desk.trying.exercise).gone);
      paintPlan(paper, desk, layers);
    },
    [store, layers, hide],
  );
  const hangsOn = useCallback(() => {
    const desk = store.getState();
    const { hand, aim, chosen, grip, trying } = desk;
    const { plan, stage, units } = shownDraft(desk).exercise;
    return [hand, aim, chosen, grip, isQuiet(desk), trying === null, plan, stage, units];
  }, [store]);
  const aimed = useCallback(() => {
    const desk = store.getState();
    const { aim, trying, grip } = desk;
    const thing = trying && grippedThing(desk);
    if (trying && thing) return handleNamed(trying.exercise.plan, thing, grip)?.at ?? null;
    return aim?.kind === "place" ? aim.at : null;
  }, [store]);
  const magnified = useCallback(() => {
    const at = aimed();
    return at && magnify(viewOfPane(views.getState().plan), at);
  }, [aimed, views]);

  return (
    <div
      className="draft-keys"
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
      tabIndex={0}
      aria-label={marking ? MARKING_LABEL : LABEL}
      onKeyDown={onKeyDown}
    >
      <Pane
        plane="plan"
        drawingId={DRAWING_ID}
        aria-hidden="true"
        onSecondFinger={letGo}
        {...svg}
        live={
          <>
            <SightOverPlan />
            <g data-layer={GRIPS}>
              <Grips />
            </g>
            <MarkNumbers plane="plan" />
          </>
        }
        over={
          <>
            <LiveCanvas plane="plan" paint={paint} hangsOn={hangsOn} />
            {finger && (
              <Magnifier plane="plan" drawingId={DRAWING_ID} mark={aimed} watch={store.subscribe}>
                <LiveCanvas plane="plan" paint={paint} hangsOn={hangsOn} look={magnified} />
              </Magnifier>
            )}
          </>
        }
      >
        <UnderPlan />
        <Chosen />
        <Layers layers={layers.still} scaleRatio={scaleRatio} />
      </Pane>
    </div>
  );
}

type LayersProps = { readonly layers: readonly Layer[]; readonly scaleRatio: number };

/** Each layer draws itself, and only when its own list is another. It carries its name. */
export const Layers = memo(function Layers({ layers, scaleRatio }: LayersProps) {
  return layers.map(({ key, list }) => (
    <g key={key} data-layer={key}>
      <DrawList list={list} scaleRatio={scaleRatio} />
    </g>
  ));
});

const NOTHING: readonly Thing[] = [];

/** What is chosen lies on a broad soft stroke. */
function Chosen() {
  const { scaleRatio } = useSheet();
  // The points of the exercise are looked at alone.
  const chosen = useDesk((desk) => (isMarking(desk) ? NOTHING : desk.chosen));
  const exercise = useExercise();
  const list = useMemo(() => chosenLines(chosen, { ...exercise, scaleRatio }), [chosen, exercise, scaleRatio]);
  return (
    <g className="draft-chosen" data-layer={CHOSEN}>
      <DrawList list={list} scaleRatio={scaleRatio} />
    </g>
  );
}
