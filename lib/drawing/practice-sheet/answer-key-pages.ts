import { exercisePoints } from "../../exercise/exercise-points";
import type { SheetLayout } from "../../sheet/lay-out-sheet";
import { PRINT_MARGIN_MM } from "../../sheet/paper-size";
import type { SheetBox } from "../../sheet/sheet-box";
import type { PlaneBox } from "../clear-lettering";
import type { DisplayList } from "../display-list";
import { drawFinishedPicture } from "../draw-finished-picture";
import { figurePlace } from "../figure-place";
import type { Layer, PaperPage } from "../paper/paper-page";
import { drawScaleAndSheet } from "./draw-foot";
import { drawTitle } from "./draw-heading";
import { methodLines, truePointLines } from "./key-lines";
import { drawKeyConstructions, drawTruePoints, keyConstructions } from "./key-lists";
import { layOutTasks } from "./lay-out-notes";
import type { PracticeSheet } from "./lay-out-practice-sheet";
import { pictureLayers, sheetPicture } from "./sheet-picture";
import { sheetPlan, wholePlan } from "./sheet-plan";
import { paperLayer } from "./student-page";
import type { Asked } from "./task-lines";

/** How much an answer key tells: true points with their names; with the ruler's lines; the finished picture. */
export const KEY_DEGREES = ["points", "constructions", "finished"] as const;
export type KeyDegree = (typeof KEY_DEGREES)[number];

const DEGREE_WORDS: Readonly<Record<KeyDegree, string>> = {
  points: "the true points",
  constructions: "with the constructions",
  finished: "finished",
};

/**
 * The pages of the answer key, one for each degree. The drawings stand where they stand on the student's page, so that one can
 * be laid over the other against a window. They carry no markers and no code: no photograph of one is taken for a drawing.
 */
export function answerKeyPages(
  sheet: PracticeSheet,
  degrees: readonly KeyDegree[],
  copy: number | null,
): readonly PaperPage[] {
  return degrees.map((degree) => keyPage(sheet, degree, copy));
}

function keyPage(sheet: PracticeSheet, degree: KeyDegree, copy: number | null): PaperPage {
  const { exercise, layout } = sheet;
  const { title } = exercise;
  const whose = copy === null ? title : `${title}, sheet ${copy}`;
  const { layers, asked } = degree === "finished" ? finished(sheet) : solved(sheet, degree);
  const { left, top, right } = wordsBox(sheet);
  const words = asked ? layOutTasks(asked, right - left, [left, -top]).list : [];
  const heading: DisplayList = [
    ...drawTitle("Answer key", `${whose}: ${DEGREE_WORDS[degree]}`, { ...layout.title, left: PRINT_MARGIN_MM }),
    ...drawScaleAndSheet(exercise, copy, layout.name),
  ];
  return {
    title: `Answer key: ${whose}, ${DEGREE_WORDS[degree]}`,
    widthMm: layout.widthMm,
    heightMm: layout.heightMm,
    layers: [...layers, paperLayer([...heading, ...words])],
  };
}

type KeyDrawings = { readonly layers: readonly Layer[]; readonly asked: Asked | null };

function solved({ exercise, layout }: PracticeSheet, degree: "points" | "constructions"): KeyDrawings {
  const { scaleRatio, task } = exercise;
  const points = exercisePoints(exercise);
  const reading = task.kind === "picture-to-plan";
  const picture = sheetPicture(exercise);
  const plan = reading ? wholePlan(exercise) : sheetPlan(exercise);
  const marked = reading ? plan : [...picture.stage, ...picture.set];
  const truth = drawTruePoints(exercise, points, marked);
  const constructions = degree === "constructions" ? keyConstructions(exercise, points) : [];
  const window = constructionWindow(layout, scaleRatio);
  const onPicture = { scaleRatio, at: layout.picture.at };
  const onPlan = { scaleRatio, at: layout.plan.at };
  return {
    layers: [
      { ...onPicture, list: drawKeyConstructions(constructions, exercise, window), window },
      ...pictureLayers(picture, onPicture),
      { ...onPlan, list: plan },
      { ...(reading ? onPlan : onPicture), list: truth },
    ],
    asked: degree === "points" ? truePointLines(exercise, points) : methodLines(exercise, constructions),
  };
}

function finished({ exercise, layout }: PracticeSheet): KeyDrawings {
  const { scaleRatio, stage } = exercise;
  const figureAt = figurePlace(stage);
  return {
    layers: [
      { list: drawFinishedPicture(exercise, { figureAt }), scaleRatio, at: layout.picture.at },
      { list: wholePlan(exercise), scaleRatio, at: layout.plan.at },
    ],
    asked: null,
  };
}

/** All that the student's page keeps for words: under the drawings, or beside them from the head to the foot. */
function wordsBox({ layout }: PracticeSheet): SheetBox {
  const { intro, tasks, printable, code } = layout;
  const beside = code.bottom <= intro.top;
  return { left: tasks.left, top: beside ? code.top : intro.top, right: printable.right, bottom: printable.bottom };
}

/** How far construction lines run: over the room of the picture, from the head down to halfway to the plan, left of any words. */
function constructionWindow(
  { picture, plan, printable, intro, title, code }: SheetLayout,
  scaleRatio: number,
): PlaneBox {
  const mm = scaleRatio / 1000;
  const [x, y] = picture.at;
  const low = Math.max(...picture.boxes.map(({ bottom }) => bottom));
  const high = Math.min(...plan.boxes.map(({ top }) => top));
  const right = code.bottom <= intro.top ? intro.left - 2 : printable.right;
  return [(printable.left - x) * mm, (y - (low + high) / 2) * mm, (right - x) * mm, (y - title.bottom - 2) * mm];
}
