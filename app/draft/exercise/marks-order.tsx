"use client";

import { useMemo, useState } from "react";
import { Press } from "@/app/_parts/press";
import { keepOrder, moveMark, putPoint, TAKE_ORDER } from "@/lib/draft/exercise-desk/ask";
import { ASK_NOTHING } from "@/lib/draft/exercise-desk/press-place";
import { capital } from "@/lib/plan/first-letter";
import { namePoints } from "@/lib/plan/name-points";
import { sayPoint } from "@/lib/plan/say-point";
import type { ExercisePart } from "./exercise-part";

/** How far a key moves a mark; Home and End go to the ends of any list. */
const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: -1,
  ArrowDown: 1,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** The marks in the order they are asked, to be moved by keys or presses. */
export function MarksOrder({ draft, apply }: ExercisePart) {
  const { exercise, marksBy } = draft;
  const { task, plan, stage } = exercise;
  const points = useMemo(() => namePoints(plan, stage), [plan, stage]);
  const [said, setSaid] = useState("");
  const say = (name: string) => {
    const point = points.get(name);
    return point ? capital(sayPoint(point)) : name;
  };
  const move = (name: string, by: number) => {
    const change = moveMark(task, name, by);
    if (!change || apply(change) !== null) return;
    const place = (change.task.marks ?? []).indexOf(name) + 1;
    setSaid(`${say(name)} is now asked as number ${place}.`);
  };
  return (
    <section aria-labelledby="marks-order">
      <h3 id="marks-order" className="lettering">
        What is asked, in order
      </h3>
      <p className="draft-note">
        {marksBy === "order"
          ? "The order is worked out: walls, openings, then what stands on the stage; feet before tops, near before far. It follows the plan."
          : "The order is yours. Move a mark with the arrow keys while Ctrl or Alt is held, or with its presses."}
      </p>
      <p className="draft-note">
        Press a point on the plan or in the picture: it is asked next; pressed again it is given, and then neither. On
        the plan a foot is taken with its top. Numbers tell the order, full squares what is given.
      </p>
      <div className="draft-presses">
        {task.marks.length > 0 && (
          <Press weight="small" onClick={() => apply(ASK_NOTHING)}>
            Begin with none
          </Press>
        )}
        {marksBy === "order" ? (
          <Press weight="small" disabled={task.marks.length === 0} onClick={() => apply(keepOrder(task))}>
            Order them myself
          </Press>
        ) : (
          <Press weight="small" onClick={() => apply(TAKE_ORDER)}>
            Take the order worked out
          </Press>
        )}
      </div>
      {task.marks.length === 0 && <p>Nothing is asked yet.</p>}
      <ol className="marks-order">
        {task.marks.map((name, i) => (
          <li key={name}>
            <span>
              {i + 1}. {say(name)}
            </span>
            {marksBy === "author" && (
              <span className="marks-moves">
                <MoveKey
                  label={`${say(name)}: earlier`}
                  off={i === 0}
                  onPress={() => move(name, -1)}
                  onMove={(by) => move(name, by)}
                >
                  Up
                </MoveKey>
                <MoveKey
                  label={`${say(name)}: later`}
                  off={i === task.marks.length - 1}
                  onPress={() => move(name, 1)}
                  onMove={(by) => move(name, by)}
                >
                  Down
                </MoveKey>
                <MoveKey
                  label={`${say(name)}: do not ask`}
                  onPress={() => apply(putPoint(task, name, "free"))}
                  onMove={(by) => move(name, by)}
                >
                  Leave out
                </MoveKey>
              </span>
            )}
          </li>
        ))}
      </ol>
      <p className="aloud" role="status">
        {said}
      </p>
    </section>
  );
}

type MoveKeyProps = {
  readonly label: string;
  readonly off?: boolean;
  readonly onPress: () => void;
  readonly onMove: (by: number) => void;
  readonly children: string;
};

/** A press of a mark's row. With Ctrl or Alt the arrow keys move the mark, and the press keeps the keys. */
function MoveKey({ label, off = false, onPress, onMove, children }: MoveKeyProps) {
  return (
    <button
      type="button"
      className="mark-move"
      aria-label={label}
      aria-disabled={off}
      onClick={onPress}
      onKeyDown={(event) => {
        const by = KEYS[event.key];
        if (by === undefined || !(event.ctrlKey || event.altKey)) return;
        event.preventDefault();
        event.stopPropagation();
        onMove(by);
      }}
    >
      {children}
    </button>
  );
}
