"use client";

import { useMemo } from "react";
import { constructPoint } from "@/lib/construction/construct-point";
import type { Construction } from "@/lib/construction/step";
import { boardOf } from "@/lib/exercise/exercise-board";
import { usePracticeRoom } from "./practice-context";

/**
 * The ruler construction of a point from what is on the sheet: the given points and, where the drawing goes on from the
 * true places, the points asked before it. Null where there is none, and until it is wanted.
 */
export function useConstruction(point: string, wanted: boolean): Construction | null {
  const { exercise } = usePracticeRoom();
  return useMemo(() => {
    const { kind, given, goOnFrom, marks } = exercise.task;
    if (!wanted || kind !== "plan-to-picture") return null;
    const before = goOnFrom === "true" ? marks.slice(0, marks.indexOf(point)) : [];
    const result = constructPoint(boardOf(exercise, [...given, ...before]), point);
    return result.found ? result.construction : null;
  }, [exercise, point, wanted]);
}
