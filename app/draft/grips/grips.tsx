"use client";

import { useMemo } from "react";
import { AtPoint } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Handle, nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { useDesk, useShownExercise } from "../draft-context";
import { grippedThing } from "./grip";

/** The handles of the one thing that is chosen; the one that is held has a ring round it. */
export function Grips() {
  const { scaleRatio } = useSheet();
  const { plan } = useShownExercise();
  const thing = useDesk(grippedThing);
  const held = useDesk((desk) => desk.grip);
  const off = useDesk(({ drawer }) => drawer === "exercise");
  const handles = useMemo(() => (thing ? handlesOf(plan, thing) : []), [plan, thing]);
  if (off) return null;
  return handles.map((handle) => (
    <AtPoint key={nameOfHandle(handle)} at={handle.at} scaleRatio={scaleRatio}>
      {nameOfHandle(handle) === held && <circle r={13} className="grip-held" />}
      <path d={SHAPES[handle.kind]} className="grip-halo" />
      <path d={SHAPES[handle.kind]} className="grip" data-grip={nameOfHandle(handle)} />
    </AtPoint>
  ));
}

const SQUARE = "M-5 -5H5V5H-5Z";

/** What is pulled is a square, what adds a corner a cross in a lozenge, what turns an arc with its arrows, what goes both ways a lozenge. */
const SHAPES: Readonly<Record<Handle["kind"], string>> = {
  corner: SQUARE,
  end: SQUARE,
  top: "M-6 4L0 -6L6 4Z",
  size: SQUARE,
  edge: "M0 -7L7 0L0 7L-7 0ZM-3 0H3M0 -3V3",
  jamb: "M-7 0L0 -7L7 0L0 7Z",
  turn: "M-8 4A8.5 8.5 0 0 1 8 4M-8 4L-9.5 -2M-8 4L-2.5 1.5M8 4L9.5 -2M8 4L2.5 1.5",
};
