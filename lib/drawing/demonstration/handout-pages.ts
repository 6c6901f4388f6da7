import type { Exercise } from "../../exercise/exercise";
import { type Paper, paperSize } from "../../sheet/paper-size";
import type { DisplayItem } from "../display-list";
import { makeLettering, makeStroke } from "../make-stroke";
import { layOutText } from "../paper/lay-out-text";
import { type Layer, PAPER_RATIO, type PaperPage } from "../paper/paper-page";
import type { DemonstrationStep } from "./demonstration-step";
import { demonstrationSteps } from "./demonstration-steps";
import { startStepLayers } from "./step-layers";
import { CAUTION } from "./step-pages";

/** Steps on a page, across and down. */
const ACROSS = 2;
const DOWN = 4;
export const STEPS_ON_A_PAGE = ACROSS * DOWN;

/** The pages' layout, millimetres. */
const MARGIN_MM = 11;
const HEAD_MM = 10;
const FOOT_MM = 6;
const GAP_MM = 5;
const WORDS_MM = 21;
const TITLE_MM = 2.9;
const SENTENCE_MM = 2.1;
const LETTERS = 0.62;

/** The handout of a demonstration: its steps small, eight to a page of upright paper, each with its sentence. */
export function handoutPages(exercise: Exercise, paper: Paper): readonly PaperPage[] {
  const steps = demonstrationSteps(exercise);
  const { widthMm, heightMm } = paperSize(paper);
  const cell = {
    width: (widthMm - 2 * MARGIN_MM - (ACROSS - 1) * GAP_MM) / ACROSS,
    height: (heightMm - 2 * MARGIN_MM - HEAD_MM - FOOT_MM - (DOWN - 1) * GAP_MM) / DOWN,
  };
  const layers = startStepLayers(exercise, steps, {
    width: cell.width,
    height: cell.height - WORDS_MM,
    letters: LETTERS,
  });
  const count = Math.ceil(steps.length / STEPS_ON_A_PAGE);
  return Array.from({ length: count }, (_, page) => {
    const shown = steps.slice(page * STEPS_ON_A_PAGE, (page + 1) * STEPS_ON_A_PAGE);
    const cells = shown.flatMap((step, i): Layer[] => {
      const right = MARGIN_MM + (i % ACROSS) * (cell.width + GAP_MM);
      const down = MARGIN_MM + HEAD_MM + Math.floor(i / ACROSS) * (cell.height + GAP_MM);
      const words = wordsOf(step, right, down + cell.height - WORDS_MM, cell.width);
      return [...layers(step, [right, down]), { list: words, scaleRatio: PAPER_RATIO, at: [0, 0] }];
    });
    const title = `${exercise.title}: ${page + 1} of ${count}`;
    return {
      title,
      widthMm,
      heightMm,
      layers: [...cells, { list: frame(title, widthMm, heightMm), scaleRatio: PAPER_RATIO, at: [0, 0] }],
    };
  });
}

function wordsOf(step: DemonstrationStep, right: number, down: number, width: number): readonly DisplayItem[] {
  const title = makeLettering(`${step.number}.title`, [right, -down - TITLE_MM - 1], `${step.number}  ${step.title}`, {
    heightMm: TITLE_MM,
    anchor: "start",
  });
  const sentence = layOutText(`${step.number}.sentence`, step.sentence, {
    at: [right, -down - TITLE_MM - 3.4],
    widthMm: width,
    heightMm: SENTENCE_MM,
  });
  return [title, ...sentence.list];
}

function frame(title: string, widthMm: number, heightMm: number): readonly DisplayItem[] {
  const foot = -heightMm + MARGIN_MM;
  const rule = -MARGIN_MM - HEAD_MM + 3;
  return [
    makeLettering("head", [MARGIN_MM, -MARGIN_MM - 4], title, { heightMm: 4, anchor: "start" }),
    makeStroke(
      "head.rule",
      [
        [MARGIN_MM, rule],
        [widthMm - MARGIN_MM, rule],
      ],
      { weight: "thick" },
    ),
    makeLettering("caution", [MARGIN_MM, foot], CAUTION, { heightMm: 2, anchor: "start", face: "plain" }),
  ];
}
