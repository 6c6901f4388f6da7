"use client";

import { type PointerEvent, useRef, useState } from "react";
import { viewOfPane } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { fromPx, type PxPoint } from "@/app/_sheet/view";
import type { Thing } from "@/lib/draft/draft";
import { type Handle, nameOfHandle } from "@/lib/draft/reshape/handle";
import { thingAt } from "@/lib/draft/snapping/thing-at";
import type { PlanPoint } from "@/lib/stage/frame";
import { useDeskStore } from "../desk/draft-context";
import { withThing } from "../desk/follow-chosen";
import { grippedThing, handleAt, isQuiet, pullHandle } from "../grips/grip";
import { aimAt, sayAim, type Under } from "../hand/aim-at";
import { editOfDrag } from "../hand/drag";
import { isSameThing } from "../hand/hand";
import { isMarking, useMarkPointing } from "../marks/use-mark-pointing";

/** How near a pointer must come to a thing or a line to catch it, pixels. */
const REACH_PX = { mouse: 9, pen: 11, touch: 20 } as const;
/** How near a line must be to catch the pencil, pixels; and never more than so many steps of the grid, so that fine steps can be pointed at. */
const CATCH_PX = { mouse: 8, pen: 8, touch: 12 } as const;
const CATCH_STEPS = 1.5;
/** A point of the exercise is pressed from somewhat farther: it is all that can be pressed then. */
const OF_POINTS = 4 / 3;
/** A press that moves no more than this is no drag, pixels. */
const STILL_PX = 4;

type Hold =
  | {
      readonly kind: "handle";
      readonly thing: Thing;
      readonly handle: Handle;
      readonly from: PlanPoint;
      readonly px: PxPoint;
    }
  | { readonly kind: "thing"; readonly thing: Thing; readonly from: PlanPoint; readonly px: PxPoint }
  | { readonly kind: "paper"; readonly px: PxPoint };

/**
 * Pointer, pen and finger on the plan: with the pencil in hand they aim and set it down where they are let go; without it they
 * choose things, drag them, or push the paper.
 */
