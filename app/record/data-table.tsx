"use client";

import { useState } from "react";

type Props = {
  readonly caption: string;
  readonly columns: readonly string[];
  /** As many cells as columns; the first names the row. */
  readonly rows: readonly (readonly string[])[];
};

/** The figures of a drawing, for whoever would rather read them. */
export function DataTable({ caption, columns, rows }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details className="data" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="plain-link">{caption}</summary>
      {open && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
        <section className="data-scroll" aria-label={caption} tabIndex={0}>
          <table>
            <thead>
              <tr>
                {columns.map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(([name, ...cells]) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  {cells.map((cell, i) => (
                    <td key={columns[i + 1]}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}
