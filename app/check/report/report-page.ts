import type { Place } from "@/app/_parts/kept-work/attempt";
import { edgesIn } from "@/app/_sheet/drawings";
import { planeOf } from "@/app/_sheet/plane-of";
import { eyeWords, habitWords, strayWords } from "@/app/_sheet/result-words";
import { emptyPlan } from "@/app/_sheet/ruled-plan";
import { type SetRoom, setRoom } from "@/app/_sheet/set-room";
import type { DisplayItem, DisplayList, DrawingPoint } from "@/lib/drawing/display-list";
import { GIVEN_LINES, OWN_LINES, TRUE_LINES } from "@/lib/drawing/draw-edges";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import { makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import { LINE_STEP, layOutText } from "@/lib/drawing/paper/lay-out-text";
import { PAPER_RATIO, type PaperPage } from "@/lib/drawing/paper/paper-page";
import { atScale } from "@/lib/drawing/practice-sheet/at-scale";
import type { Exercise } from "@/lib/exercise/exercise";
import type { MarkSet } from "@/lib/exercise/marks";
import { asDrawn } from "@/lib/grading/as-drawn";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { printScale } from "@/lib/measure/scale";
import { sheetScales } from "@/lib/sheet/choose-scale";
import { paperSize } from "@/lib/sheet/paper-size";
import { reportRows } from "./report-rows";

const MARGIN_MM = 14;
const TITLE_MM = 5;
const WORDS_MM = 2.3;
/** Of the page's height, the drawing takes this much at most. */
const DRAWING_SHARE = 0.42;
/** Half the width of a mark's cross on the drawing, millimetres. */
const CROSS_MM = 1.2;

/**
 * One page on a checked drawing: the confirmed marks in graphite over the truth in red, the score, the habits, and the
 * table of marks. `exercise` is at the scale of the sheet that was drawn on; the page shows it at that scale or the next that fits.
 */
export function reportPage(exercise: Exercise, set: MarkSet): PaperPage {
  const { widthMm, heightMm } = paperSize("letter");
  const grade = gradeMarks(asDrawn(exercise, set), set);
  const room = setRoom(exercise);
  const plane = planeOf(exercise);
  const bounds = room.bounds[plane];
  const inner = widthMm - 2 * MARGIN_MM;
  const most = heightMm * DRAWING_SHARE;
  const own = { written: exercise.scale, ratio: exercise.scaleRatio };
  const fits = ({ ratio }: { readonly ratio: number }) =>
    ((bounds.right - bounds.left) * 1000) / ratio <= inner && ((bounds.top - bounds.bottom) * 1000) / ratio <= most;
  const scale = [own, ...sheetScales(exercise.units).filter(({ ratio }) => ratio > own.ratio)].find(fits) ?? own;
  const shown = setRoom(atScale(exercise, scale));
  const mm = scale.ratio / 1000;
  const top = MARGIN_MM + TITLE_MM + 9;
  const at = [
    MARGIN_MM + (inner - (bounds.right - bounds.left) / mm) / 2 - bounds.left / mm,
    top + bounds.top / mm,
  ] as const;
  const foot = top + (bounds.top - bounds.bottom) / mm;
  const head: DisplayList = [
    makeLettering("report.title", [MARGIN_MM, -MARGIN_MM - TITLE_MM], exercise.title.toUpperCase(), {
      anchor: "start",
      heightMm: TITLE_MM,
    }),
    makeLettering(
      "report.score",
      [widthMm - MARGIN_MM, -MARGIN_MM - TITLE_MM],
      `${Math.round(grade.score ?? 0)} OF 100`,
      {
        anchor: "end",
        heightMm: TITLE_MM,
      },
    ),
    makeStroke("report.rule", [
      [MARGIN_MM, -MARGIN_MM - TITLE_MM - 4],
      [widthMm - MARGIN_MM, -MARGIN_MM - TITLE_MM - 4],
    ]),
  ];
  return {
    title: `${exercise.title}: report`,
    widthMm,
    heightMm,
    layers: [
      { list: drawMarked(shown, grade), scaleRatio: scale.ratio, at },
      { list: head, scaleRatio: PAPER_RATIO, at: [0, 0] },
      {
        list: layOutWords(room, grade, printScale(scale.written), foot, { inner, heightMm }),
        scaleRatio: PAPER_RATIO,
        at: [0, 0],
      },
    ],
  };
}

/** The empty sheet, the truth in red, the student's lines, and a cross at each mark with the line to where it should be. */
function drawMarked(room: SetRoom, grade: Grade): DisplayList {
  const { exercise, truth } = room;
  const known = (names: readonly string[]) =>
    new Map(
      names.flatMap((name): [string, Place][] => {
        const at = truth.get(name);
        return at ? [[name, at]] : [];
      }),
    );
  const given = known(exercise.task.given);
  const own = new Map([...given, ...grade.marks.map((mark): [string, Place] => [mark.point, mark.at])]);
  const arm = (CROSS_MM * exercise.scaleRatio) / 1000;
  return [
    ...(planeOf(exercise) === "plan" ? emptyPlan(exercise) : drawSheetPicture(exercise)),
    ...edgesIn(room, given, GIVEN_LINES),
    ...edgesIn(room, own, OWN_LINES),
    ...edgesIn(room, known([...exercise.task.given, ...exercise.task.marks]), { ...TRUE_LINES, weight: "thin" }),
    ...grade.marks.flatMap((mark, i): DisplayItem[] => [
      makeStroke(`off.${mark.point}`, [mark.at, mark.true], { pencil: "red" }),
      ...crossAt(`true.${mark.point}`, mark.true, arm),
      makeLettering(`number.${mark.point}`, mark.at, String(i + 1), {
        heightMm: 2,
        anchor: "start",
        shiftMm: [1.2, 1.2],
      }),
    ]),
  ];
}

function crossAt(id: string, [x, y]: DrawingPoint, arm: number): DisplayList {
  return [
    makeStroke(
      `${id}.1`,
      [
        [x - arm, y - arm],
        [x + arm, y + arm],
      ],
      { pencil: "red", weight: "thick" },
    ),
    makeStroke(
      `${id}.2`,
      [
        [x - arm, y + arm],
        [x + arm, y - arm],
      ],
      { pencil: "red", weight: "thick" },
    ),
  ];
}

type Room = { readonly inner: number; readonly heightMm: number };

/** Under the drawing: its scale, what to make of it, and as many rows of the table as there is room for. */
function layOutWords(room: SetRoom, grade: Grade, scale: string, foot: number, { inner, heightMm }: Room): DisplayList {
  const { exercise, points } = room;
  const within = grade.marks.filter(({ offMm, toleranceMm }) => offMm !== null && offMm <= toleranceMm).length;
  const sentences = [
    `${within} of ${grade.marks.length} marks lie within what a hand is allowed. Graphite: as drawn; red: the truth.`,
    ...habitWords(grade.habits, points),
    ...strayWords(grade.marks, exercise.units),
    eyeWords(grade.impliedViewer, exercise.viewer, exercise),
  ].filter((sentence) => sentence !== "");
  const said: DisplayItem[] = [
    makeLettering("report.scale", [MARGIN_MM, -foot - 5], `SHOWN AT ${scale}`, { anchor: "start", heightMm: 2.4 }),
  ];
  let top = -foot - 9;
  for (const [i, sentence] of sentences.entries()) {
    const block = layOutText(`report.words.${i}`, sentence, {
      at: [MARGIN_MM, top],
      widthMm: inner,
      heightMm: WORDS_MM,
    });
    said.push(...block.list);
    top = block.foot - WORDS_MM * (LINE_STEP - 1);
  }
  const lowest = -(heightMm - MARGIN_MM - 8);
  return [
    ...said,
    ...reportRows(room, grade, { left: MARGIN_MM, width: inner, top: top - 3, lowest }),
    makeLettering(
      "report.caution",
      [MARGIN_MM, -(heightMm - MARGIN_MM)],
      "A teaching sketch is not a construction drawing: local codes and licensed practice decide.",
      { anchor: "start", heightMm: 1.7, face: "plain" },
    ),
  ];
}