export function usePlanPointer(under: Under) {
  const { views } = useSheet();
  const store = useDeskStore();
  const hold = useRef<(Hold & { readonly pointer: number; last: PxPoint; moved: boolean }) | null>(null);
  const marks = useMarkPointing("plan");
  const aiming = useRef<number | null>(null);
  const corner = useRef<PxPoint>([0, 0]);
  const [finger, setFinger] = useState(false);

  const read = (event: PointerEvent<SVGSVGElement>) => {
    // While something is held the pane stays where it is; asking again would have the page laid out at every move.
    if (!hold.current && aiming.current === null) {
      const { left, top } = event.currentTarget.getBoundingClientRect();
      corner.current = [left, top];
    }
    const px: PxPoint = [event.clientX - corner.current[0], event.clientY - corner.current[1]];
    const view = viewOfPane(views.getState().plan);
    const device = event.pointerType === "touch" || event.pointerType === "pen" ? event.pointerType : "mouse";
    const caught = Math.min(CATCH_PX[device] / view.pxPerMetre, CATCH_STEPS * store.getState().grid);
    return { px, at: fromPx(view, px) as PlanPoint, reach: REACH_PX[device] / view.pxPerMetre, caught };
  };
  const aim = (at: PlanPoint, caught: number) => {
    const desk = store.getState();
    desk.setAim(aimAt(desk, at, caught, under), { moves: true });
  };

  /** A handle goes as far as the pointer went: it need not have been taken in its very middle. */
  const pull = ({ thing, handle, from }: Extract<Hold, { readonly kind: "handle" }>, at: PlanPoint, caught: number) => {
    const to: PlanPoint = [handle.at[0] + at[0] - from[0], handle.at[1] + at[1] - from[1]];
    const { history, grid } = store.getState();
    return pullHandle(history.draft, thing, handle, to, { grid, tolerance: caught });
  };

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture?.(event.pointerId);
    const { px, at, reach, caught } = read(event);
    const desk = store.getState();
    if (desk.hand.kind !== "choose") {
      aiming.current = event.pointerId;
      setFinger(event.pointerType === "touch");
      aim(at, caught);
      return;
    }
    // While marks are chosen nothing on the plan moves.
    if (isMarking(desk)) {
      hold.current = { kind: "paper", px, pointer: event.pointerId, last: px, moved: false };
      return;
    }
    const gripped = isQuiet(desk) ? null : grippedThing(desk);
    const handle = gripped && handleAt(desk.history.draft.exercise.plan, gripped, at, reach);
    if (gripped && handle) {
      const held: Hold = { kind: "handle", thing: gripped, handle, from: at, px };
      hold.current = { ...held, pointer: event.pointerId, last: px, moved: false };
      return;
    }
    const thing = thingAt(under.index, at, reach);
    const held: Hold = thing ? { kind: "thing", thing, from: at, px } : { kind: "paper", px };
    hold.current = { ...held, pointer: event.pointerId, last: px, moved: false };
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const desk = store.getState();
    const { px, at, caught } = read(event);
    if (desk.hand.kind !== "choose") {
      const hovering = event.pointerType !== "touch" && event.buttons === 0;
      if (hovering || aiming.current === event.pointerId) aim(at, caught);
      return;
    }
    const held = hold.current;
    if (!held || held.pointer !== event.pointerId) return;
    if (!held.moved && Math.hypot(px[0] - held.px[0], px[1] - held.px[1]) <= STILL_PX) return;
    if (held.kind === "paper") {
      views.getState().pan("plan", px[0] - held.last[0], px[1] - held.last[1]);
    } else if (held.kind === "handle") {
      if (!held.moved) setFinger(event.pointerType === "touch");
      const pulled = pull(held, at, caught);
      if (pulled) {
        desk.tryOut(pulled.edit);
        desk.hold(pulled.handle);
        desk.note(pulled.said);
      }
    } else {
      if (!held.moved) {
        if (!desk.chosen.some((each) => isSameThing(each, held.thing))) desk.choose([held.thing]);
        setFinger(event.pointerType === "touch");
      }
      const { history, grid, chosen } = store.getState();
      const dragged = editOfDrag(history.draft, { things: chosen, from: held.from, to: at }, grid, caught);
      if (dragged) {
        desk.tryOut(dragged.edit);
        desk.note(dragged.said);
      }
    }
    held.last = px;
    held.moved = true;
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    const desk = store.getState();
    const { at, caught, reach } = read(event);
    setFinger(false);
    if (aiming.current === event.pointerId) {
      aiming.current = null;
      aim(at, caught);
      desk.setDown();
      desk.say(sayAim(store.getState().aim, desk));
      if (event.pointerType === "touch") desk.setAim(null);
      return;
    }
    const held = hold.current;
    hold.current = null;
    if (!held || held.pointer !== event.pointerId) return;
    if (held.kind === "handle") {
      const pulled = held.moved ? pull(held, at, caught) : null;
      if (pulled && desk.apply(pulled.edit).ok) desk.say(pulled.said);
      else desk.tryOut(null);
      desk.hold(pulled?.handle ?? nameOfHandle(held.handle));
      return;
    }
    if (held.kind === "thing" && held.moved) {
      const { history, grid, chosen } = desk;
      const dragged = editOfDrag(history.draft, { things: chosen, from: held.from, to: at }, grid, caught);
      if (dragged) {
        const { ok } = desk.apply(dragged.edit);
        if (ok) desk.say(dragged.said);
      } else desk.tryOut(null);
      return;
    }
    if (held.moved) return;
    if (isMarking(desk)) {
      marks.press(at, reach * OF_POINTS);
      return;
    }
    const several = event.shiftKey || event.ctrlKey || event.metaKey;
    if (held.kind === "thing") {
      desk.choose(several ? withThing(desk.chosen, held.thing) : [held.thing]);
      // What can be changed of it stands first beside the drawing.
      document.querySelector(".draft-content")?.scrollTo?.({ top: 0 });
    } else if (!several) desk.choose([]);
  };
  /** The gesture was something else: everything is as it was before. */
  const letGo = () => {
    setFinger(false);
    hold.current = null;
    aiming.current = null;
    const desk = store.getState();
    if (desk.hand.kind === "choose") desk.tryOut(null);
    else desk.setAim(null);
  };
  const onPointerLeave = (event: PointerEvent<SVGSVGElement>) => {
    const desk = store.getState();
    if (event.pointerType === "mouse" && event.buttons === 0 && desk.hand.kind !== "choose") desk.setAim(null);
  };

  return { finger, letGo, svg: { onPointerDown, onPointerMove, onPointerUp, onPointerLeave, onPointerCancel: letGo } };
}
