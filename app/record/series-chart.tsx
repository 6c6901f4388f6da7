"use client";

import { useId } from "react";
import type { Series } from "@/lib/progress/series";
import { AxisFrame } from "./axis-frame";
import { type Drawn, type Frame, layOut, type Span } from "./lay-out-chart";
import { SeriesLine } from "./series-line";
import { FORMS } from "./symbol";
import { useRoom } from "./use-room";
import "./chart.css";

/** Heights in letters, for each width in letters. */
const HEIGHT_SHARE = 0.4;
const LEAST_HEIGHT = 15;
const MOST_HEIGHT = 22;

/** Names one over another are this far apart, letters. */
const NAME_APART = 1.15;

type Props = {
  readonly label: string;
  readonly series: readonly { readonly series: Series; readonly name: string }[];
  readonly span: Span;
  /** The points are joined to a curve. */
  readonly joined?: boolean;
};

/** One or more series of the same kind over the attempts, with their trends. */
export function SeriesChart({ label, series, span, joined = false }: Props) {
  const [box, { width, em }] = useRoom<HTMLDivElement>();
  const clip = useId();
  const height = Math.round(Math.min(MOST_HEIGHT * em, Math.max(LEAST_HEIGHT * em, width * HEIGHT_SHARE)));
  const drawn = series.map((each, i): Drawn => ({ ...each, form: FORMS[i] ?? "dot" }));
  const frame = layOut(drawn, span, width, height, em);
  const [first] = drawn;
  return (
    <div ref={box} className="chart-box">
      {frame && first && (
        <svg className="chart" role="img" aria-label={label} width={width} height={height}>
          <clipPath id={clip}>
            <rect x={frame.left} y={frame.top} width={frame.right - frame.left} height={frame.bottom - frame.top} />
          </clipPath>
          <AxisFrame frame={frame} series={first.series} />
          {drawn.map((each) => (
            <SeriesLine key={each.series.id} drawn={each} frame={frame} clip={clip} joined={joined} />
          ))}
          <Names drawn={drawn} frame={frame} />
        </svg>
      )}
    </div>
  );
}

/** Each series' name where its line ends, moved apart where two would touch. */
function Names({ drawn, frame }: { readonly drawn: readonly Drawn[]; readonly frame: Frame }) {
  if (drawn.length < 2) return null;
  const { em, right } = frame;
  return namePlaces(drawn, frame).map(({ name, y }) => (
    <text key={name} className="chart-name" x={right + 0.6 * em} y={y + 0.3 * em}>
      {name}
    </text>
  ));
}

function namePlaces(drawn: readonly Drawn[], { y, em, bottom }: Frame): readonly { name: string; y: number }[] {
  const ends = drawn.flatMap(({ series, name }) => {
    const end = series.trend?.to.y ?? series.points.at(-1)?.y;
    return end === undefined ? [] : [{ name, y: y.at(end) }];
  });
  ends.sort((a, b) => b.y - a.y);
  const placed: { name: string; y: number }[] = [];
  for (const { name, y: wanted } of ends)
    placed.push({ name, y: Math.min(wanted, (placed.at(-1)?.y ?? bottom + NAME_APART * em) - NAME_APART * em) });
  return placed;
}
