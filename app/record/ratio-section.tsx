import type { Series } from "@/lib/progress/series";
import { DataTable } from "./data-table";
import { sayShown } from "./errors-section";
import type { Span } from "./lay-out-chart";
import { type Catalogue, sayDay, sayExercise, sayPercent } from "./record-words";
import { Section } from "./section";
import { SeriesChart } from "./series-chart";

type Props = {
  readonly series: readonly Series[];
  /** Null where nothing is drawn. */
  readonly span: Span | null;
  readonly catalogue: Catalogue;
};

/** Too shallow against too deep, as a curve with its trend. */
export function RatioSection({ series, span, catalogue }: Props) {
  const ratio = series.find(({ id, points }) => id === "ratio" && points.length > 0);
  return (
    <Section
      id="ratio"
      title="Too shallow, too deep"
      notes={
        ratio ? (
          <>
            <p>{ratio.words}</p>
            <p className="record-key">
              The depth you drew over the true depth, from the plaster line, in each exercise. Half as deep and twice as
              deep lie equally far from 1, the red dashed line, where the depth is true. {sayShown([ratio])}
            </p>
          </>
        ) : (
          <p>No mark of yours means a depth upstage yet. The first one that does begins this curve.</p>
        )
      }
    >
      {span && ratio && (
        <>
          <SeriesChart
            label={`Chart of drawn depth over true depth, exercise by exercise, on a logarithmic axis. ${ratio.words}`}
            series={[{ series: ratio, name: "ratio" }]}
            span={span}
            joined
          />
          <DataTable
            caption="This curve as a table"
            columns={["No.", "Day", "Exercise", "Drawn over true depth", "Which is"]}
            rows={[...ratio.points]
              .reverse()
              .map(({ x, y, when, exercise }) => [
                String(x),
                sayDay(when),
                sayExercise(exercise, catalogue),
                y.toFixed(2),
                saySide(y),
              ])}
          />
        </>
      )}
    </Section>
  );
}

function saySide(ratio: number): string {
  const off = sayPercent(Math.abs(ratio - 1));
  if (off === "0 %") return "true";
  return `${off} too ${ratio < 1 ? "shallow" : "deep"}`;
}
