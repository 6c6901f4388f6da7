"use client";

import { useId } from "react";
import type { LayerUse } from "@/lib/draft/bring/place/place-brought";
import type { ShownLayer } from "./worker/messages";

type Props = {
  readonly layers: readonly ShownLayer[];
  readonly uses: Readonly<Record<string, LayerUse>>;
  readonly lit: string | null;
  readonly onUse: (layer: string, use: LayerUse) => void;
  readonly onLit: (layer: string | null) => void;
};

const USES: Readonly<Record<LayerUse, string>> = { walls: "walls", openings: "openings", ignore: "left out" };
const ORDER: readonly LayerUse[] = ["walls", "openings", "ignore"];

/** What each layer of the drawing is for; the one that is looked at is lit up in the drawing. */
export function LayerList({ layers, uses, lit, onUse, onLit }: Props) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id} className="lettering">
        Layers
      </h2>
      <p className="draft-note">Guessed by their names. Say what each is for; press a name to see it in the drawing.</p>
      <ul className="bring-layers">
        {layers.map(({ name, hidden, lines }, i) => (
          <li key={name}>
            <button
              type="button"
              className="bring-layer"
              aria-pressed={lit === name}
              onClick={() => onLit(lit === name ? null : name)}
            >
              {name}
              <span className="draft-note">
                {" "}
                {lines.toLocaleString("en")} {lines === 1 ? "line" : "lines"}
                {hidden ? ", hidden in the file" : ""}
              </span>
            </button>
            <label className="aloud" htmlFor={`${id}-${i}`}>
              {name} is
            </label>
            <select
              id={`${id}-${i}`}
              className="look-list"
              value={uses[name] ?? "ignore"}
              onFocus={() => onLit(name)}
              onBlur={() => onLit(null)}
              onChange={(event) => {
                const use = ORDER.find((each) => each === event.target.value);
                if (use) onUse(name, use);
              }}
            >
              {ORDER.map((use) => (
                <option key={use} value={use}>
                  {USES[use]}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ul>
    </section>
  );
}
