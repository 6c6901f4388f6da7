"use client";

import { memo, useCallback, useMemo } from "react";
import { useShallow } from "zustand/react/shallow";
import { DrawList } from "@/app/_sheet/draw-list";
import { CaughtMark, OwnMark } from "@/app/_sheet/end-marks";
import { Magnifier } from "@/app/_sheet/magnifier";
import { Pane } from "@/app/_sheet/pane";
import { useSheet } from "@/app/_sheet/sheet-context";
import { indexThings } from "@/lib/draft/snapping/thing-at";
import { openingJambs, wallLine } from "@/lib/plan/wall-line";
import { withRun } from "./aim-at";
import { chosenDimensions, chosenLines } from "./chosen-lines";
import { useDesk, useDeskStore, useExercise, useShownExercise } from "./draft-context";
import { grippedThing, handleNamed } from "./grips/grip";
import { Grips } from "./grips/grips";
import { liveLines } from "./live-lines";
import { MarkNumbers } from "./marks/mark-numbers";
import { isMarking } from "./marks/use-mark-pointing";
import { SightOverPlan } from "./notes/sight-over-plan";
import { planLayers } from "./plan-layers";
import type { Layer } from "./remember";
import { UnderPlan } from "./trace/under-plan";
import { useLayers } from "./use-layers";
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

/** The plan that is drawn on. */
export function PlanPane() {
  const { scaleRatio } = useSheet();
  const exercise = useExercise();
  const trying = useDesk((desk) => desk.trying);
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
  const tried = useMemo(() => trying && { ...trying.exercise, scaleRatio }, [trying, scaleRatio]);
  const { still, moving } = useLayers(planLayers, rest, tried);
  const aimed = useCallback(() => {
    const desk = store.getState();
    const { aim, trying, grip } = desk;
    const thing = trying && grippedThing(desk);
    if (trying && thing) return handleNamed(trying.exercise.plan, thing, grip)?.at ?? null;
    return aim?.kind === "place" ? aim.at : null;
  }, [store]);

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
            {trying && <Chosen />}
            <Layers layers={moving} scaleRatio={scaleRatio} />
            <Live />
            <SightOverPlan />
            <Grips />
            <MarkNumbers plane="plan" />
          </>
        }
        over={finger ? <Magnifier plane="plan" drawingId={DRAWING_ID} mark={aimed} watch={store.subscribe} /> : null}
      >
        <UnderPlan />
        {!trying && <Chosen />}
        <Layers layers={still} scaleRatio={scaleRatio} />
      </Pane>
    </div>
  );
}

type LayersProps = { readonly layers: readonly Layer[]; readonly scaleRatio: number };

/** Each layer draws itself, and only when its own list is another. */
export const Layers = memo(function Layers({ layers, scaleRatio }: LayersProps) {
  return layers.map(({ key, list }) => <DrawList key={key} list={list} scaleRatio={scaleRatio} />);
});

/** What is chosen lies on a broad soft stroke. */
function Chosen() {
  const { scaleRatio } = useSheet();
  const chosen = useDesk((desk) => desk.chosen);
  const exercise = useShownExercise();
  const list = useMemo(() => chosenLines(chosen, { ...exercise, scaleRatio }), [chosen, exercise, scaleRatio]);
  return (
    <g className="draft-chosen">
      <DrawList list={list} scaleRatio={scaleRatio} />
    </g>
  );
}

/** What the pencil is doing, in blue, and the dimensions of what is chosen. */
function Live() {
  const { scaleRatio } = useSheet();
  const exercise = useShownExercise();
  const { hand, aim, chosen } = useDesk((desk) => desk);
  const sheet = useMemo(() => ({ ...exercise, scaleRatio }), [exercise, scaleRatio]);
  const list = hand.kind === "choose" ? chosenDimensions(chosen, sheet) : liveLines(hand, aim, sheet);
  const jamb = aim?.kind === "on-wall" ? middleOf(aim, sheet.plan) : null;
  return (
    <>
      <DrawList list={list} scaleRatio={scaleRatio} />
      {aim?.kind === "place" && <OwnMark at={aim.at} scaleRatio={scaleRatio} />}
      {aim?.kind === "place" && aim.to.some(({ by }) => by === "corner" || by === "mirror image") && (
        <CaughtMark at={aim.at} scaleRatio={scaleRatio} />
      )}
      {jamb && <OwnMark at={jamb} scaleRatio={scaleRatio} />}
    </>
  );
}

function middleOf(
  { wall: id }: { readonly wall: string },
  plan: Parameters<typeof wallLine>[0] & { readonly walls: readonly Parameters<typeof wallLine>[1][] },
) {
  const wall = plan.walls.find((each) => each.id === id);
  const line = wall && wallLine(plan, wall);
  const opening = wall?.openings.at(-1);
  return line && opening ? openingJambs(line, opening).middle : null;
}
