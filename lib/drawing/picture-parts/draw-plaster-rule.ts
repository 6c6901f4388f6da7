import { apronDrop } from "../../exercise/inside-frame";
import { FOOT_M, type LengthUnits } from "../../measure/length";
import { RULE_STEP_M, ruleTicks } from "../../stage/plaster-line-rule";
import type { Stage } from "../../stage/stage";
import type { Viewer } from "../../stage/viewer";
import type { DisplayItem } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** Length of the ticks below the plaster line, millimetres of paper. */
const TICK_MM = { short: 1.2, long: 2.4 } as const;
/** Clear of lines above and below the numerals, millimetres of paper. */
const CLEAR_MM = 0.7;
/** Steps of the rule to a long tick with its numeral: 5 ft, or 1 m. */
const LONG_EVERY: Readonly<Record<LengthUnits, number>> = { "ft-in": 5, m: 2 };

/**
 * The true-size rule along the plaster line, 0 at the centre line, out to both sides: a tick each foot or half metre, longer
 * and numbered each 5 ft or 1 m. Picture metres; ticks and numerals hang below the line, the numerals between it and the
 * apron's edge where they fit there, and under that edge where they do not.
 */
export function drawPlasterRule(
  stage: Stage,
  viewer: Viewer,
  units: LengthUnits,
  scaleRatio: number,
): readonly DisplayItem[] {
  const mm = scaleRatio / 1000;
  const step = RULE_STEP_M[units];
  const heightMm = LETTER_MM.figure;
  const apronMm = -apronDrop(stage, viewer) / mm;
  const under = TICK_MM.long + CLEAR_MM;
  const fits = apronMm === 0 || apronMm > under + heightMm + CLEAR_MM;
  const up = -(fits ? under : Math.max(under, apronMm + 2 * CLEAR_MM)) - heightMm;
  return ruleTicks(stage.opening.width, units).flatMap((at): DisplayItem[] => {
    const count = Math.round(at / step);
    const long = count % LONG_EVERY[units] === 0;
    const id = `picture.rule.${count}`;
    const tick = makeStroke(id, [
      [at, 0],
      [at, -(long ? TICK_MM.long : TICK_MM.short) * mm],
    ]);
    if (!long) return [tick];
    return [tick, makeLettering(`${id}.figure`, [at, 0], figure(at, units), { heightMm, shiftMm: [0, up] })];
  });
}

function figure(at: number, units: LengthUnits): string {
  const size = Math.abs(at);
  if (units === "m") return `${Math.round(size)} m`.replace(/^0 m$/, "0");
  const feet = Math.round(size / FOOT_M);
  return feet === 0 ? "0" : `${feet}'`;
}
