import type { Series } from "@/lib/progress/series";
import type { Frame } from "./lay-out-chart";
import { sayDay } from "./record-words";

/** The axes with their ticks, numbers, units and guide lines; on a logarithmic one the line of 1. */
export function AxisFrame({ frame, series }: { readonly frame: Frame; readonly series: Series }) {
  const { x, y, left, right, top, bottom, em, span } = frame;
  const ratio = series.scale === "log";
  return (
    <g>
      {y.ticks.map(({ at, words }) => (
        <g key={words}>
          <path className="chart-guide" d={`M${left} ${at}H${right}`} />
          <path className="chart-tick" d={`M${left - 0.3 * em} ${at}H${left}`} />
          <text className="chart-number" textAnchor="end" x={left - 0.5 * em} y={at + 0.28 * em}>
            {words}
          </text>
        </g>
      ))}
      {x.ticks.map(({ at, words }) => (
        <g key={words}>
          <path className="chart-tick" d={`M${at} ${bottom}v${0.3 * em}`} />
          <text className="chart-number" textAnchor="middle" x={at} y={bottom + 1.2 * em}>
            {words}
          </text>
        </g>
      ))}
      <path className="chart-axis" d={`M${left} ${top - 0.35 * em}V${bottom + 0.3 * em}`} />
      <path className="chart-axis" d={`M${left - 0.3 * em} ${bottom}H${right + 0.3 * em}`} />
      <text className="chart-title" x={left - 2.6 * em} y={top - 0.9 * em}>
        {series.yTitle}
      </text>
      <text className="chart-number" x={left} y={bottom + 2.5 * em}>
        {sayDay(span.first.when)}
      </text>
      {span.last.x > span.first.x && (
        <text className="chart-number" textAnchor="end" x={right} y={bottom + 2.5 * em}>
          {sayDay(span.last.when)}
        </text>
      )}
      <text className="chart-title" textAnchor="middle" x={(left + right) / 2} y={bottom + 3.8 * em}>
        {series.xTitle}
      </text>
      {ratio && <TrueLine frame={frame} />}
    </g>
  );
}

/** Where the drawn depth is the true one, and what lies either side of it. */
function TrueLine({ frame }: { readonly frame: Frame }) {
  const { y, left, right, top, bottom, em } = frame;
  return (
    <>
      <path className="chart-true" d={`M${left} ${y.at(1)}H${right}`} />
      <text className="chart-side" textAnchor="end" x={right - 0.3 * em} y={top + 0.75 * em}>
        too deep
      </text>
      <text className="chart-side" textAnchor="end" x={right - 0.3 * em} y={bottom - 0.5 * em}>
        too shallow
      </text>
    </>
  );
}
