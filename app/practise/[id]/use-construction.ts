"use client";

import { useEffect, useMemo, useState } from "react";
import type { Construction } from "@/lib/construction/step";
import { boardOf } from "@/lib/exercise/exercise-board";
import { usePracticeRoom } from "./practice-context";

type Planner = typeof import("@/lib/construction/construct-point");

/**
 * The ruler construction of a point from what is on the sheet: the given points and, where the drawing goes on from the
 * true places, the points asked before it. Null where there is none, until it is wanted, and until its planner, which
 * the page does not carry from the start, has come.
 */
export function useConstruction(point: string, wanted: boolean): Construction | null {
  const { exercise } = usePracticeRoom();
  const [planner, setPlanner] = useState<Planner | null>(null);
  const needed = wanted && planner === null && exercise.task.kind === "plan-to-picture";
  useEffect(() => {
    if (!needed) return;
    let here = true;
    import("@/lib/construction/construct-point").then((found) => {
      if (here) setPlanner(found);
    });
    return () => {
      here = false;
    };
  }, [needed]);
  return useMemo(() => {
    const { kind, given, goOnFrom, marks } = exercise.task;
    if (!wanted || !planner || kind !== "plan-to-picture") return null;
    const before = goOnFrom === "true" ? marks.slice(0, marks.indexOf(point)) : [];
    const result = planner.constructPoint(boardOf(exercise, [...given, ...before]), point);
    return result.found ? result.construction : null;
  }, [exercise, point, wanted, planner]);
}
