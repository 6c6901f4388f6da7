"use client";

import { Press } from "@/app/_parts/press";
import type { KnownItem } from "./form-state";

type Props = { readonly known: readonly KnownItem[]; readonly onPutBack: (item: KnownItem) => void };

/** Exercises taken out of homework that is set: their drawings are kept, and come back with them. */
export function TakenOut({ known, onPutBack }: Props) {
  if (known.length === 0) return null;
  return (
    <fieldset>
      <legend>Taken out</legend>
      <ul aria-label="Taken out">
        {known.map((item) => (
          <li key={item.key} className="class-row">
            <span>{item.words}</span>
            <span>{sayDrawings(item)}</span>
            <Press weight="small" aria-label={`Put back ${item.words}`} onClick={() => onPutBack(item)}>
              Put back
            </Press>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

function sayDrawings({ drawings, takenOut }: KnownItem): string {
  if (drawings === 0) return "nothing handed in";
  const many = drawings === 1 ? "1 drawing" : `${drawings} drawings`;
  return takenOut ? `${many} kept` : `${many} would be hidden`;
}
