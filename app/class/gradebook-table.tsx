import type { ReactNode } from "react";
import type { Cell, Gradebook } from "@/lib/classroom/gradebook/gradebook";
import { sayCell } from "@/lib/classroom/gradebook/gradebook-csv";
import "./gradebook.css";

type Props = {
  readonly gradebook: Gradebook;
  /** What stands in a cell; left out, its score in figures. */
  readonly showCell?: (cell: Cell, words: string, name: string) => ReactNode;
};

/** Students down, exercises across, by homework; a weighted mean first, so that it is seen without scrolling. */
export function GradebookTable({ gradebook: { work, rows }, showCell }: Props) {
  const columns = work.flatMap((each) => each.columns);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
    <section className="gradebook" aria-label="Gradebook" tabIndex={0}>
      <table>
        <thead>
          <tr>
            <td />
            <td />
            {work.map(({ id, title, columns: { length }, weight }) =>
              length === 0 ? null : (
                <th key={id} scope="colgroup" colSpan={length} className="gradebook-work">
                  {title}
                  {weight !== 1 && <small> counts {weight}</small>}
                </th>
              ),
            )}
          </tr>
          <tr>
            <th scope="col">Student</th>
            <th scope="col">Mean</th>
            {columns.map(({ itemId, title, weight }) => (
              <th key={itemId} scope="col">
                {title}
                {weight !== 1 && <small> counts {weight}</small>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ student, cells, mean }) => (
            <tr key={student.memberId}>
              <th scope="row">{student.name}</th>
              <td className="gradebook-mean">{mean === null ? "" : Math.round(mean)}</td>
              {cells.map((cell) => {
                const column = columns.find(({ itemId }) => itemId === cell.itemId);
                return (
                  <td key={cell.itemId} data-state={cell.state}>
                    {showCell
                      ? showCell(cell, cellWords(cell), `${student.name}, ${column?.title ?? ""}`)
                      : cellWords(cell)}
                    <CellNotes cell={cell} />
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function CellNotes({ cell }: { readonly cell: Cell }) {
  const { state, override, points } = cell;
  const given = points.filter((each) => each !== null);
  const words = sayCell(override ? { ...cell, override: null } : cell);
  const said = state === "missing" || state === "excused" || state === "not-set" ? "" : words;
  return (
    <>
      {said !== "" && <small>{said}</small>}
      {override && (
        <small title={override.reason}>by hand{cell.graded === null ? "" : `, was ${Math.round(cell.graded)}`}</small>
      )}
      {given.length > 0 && <small>{given.reduce((sum, each) => sum + each, 0)} points</small>}
    </>
  );
}

/** A cell in a word or a figure. */
function cellWords({ state, score }: Cell): string {
  if (state === "missing") return "missing";
  if (state === "excused") return "excused";
  if (state === "waiting") return "not yet";
  if (state === "not-set") return "not set";
  return score === null ? "" : String(Math.round(score));
}
