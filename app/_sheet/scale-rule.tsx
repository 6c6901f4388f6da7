"use client";

import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import type { LengthUnits } from "@/lib/measure/length";
import { parseScale, printScale } from "@/lib/measure/scale";
import { NUDGE_STEPS_MM } from "./constrain";
import { viewOfPane } from "./pane-state";
import { RULE_HEIGHT_MM, RULE_LENGTH_MM, type RulePlace, ruleGraduations, turnRule } from "./rule-graduations";
import { useSheet } from "./sheet-context";
import { pxPerMm } from "./view";

type Props = {
  readonly place: RulePlace;
  readonly onPlace: (place: RulePlace) => void;
  /** The edge that is up. */
  readonly edge: string;
  readonly units: LengthUnits;
};

/** One press of a bracket turns the rule so far, degrees. */
const TURN_DEG = 1;
const DEG = 180 / Math.PI;

/** A scale rule lying on the plan: moved by its body, turned by its end. Its edge may well be the wrong one. */
export function ScaleRule({ place, onPlace, edge, units }: Props) {
  const { views, scaleRatio } = useSheet();
  const grip = useRef<{ turn: boolean; x: number; y: number; from: RulePlace } | null>(null);
  const mm = () => pxPerMm(viewOfPane(views.getState().plan), scaleRatio);

  const take = (turn: boolean) => (event: PointerEvent<SVGElement>) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture?.(event.pointerId);
    grip.current = { turn, x: event.clientX, y: event.clientY, from: place };
  };
  const move = (event: PointerEvent<SVGElement>) => {
    const held = grip.current;
    if (!held) return;
    const [dx, dy] = [(event.clientX - held.x) / mm(), (event.clientY - held.y) / mm()];
    if (!held.turn) onPlace({ ...held.from, x: held.from.x + dx, y: held.from.y + dy });
    else {
      const angle = held.from.turnDeg / DEG;
      const end = [Math.cos(angle) * RULE_LENGTH_MM + dx, Math.sin(angle) * RULE_LENGTH_MM + dy] as const;
      onPlace({ ...held.from, turnDeg: Math.atan2(end[1], end[0]) * DEG });
    }
  };
  const drop = () => {
    grip.current = null;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = NUDGE_STEPS_MM[event.altKey ? "fine" : event.shiftKey ? "coarse" : "plain"];
    const moves: Record<string, RulePlace> = {
      ArrowLeft: { ...place, x: place.x - step },
      ArrowRight: { ...place, x: place.x + step },
      ArrowUp: { ...place, y: place.y - step },
      ArrowDown: { ...place, y: place.y + step },
      "[": turnRule(place, -TURN_DEG),
      "]": turnRule(place, TURN_DEG),
    };
    const next = moves[event.key];
    if (!next) return;
    event.preventDefault();
    onPlace(next);
  };

  const ratio = parseScale(edge) ?? scaleRatio;
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a rule that is laid on a drawing is no control of HTML's
    <g
      role="application"
      tabIndex={0}
      aria-label={`Scale rule, edge ${printScale(edge)}. Arrows move it, square brackets turn it.`}
      className="scale-rule"
      transform={`translate(${place.x} ${place.y}) rotate(${place.turnDeg})`}
      onKeyDown={onKeyDown}
      onPointerMove={move}
      onPointerUp={drop}
      onPointerCancel={drop}
    >
      <path d={`M-6 0H${RULE_LENGTH_MM}V${RULE_HEIGHT_MM}H-6Z`} className="rule-body" onPointerDown={take(false)} />
      {ruleGraduations(ratio, units).map(({ atMm, longMm, letters }) => (
        <g key={atMm} pointerEvents="none">
          <line x1={atMm} y1={0} x2={atMm} y2={longMm} className="rule-tick" />
          {letters && (
            <text x={atMm} y={longMm + 2.6} className="rule-letters" textAnchor="middle">
              {letters}
            </text>
          )}
        </g>
      ))}
      <text x={-5} y={RULE_HEIGHT_MM - 1.6} className="rule-letters rule-name" pointerEvents="none">
        {printScale(edge)}
      </text>
      <circle
        cx={RULE_LENGTH_MM - RULE_HEIGHT_MM / 2}
        cy={RULE_HEIGHT_MM / 2}
        r={3.2}
        className="rule-turn"
        onPointerDown={take(true)}
      />
    </g>
  );
}
