"use client";

import type { Listed } from "../check-context";

type Props = {
  readonly chosen: string | null;
  readonly catalogue: readonly Listed[];
  readonly onChoose: (id: string) => void;
};

/** Which exercise a drawing is of, where no code on it says so. */
export function ExerciseChoice({ chosen, catalogue, onChoose }: Props) {
  const units = [...new Set(catalogue.map(({ unit }) => unit))];
  const isListed = catalogue.some(({ id }) => id === chosen);
  return (
    <label className="check-exercise">
      <span>Exercise</span>
      <select className="look-list" value={chosen ?? ""} onChange={(event) => onChoose(event.target.value)}>
        {!isListed && <option value={chosen ?? ""}>{chosen ?? "Choose it"}</option>}
        {units.map((unit) => (
          <optgroup key={unit} label={unit}>
            {catalogue
              .filter((each) => each.unit === unit)
              .map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
