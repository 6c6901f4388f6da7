import type { Preview } from "@/lib/classroom/gradebook/regrade";

/** Every score that grading anew would change, and what it cannot grade. */
export function RegradeOutcome({ preview: { all, changes, kept } }: { readonly preview: Preview }) {
  return (
    <>
      <p>
        {changes.length === 0 ? "No score would change" : `${sayScores(changes.length)} would change`}, of {all} handed
        in.
      </p>
      {changes.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
        <section className="class-table" aria-label="What would change" tabIndex={0}>
          <table>
            <thead>
              <tr>
                <th scope="col">Student</th>
                <th scope="col">Exercise</th>
                <th scope="col">From</th>
                <th scope="col">To</th>
              </tr>
            </thead>
            <tbody>
              {changes.map(({ handInId, name, exercise, from, to }) => (
                <tr key={handInId}>
                  <th scope="row">{name}</th>
                  <td>{exercise}</td>
                  <td>{figure(from)}</td>
                  <td>{figure(to)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {kept.map(({ name, exercise, sentence }) => (
        <p key={`${name} ${exercise}`}>
          {name}, {exercise}, stays as it is. {sentence}
        </p>
      ))}
    </>
  );
}

export function sayScores(count: number): string {
  return count === 1 ? "1 score" : `${count} scores`;
}

/** A tenth tells most changes, which a whole number may hide. */
function figure(score: number | null): string {
  return score === null ? "none" : score.toFixed(1);
}
