"use client";

import { useMemo } from "react";
import { AtPoint } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import { nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { useDesk, useExercise } from "../desk/draft-context";
import { grippedThing, isQuiet } from "./grip";
import { GRIP_SHAPES } from "./grip-shapes";

/** The handles of the one thing that is chosen; the one that is held has a ring round it. */
export function Grips() {
  const { scaleRatio } = useSheet();
  const { plan } = useExercise();
  const thing = useDesk(grippedThing);
  const held = useDesk((desk) => desk.grip);
  const quiet = useDesk(isQuiet);
  const handles = useMemo(() => (thing ? handlesOf(plan, thing) : []), [plan, thing]);
  if (quiet) return null;
  return handles.map((handle) => (
    <AtPoint key={nameOfHandle(handle)} at={handle.at} scaleRatio={scaleRatio}>
      {nameOfHandle(handle) === held && <circle r={13} className="grip-held" />}
      <path d={GRIP_SHAPES[handle.kind]} className="grip-halo" />
      <path d={GRIP_SHAPES[handle.kind]} className="grip" data-grip={nameOfHandle(handle)} />
    </AtPoint>
  ));
}
