"use client";

import type { Task } from "@/lib/exercise/exercise";
import { STRICTNESSES, TASK_KINDS } from "@/lib/exercise/exercise";
import { ChoiceField } from "../fields/fields";
import type { ExercisePart } from "./exercise-part";

const KIND_WORDS = {
  "plan-to-picture": "Draw the picture from the plan",
  "picture-to-plan": "Read the plan back",
} as const;
const GO_ON_WORDS = { true: "the true point", own: "the student's own point" } as const;
const DIMENSION_WORDS = { printed: "printed on the plan", rule: "read with the scale rule" } as const;
const HINT_WORDS = { allowed: "allowed", none: "none" } as const;
const TOOL_WORDS = { straightedge: "a straightedge", none: "none: by eye alone" } as const;
const STRICT_WORDS = { thumbnail: "as a thumbnail", sketch: "as a sketch", drafted: "as a drafted drawing" } as const;

/** How the exercise is done and graded. */
export function TaskFields({ draft, apply }: ExercisePart) {
  const { task } = draft.exercise;
  const set = (change: Partial<Task>) => apply({ edit: "set-task", task: change });
  return (
    <section aria-labelledby="task-fields">
      <h3 id="task-fields" className="lettering">
        How it is done
      </h3>
      <div className="draft-fields">
        <ChoiceField
          label="The task"
          words={KIND_WORDS}
          order={TASK_KINDS}
          value={task.kind}
          onChoice={(kind) => set({ kind })}
        />
        <ChoiceField
          label="After each mark, on from"
          words={GO_ON_WORDS}
          order={["true", "own"]}
          value={task.goOnFrom}
          onChoice={(goOnFrom) => set({ goOnFrom })}
        />
        <ChoiceField
          label="Dimensions"
          words={DIMENSION_WORDS}
          order={["printed", "rule"]}
          value={task.dimensions}
          onChoice={(dimensions) => set({ dimensions })}
        />
        <ChoiceField
          label="Hints"
          words={HINT_WORDS}
          order={["allowed", "none"]}
          value={task.hints}
          onChoice={(hints) => set({ hints })}
        />
        <ChoiceField
          label="Tools"
          words={TOOL_WORDS}
          order={["straightedge", "none"]}
          value={task.tools.includes("straightedge") ? "straightedge" : "none"}
          onChoice={(tool) => set({ tools: tool === "none" ? [] : [tool] })}
        />
        <ChoiceField
          label="Graded"
          words={STRICT_WORDS}
          order={STRICTNESSES}
          value={task.strictness}
          onChoice={(strictness) => set({ strictness })}
        />
      </div>
    </section>
  );
}
