"use client";

import type { KeyboardEvent } from "react";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { toPx } from "@/app/_sheet/view";
import { type StepDirection, stepPoint } from "@/lib/draft/snapping/step-point";
import { wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import type { Aim } from "../desk/desk";
import { useDeskStore } from "../desk/draft-context";
import { useGripKeys } from "../grips/use-grip-keys";
import { aimAt, sayAim, type Under } from "../hand/aim-at";
import { lastPlace } from "../hand/hand";
import { isMarking, useMarkPointing } from "../marks/use-mark-pointing";

const ARROWS: Readonly<Record<string, StepDirection>> = {
  ArrowLeft: "stage right",
  ArrowRight: "stage left",
  ArrowUp: "upstage",
  ArrowDown: "downstage",
};
const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };
/** With Shift the pencil goes so many steps of the grid at once. */
const MANY_STEPS = 6;
/** Room kept between the pencil and the edge of its pane. */
const EDGE_PX = 40;

/** The plan by keys: arrows step the pencil along the grid or move what is chosen, a press sets it down. */
export function usePlanKeys(under: Under) {
  const { views } = useSheet();
  const store = useDeskStore();
  const grip = useGripKeys();
  const marks = useMarkPointing("plan");

  const keepInSight = (at: PlanPoint) => {
    const { size } = views.getState().plan;
    const [x, y] = toPx(viewOfPane(views.getState().plan), at);
    const past = (value: number, most: number) =>
      value < EDGE_PX ? EDGE_PX - value : value > most - EDGE_PX ? most - EDGE_PX - value : 0;
    const [right, down] = [past(x, size.width), past(y, size.height)];
    if (right !== 0 || down !== 0) views.getState().pan("plan", right, down);
  };
  const hold = (aim: Aim | null) => {
    const desk = store.getState();
    desk.setAim(aim, { said: sayAim(aim, desk), moves: true });
    if (aim?.kind === "place") keepInSight(aim.at);
  };
  const stepPencil = (direction: StepDirection, times: number) => {
    const desk = store.getState();
    const { plan, stage } = desk.history.draft.exercise;
    if (desk.hand.kind === "opening") {
      hold(stepOnWall(direction, desk.grid * times));
      return;
    }
    const held = desk.aim?.kind === "place" ? desk.aim.at : null;
    const start: PlanPoint = lastPlace(desk.hand, plan) ?? [0, Math.round(stage.depth / 2 / desk.grid) * desk.grid];
    let at = held ?? start;
    for (let i = 0; i < times && held; i++) at = stepPoint(at, direction, desk.grid);
    hold(aimAt(desk, at, 0, under));
  };
  /** Left and right slide the opening along its wall as it is seen; up and down go to the next wall. */
  const stepOnWall = (direction: StepDirection, by: number): Aim | null => {
    const { aim, history, measures } = store.getState();
    const { plan } = history.draft.exercise;
    const { width } = measures.opening;
    const walls = plan.walls.filter((wall) => (wallLine(plan, wall)?.length ?? 0) >= width);
    const here = aim?.kind === "on-wall" ? walls.findIndex(({ id }) => id === aim.wall) : -1;
    const turned = direction === "upstage" ? 1 : direction === "downstage" ? -1 : 0;
    const wall = walls[here < 0 ? 0 : (here + turned + walls.length) % walls.length];
    const line = wall && wallLine(plan, wall);
    if (!wall || !line) return null;
    const room = line.length - width;
    if (here < 0 || turned !== 0 || aim?.kind !== "on-wall") return { kind: "on-wall", wall: wall.id, at: room / 2 };
    const ahead = line.along[0] >= 0 ? 1 : -1;
    const at = aim.at + (direction === "stage left" ? ahead : -ahead) * by;
    return { kind: "on-wall", wall: wall.id, at: Math.min(Math.max(at, 0), room) };
  };
  const moveChosen = (direction: StepDirection, times: number, joins: boolean) => {
    const { chosen, grid, history, apply } = store.getState();
    const [only] = chosen;
    if (!only) return;
    const by = grid * times;
    if (chosen.length === 1 && only.kind === "opening") {
      const { plan } = history.draft.exercise;
      const wall = plan.walls.find(({ id }) => id === only.wall);
      const opening = wall?.openings.find(({ id }) => id === only.id);
      const line = wall && wallLine(plan, wall);
      if (!line || !opening || direction === "upstage" || direction === "downstage") return;
      const ahead = (line.along[0] >= 0 ? 1 : -1) * (direction === "stage left" ? 1 : -1);
      const at = Math.min(Math.max(opening.at + ahead * by, 0), Math.max(0, line.length - opening.width));
      apply({ edit: "change-opening", wall: only.wall, id: only.id, change: { at } }, { joins });
      return;
    }
    const [x, y] = stepPoint([0, 0], direction, by);
    apply({ edit: "move", things: chosen, by: [x, y] }, { joins });
  };

  return (event: KeyboardEvent) => {
    const desk = store.getState();
    const choosing = desk.hand.kind === "choose";
    const zoom = ZOOM_KEYS[event.key];
    const direction = ARROWS[event.key];
    if (isMarking(desk) && marks.key(event)) return;
    if (event.ctrlKey || event.metaKey) return;
    if (zoom) views.getState().zoom("plan", zoom);
    else if (event.key === "0") views.getState().whole("plan");
    else if (direction) {
      event.preventDefault();
      const times = event.shiftKey ? MANY_STEPS : 1;
      if (choosing) grip.step(direction, times, event.repeat) || moveChosen(direction, times, event.repeat);
      else stepPencil(direction, times);
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      if (!choosing && !event.repeat) desk.setDown();
      else if (!event.repeat) grip.next(event.shiftKey ? -1 : 1);
    } else if (event.key === "Backspace" || event.key === "Delete") {
      event.preventDefault();
      if (!choosing) desk.backOut();
      else if (!grip.takeOut() && desk.chosen.length > 0) desk.apply({ edit: "take-away", things: desk.chosen });
    } else if (event.key === "Escape") {
      if (choosing) grip.letGo() || desk.choose([]);
      else desk.end();
    }
  };
}
