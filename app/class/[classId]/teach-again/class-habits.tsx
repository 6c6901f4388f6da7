import { PressLink } from "@/app/_parts/press";
import type { ClassHabit, HabitState } from "@/lib/classroom/teach-again/habits-of-class";
import { inside } from "@/lib/plan/first-letter";
import { Part } from "../../part";

const WORDS: Readonly<Record<HabitState, string>> = {
  still: "shown again since it was corrected",
  gone: "gone since it was corrected",
  untried: "nothing drawn since that could show it",
};
const STATES = ["still", "gone", "untried"] as const;

type Props = { readonly habits: readonly ClassHabit[]; readonly names: ReadonlyMap<string, string> };

/** Who holds which idea, the commonest first, and the demonstration that would answer it. */
export function ClassHabits({ habits, names }: Props) {
  const [first] = habits;
  return (
    <Part
      id="habits"
      title="Habits"
      note="Wrong ideas that explain a whole set of marks, by how many students showed them."
    >
      {!first && <p>No habit shows in what has been handed in.</p>}
      {first?.exercise && (
        <div className="class-two">
          <p>The commonest: {inside(first.name)}. Show how it is done on the exercise that brought it out most.</p>
          <div>
            <PressLink href={`/demonstrate/${first.exercise}`} weight="main">
              Demonstrate it
            </PressLink>
          </div>
        </div>
      )}
      <ul>
        {habits.map(({ id, name, holders, counts }) => (
          <li key={id} className="class-row">
            <span>{name}</span>
            <span>{holders.length === 1 ? "1 student" : `${holders.length} students`}</span>
            <details>
              <summary>
                {STATES.flatMap((state) => (counts[state] > 0 ? [`${counts[state]} ${short(state)}`] : [])).join(", ")}
              </summary>
              {STATES.map((state) => {
                const of = holders
                  .filter((holder) => holder.state === state)
                  .map(({ memberId }) => names.get(memberId));
                return of.length === 0 ? null : (
                  <p key={state}>
                    {of.join(", ")}: {WORDS[state]}.
                  </p>
                );
              })}
            </details>
          </li>
        ))}
      </ul>
    </Part>
  );
}

function short(state: HabitState): string {
  return state === "still" ? "still" : state === "gone" ? "gone" : "not tried since";
}
