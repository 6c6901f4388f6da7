import type { Series, SeriesPoint } from "@/lib/progress/series";
import type { Drawn, Frame } from "./lay-out-chart";
import { ChartSymbol, PastEdge } from "./symbol";

/** Smaller than this, pixels, a dot and a square look the same. */
const LEAST_SIZE_PX = 3;

type Props = {
  readonly drawn: Drawn;
  readonly frame: Frame;
  /** The identifier of the path that holds lines inside the axes. */
  readonly clip: string;
  /** A line from point to point. */
  readonly joined: boolean;
};

/** The points of one series and its trend. */
export function SeriesLine({ drawn: { series, form }, frame, clip, joined }: Props) {
  const { x, y, em } = frame;
  const shown = series.points.filter((point) => x.holds(point.x));
  const apart = x.at(2) - x.at(1);
  const size = Math.max(LEAST_SIZE_PX, Math.min(0.26 * em, 0.4 * apart));
  return (
    <g>
      <g clipPath={`url(#${clip})`}>
        {joined && shown.length > 1 && (
          <path className="chart-curve" d={pathOf(shown.map((point) => [x.at(point.x), y.onward(point.y)]))} />
        )}
      </g>
      {shown.map((point) =>
        y.holds(point.y) ? (
          <ChartSymbol key={point.x} form={form} x={x.at(point.x)} y={y.at(point.y)} size={size} />
        ) : (
          <PastEdge
            key={point.x}
            x={x.at(point.x)}
            y={y.at(point.y)}
            size={size}
            up={y.at(point.y) < (frame.top + frame.bottom) / 2}
            words={sayPast(point, series)}
          />
        ),
      )}
      <g clipPath={`url(#${clip})`}>
        {series.trend && (
          <path className="chart-trend" data-form={form} data-trend={series.id} d={trendPath(series.trend, frame)} />
        )}
      </g>
    </g>
  );
}

function sayPast({ y }: SeriesPoint, { unit }: Series): string {
  return unit === "mm" ? y.toFixed(1) : y.toFixed(2);
}

/** A straight line on the chart's own scale. */
function trendPath({ from, to }: NonNullable<Series["trend"]>, { x, y }: Frame): string {
  return pathOf([
    [x.onward(from.x), y.onward(from.y)],
    [x.onward(to.x), y.onward(to.y)],
  ]);
}

function pathOf(points: readonly (readonly [number, number])[]): string {
  return `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}`;
}
