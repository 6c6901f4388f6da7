"use client";

import { useEffect, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Grade } from "@/lib/grading/grade";
import type { Plan } from "@/lib/plan/plan";
import type { Stage } from "@/lib/stage/stage";
import type { Compared } from "./compare-lists";
import { planeOf } from "./plane-of";
import type { SetRoom } from "./set-room";
import "./finished.css";

type State =
  | { readonly kind: "drawing" }
  | { readonly kind: "failed" }
  | {
      readonly kind: "drawn";
      readonly Compare: typeof import("./compare-drawings").CompareDrawings;
      readonly compared: Compared;
    };

type Props = {
  readonly paper: SetRoom;
  readonly grade: Grade;
  /** Whether the reader drew it. */
  readonly whose?: "own" | "student";
};

/**
 * The end of a result: the set as a draughtsman would leave it, beside the student's drawing and under it. What draws it is
 * fetched when a result is shown, and sets to work once the score is on the screen.
 */
export function Finished({ paper: room, grade, whose = "own" }: Props) {
  const plane = planeOf(room.exercise);
  const [state, setState] = useState<State>({ kind: "drawing" });
  const [tries, setTries] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another try is asked for by the count of tries
  useEffect(() => {
    let here = true;
    const show = (next: State) => here && setState(next);
    const draw = async () => {
      const [{ CompareDrawings }, { compareLists }] = await Promise.all([
        import("./compare-drawings"),
        import("./compare-lists"),
      ]);
      // The page's own paint comes first.
      await new Promise((resolve) => setTimeout(resolve));
      if (here) show({ kind: "drawn", Compare: CompareDrawings, compared: compareLists(room, grade) });
    };
    draw().catch(() => show({ kind: "failed" }));
    return () => {
      here = false;
    };
  }, [room, grade, tries]);

  return (
    <section className="finished" aria-labelledby="finished">
      <h2 id="finished" className="lettering">
        {plane === "plan" ? "The plan as it was" : "The set, finished"}
      </h2>
      {state.kind === "drawing" && <p role="status">Drawing it...</p>}
      {state.kind === "failed" && (
        <>
          <p role="status">
            {plane === "plan" ? "The finished plan" : "The finished picture"} could not be drawn, perhaps because the
            page lost its connection. The marks and the score are not touched by it.
          </p>
          <p>
            <Press
              onClick={() => {
                setState({ kind: "drawing" });
                setTries(tries + 1);
              }}
            >
              Try again
            </Press>
          </p>
        </>
      )}
      {state.kind === "drawn" && (
        <>
          <p>
            Draw the line across by hand or with the slider. Where {whose === "own" ? "your" : "the student’s"} lines
            meet the finished ones at it, {whose === "own" ? "you had them" : "they are"} right.
          </p>
          <state.Compare compared={state.compared} plane={plane} whose={whose} />
        </>
      )}
      {wantsCaution(room.exercise) && (
        <p className="finished-caution">
          A teaching sketch is not a construction drawing: local codes and licensed practice decide.
        </p>
      )}
    </section>
  );
}

/** Whether the set sends someone up a step, on to a platform, through an opening or over a rake. */
function wantsCaution({ plan, stage }: { readonly plan: Plan; readonly stage: Stage }): boolean {
  const opened = plan.walls.some(({ openings }) => openings.length > 0);
  return plan.platforms.length + plan.stairs.length > 0 || opened || stage.rake !== 0;
}
