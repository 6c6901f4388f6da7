"use client";

import type { Heights } from "@/lib/draft/bring/place/as-brought-runs";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import type { LengthUnits } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { TextField } from "../fields/fields";

type Props = {
  readonly heights: Heights;
  readonly units: LengthUnits;
  readonly onHeights: (heights: Heights) => void;
};

const WORDS: Readonly<Record<keyof Heights, string>> = {
  wall: "Walls, high",
  door: "Heads of openings",
  sill: "Sills of windows",
};

/** What a plan does not tell: how high its walls and openings are. */
export function HeightFields({ heights, units, onHeights }: Props) {
  const write = (which: keyof Heights) => (text: string) => {
    const typed = typedLength(text, units);
    if (!typed.ok) return typed.say;
    if (!(typed.metres > 0)) return "A height is above 0.";
    onHeights({ ...heights, [which]: typed.metres });
    return null;
  };
  return (
    <div className="draft-fields">
      {(Object.keys(WORDS) as (keyof Heights)[]).map((which) => (
        <TextField key={which} label={WORDS[which]} value={printLength(heights[which], units)} onWrite={write(which)} />
      ))}
    </div>
  );
}
