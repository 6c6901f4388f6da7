import type { Series, SeriesPoint } from "@/lib/progress/series";
import { MOST_SHOWN } from "./axes";
import { DataTable } from "./data-table";
import type { Span } from "./lay-out-chart";
import { type Catalogue, sayDay, sayExercise } from "./record-words";
import { Section } from "./section";
import { SeriesChart } from "./series-chart";

type Props = {
  readonly series: readonly Series[];
  /** Null where nothing is drawn. */
  readonly span: Span | null;
  readonly catalogue: Catalogue;
};

/** How far off on the paper, attempt by attempt: depth against across, and heights below. */
export function ErrorsSection({ series, span, catalogue }: Props) {
  const find = (id: Series["id"]) => series.find((each) => each.id === id && each.points.length > 0);
  const [depth, across, height] = [find("depth"), find("across"), find("height")];
  const sides = [depth && { series: depth, name: "depth" }, across && { series: across, name: "across" }];
  const places = sides.filter((each) => each !== undefined);
  const words = [depth, across, height].flatMap((each) => (each ? [each.words] : []));
  return (
    <Section
      id="errors"
      title="Depth against across"
      notes={
        <>
          {words.map((each) => (
            <p key={each}>{each}</p>
          ))}
          {words.length === 0 && <p>No mark of yours means a place or a height yet.</p>}
          <p className="record-key">
            Each point is one exercise: the middle one of its marks' errors on paper. Full dots and the long-dashed
            trend are depth, hollow squares and the dotted trend across. {sayShown(series)}
          </p>
        </>
      }
    >
      {span && places.length > 0 && <SeriesChart label={labelOf([depth, across])} series={places} span={span} />}
      {span && height && (
        <>
          <h3 className="small-lettering record-second">Heights</h3>
          <SeriesChart label={labelOf([height])} series={[{ series: height, name: "height" }]} span={span} />
        </>
      )}
      {words.length > 0 && (
        <DataTable
          caption="These errors as a table"
          columns={["No.", "Day", "Exercise", "Depth, mm", "Across, mm", "Height, mm"]}
          rows={rowsOf([depth, across, height], catalogue)}
        />
      )}
    </Section>
  );
}

function labelOf(series: readonly (Series | undefined)[]): string {
  const words = series.flatMap((each) => (each ? [each.words] : []));
  return `Chart of errors in millimetres on paper, exercise by exercise. ${words.join(" ")}`;
}

/** Says when not all of the past is drawn. */
export function sayShown(series: readonly Series[]): string {
  const last = Math.max(0, ...series.flatMap(({ points }) => points.map(({ x }) => x)));
  if (last > MOST_SHOWN) return `The last ${MOST_SHOWN} of ${last} exercises are drawn; the table has them all.`;
  return series.some(({ trend }) => trend !== null) ? "" : "A trend is drawn from the fourth exercise on.";
}

/** One row an attempt, the last one first. */
function rowsOf(series: readonly (Series | undefined)[], catalogue: Catalogue): readonly (readonly string[])[] {
  const attempts = new Map<number, SeriesPoint>();
  for (const each of series) for (const point of each?.points ?? []) attempts.set(point.x, point);
  return [...attempts.values()]
    .sort((a, b) => b.x - a.x)
    .map(({ x, when, exercise }) => [
      String(x),
      sayDay(when),
      sayExercise(exercise, catalogue),
      ...series.map((each) => each?.points.find((point) => point.x === x)?.y.toFixed(1) ?? "none"),
    ]);
}
