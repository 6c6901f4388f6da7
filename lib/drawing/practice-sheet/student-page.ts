import { exercisePoints } from "../../exercise/exercise-points";
import { capital } from "../../plan/first-letter";
import type { DisplayList } from "../display-list";
import { type Layer, PAPER_RATIO, type PaperPage } from "../paper/paper-page";
import { drawBar } from "./draw-bar";
import { drawCode } from "./draw-code";
import { drawCaution, drawScaleAndSheet } from "./draw-foot";
import { drawNameLines, drawTitle } from "./draw-heading";
import { drawMarkers } from "./draw-markers";
import { layOutParagraph, layOutTasks } from "./lay-out-notes";
import type { PracticeSheet } from "./lay-out-practice-sheet";
import { numberPoints } from "./number-points";
import { pictureLayers, sheetPicture } from "./sheet-picture";
import { numberedPlan } from "./sheet-plan";
import { taskLines } from "./task-lines";

/** The page that is drawn on. */
export function studentPage({ exercise, layout, code }: PracticeSheet, copy: number | null): PaperPage {
  const { title, unit, level, units, brief, task, scaleRatio } = exercise;
  const reading = task.kind === "picture-to-plan";
  const points = exercisePoints(exercise);
  const picture = sheetPicture(exercise);
  const plan = numberedPlan(exercise);
  const pictureNumbers = reading
    ? numberPoints(exercise, points, (point) => point.picture, [...picture.stage, ...picture.set])
    : [];
  const { intro, tasks } = layout;
  const furniture: DisplayList = [
    ...drawTitle(title, `${capital(unit)}, level ${level}`, layout.title),
    ...drawNameLines(layout.name),
    ...layOutParagraph("brief", brief, intro.right - intro.left, [intro.left, -intro.top]).list,
    ...layOutTasks(taskLines(exercise), tasks.right - tasks.left, [tasks.left, -tasks.top]).list,
    ...drawBar(units, layout.bar),
    ...drawScaleAndSheet(exercise, copy, layout.scale),
    ...drawCaution(layout.caution),
  ];
  return {
    title: copy === null ? title : `${title}, sheet ${copy}`,
    widthMm: layout.widthMm,
    heightMm: layout.heightMm,
    layers: [
      ...pictureLayers(picture, { scaleRatio, at: layout.picture.at }),
      { list: pictureNumbers, scaleRatio, at: layout.picture.at, window: picture.window },
      { list: plan, scaleRatio, at: layout.plan.at },
      paperLayer(furniture),
      paperLayer(drawCode(code, layout.code)),
      paperLayer(drawMarkers(layout.markers)),
    ],
  };
}

/** What is drawn in millimetres of the paper itself, from its upper left corner. */
export function paperLayer(list: DisplayList): Layer {
  return { list, scaleRatio: PAPER_RATIO, at: [0, 0] };
}
