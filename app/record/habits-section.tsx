import type { HabitHistory } from "@/lib/progress/habit-history";
import { DataTable } from "./data-table";
import type { Span } from "./lay-out-chart";
import { sayDay } from "./record-words";
import { Section } from "./section";

const STATES: Readonly<Record<HabitHistory["state"], string>> = {
  here: "still there",
  fading: "fading",
  gone: "gone",
};

type Props = {
  readonly habits: readonly HabitHistory[];
  readonly span: Span | null;
};

/** Wrong ideas that were seen in the marks, and whether they went away. */
export function HabitsSection({ habits, span }: Props) {
  const [first, last] = [span?.first.x ?? 1, span?.last.x ?? 1];
  return (
    <Section
      id="habits"
      title="Habits"
      notes={
        habits.length === 0 ? (
          <p>No habit has been seen in your marks: where they were off, no one idea was behind it.</p>
        ) : (
          <>
            <p>{sayHowMany(habits)}</p>
            <p className="record-key">
              A full lozenge is an exercise in which the habit was seen, a short stroke one that could have shown it and
              did not. After three of those in a row it counts as gone.
            </p>
          </>
        )
      }
    >
      {habits.length > 0 && (
        <>
          <ul className="habit-strips">
            {habits.map((habit) => (
              <HabitStrip key={habit.id} habit={habit} first={first} last={last} />
            ))}
          </ul>
          <p className="habit-ends small-lettering" aria-hidden="true">
            <span>exercise {first}</span>
            {last > first && <span>exercise {last}</span>}
          </p>
          <DataTable
            caption="These habits as a table"
            columns={[
              "Habit",
              "State",
              "Seen in exercises",
              "Not seen in exercises",
              "First seen",
              "Last seen",
              "Gone since",
            ]}
            rows={habits.map(rowOf)}
          />
        </>
      )}
    </Section>
  );
}

type StripProps = { readonly habit: HabitHistory; readonly first: number; readonly last: number };

function HabitStrip({ habit, first, last }: StripProps) {
  const across = (x: number) => `${(100 * (x - first + 0.5)) / (last - first + 1)}%`;
  return (
    <li className="habit-strip">
      <span className="habit-name">
        <strong>{habit.name}</strong> <span className="habit-state">{STATES[habit.state]}</span>
      </span>
      <svg className="strip" aria-hidden="true" focusable="false">
        <line className="strip-line" x1="0" x2="100%" y1="50%" y2="50%" />
        {habit.points
          .filter(({ x }) => x >= first)
          .map(({ x, claimed }) => (
            <svg key={x} x={across(x)} y="50%" overflow="visible" aria-hidden="true">
              <path className={claimed ? "strip-seen" : "strip-not"} d={claimed ? "M0-7L6 0L0 7L-6 0Z" : "M0-5V5"} />
            </svg>
          ))}
      </svg>
      <span className="habit-words">{habit.words}</span>
    </li>
  );
}

function sayHowMany(habits: readonly HabitHistory[]): string {
  const count = (state: HabitHistory["state"]) => habits.filter((habit) => habit.state === state).length;
  const seen = habits.length === 1 ? "One habit" : `${habits.length} habits`;
  return `${seen} seen in your marks: ${count("here")} still there, ${count("fading")} fading, ${count("gone")} gone.`;
}

function rowOf({ name, state, points, firstSeen, lastSeen, goneSince }: HabitHistory): readonly string[] {
  const list = (claimed: boolean) =>
    points
      .filter((point) => point.claimed === claimed)
      .map(({ x }) => x)
      .join(", ") || "none";
  const gone = goneSince === null ? "not gone" : sayDay(goneSince);
  return [name, STATES[state], list(true), list(false), sayDay(firstSeen), sayDay(lastSeen), gone];
}
