"use client";

import { Press } from "@/app/_parts/press";
import { type RulePlace, turnRule } from "@/app/_sheet/rule-graduations";
import type { LengthUnits } from "@/lib/measure/length";
import { FOOT_SCALES, METRIC_SCALES, printScale } from "@/lib/measure/scale";

const QUARTER_DEG = 90;

/** The edges that a scale rule carries. */
export function ruleEdges(units: LengthUnits): readonly string[] {
  return units === "ft-in" ? FOOT_SCALES : METRIC_SCALES;
}

type Props = {
  readonly units: LengthUnits;
  readonly edge: string;
  readonly onEdge: (edge: string) => void;
  readonly place: RulePlace;
  readonly onPlace: (place: RulePlace) => void;
};

/** Under the plan: which edge of the rule is up, and a quarter turn without dragging. */
export function RuleNotes({ units, edge, onEdge, place, onPlace }: Props) {
  const edges = ruleEdges(units);
  return (
    <div className="rule-notes">
      <label className="nudge-step">
        Rule's edge
        <select className="look-list" value={edge} onChange={(event) => onEdge(event.target.value)}>
          {edges.map((each) => (
            <option key={each} value={each}>
              {printScale(each)}
            </option>
          ))}
        </select>
      </label>
      <Press weight="small" onClick={() => onPlace(turnRule(place, QUARTER_DEG))}>
        Quarter turn
      </Press>
    </div>
  );
}
