import { errorCells } from "@/app/_sheet/result-words";
import type { SetRoom } from "@/app/_sheet/set-room";
import type { DisplayItem, DisplayList } from "@/lib/drawing/display-list";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import type { Grade, GradedMark } from "@/lib/grading/grade";
import { capital } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";

/** Millimetres, right and up. */
type Place = { readonly left: number; readonly width: number; readonly top: number; readonly lowest: number };

/** From one row to the next, and its letters' height; the least of both, where there are many. */
const ROW_MM = 4.6;
const LEAST_ROW_MM = 2.6;
const LETTER_SHARE = 0.46;
const HEADS = ["Mark", "On paper", "Allowed", "Depth or height", "Across", "Score"] as const;
/** Where the columns begin, shares of the width. */
const STARTS = [0, 0.36, 0.49, 0.6, 0.79, 1] as const;

/** The table of marks, its rows as high as there is room for. Rows that find none even at the least height are told, not dropped. */
export function reportRows(
  { points, exercise }: SetRoom,
  grade: Grade,
  { left, width, top, lowest }: Place,
): DisplayList {
  const wanted = grade.marks.length + 1;
  const row = Math.max(LEAST_ROW_MM, Math.min(ROW_MM, (top - lowest) / wanted));
  const room = Math.max(1, Math.floor((top - lowest) / row));
  const shown = room >= wanted ? grade.marks : grade.marks.slice(0, Math.max(0, room - 2));
  const left_ = grade.marks.length - shown.length;
  const cells = (mark: GradedMark, i: number) => {
    const point = points.get(mark.point);
    return [
      `${i + 1}. ${point ? capital(sayPoint(point)) : mark.point}`,
      mark.offMm === null ? "behind the eye" : `${mark.offMm.toFixed(1)} mm off`,
      `${mark.toleranceMm.toFixed(1)} mm`,
      ...errorCells(mark, exercise.units),
      String(Math.round(mark.score)),
    ];
  };
  const rows: readonly (readonly string[])[] = [
    HEADS,
    ...shown.map(cells),
    ...(left_ > 0 ? [[`And ${left_} more, which the marks file has.`]] : []),
  ];
  return rows.flatMap((texts, i): DisplayItem[] => {
    const foot = top - (i + 0.72) * row;
    return [
      ...texts.map((text, column) =>
        makeLettering(`row.${i}.${column}`, [left + (STARTS[column] ?? 0) * width, foot], text, {
          anchor: column === STARTS.length - 1 ? "end" : "start",
          heightMm: row * LETTER_SHARE,
          face: i === 0 ? "strong" : "plain",
        }),
      ),
      makeStroke(
        `row.${i}.line`,
        [
          [left, top - (i + 1) * row],
          [left + width, top - (i + 1) * row],
        ],
        { faint: true },
      ),
    ];
  });
}
