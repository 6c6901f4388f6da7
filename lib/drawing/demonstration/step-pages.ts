import type { Exercise } from "../../exercise/exercise";
import { type Paper, paperSize } from "../../sheet/paper-size";
import { makeLettering } from "../make-stroke";
import { layOutText } from "../paper/lay-out-text";
import { PAPER_RATIO, type PaperPage } from "../paper/paper-page";
import { demonstrationSteps } from "./demonstration-steps";
import { startStepLayers } from "./step-layers";

/** The pages' layout, millimetres. */
const MARGIN_MM = 12;
const TITLE_MM = 5;
const SMALL_MM = 2.6;
const SENTENCE_MM = 4.2;
const WORDS_HIGH_MM = 40;
const HEAD_HIGH_MM = 14;

export const CAUTION = "A teaching sketch is not a construction drawing: local codes and licensed practice decide.";

/** A demonstration as numbered step pictures, one to a page of the paper laid across. */
export function stepPages(exercise: Exercise, paper: Paper): readonly PaperPage[] {
  const steps = demonstrationSteps(exercise);
  const { widthMm: heightMm, heightMm: widthMm } = paperSize(paper);
  const [wide, high] = [widthMm - 2 * MARGIN_MM, heightMm - 2 * MARGIN_MM];
  const layers = startStepLayers(exercise, steps, {
    width: wide,
    height: high - HEAD_HIGH_MM - WORDS_HIGH_MM,
    letters: 1,
  });
  return steps.map((step) => {
    const line = (id: string, x: number, y: number, text: string, heightMm: number, end = false) =>
      makeLettering(id, [x, y], text, { heightMm, anchor: end ? "end" : "start", face: "plain" });
    const wordsTop = -(MARGIN_MM + high - WORDS_HIGH_MM);
    const words = layOutText("sentence", step.sentence, {
      at: [MARGIN_MM, wordsTop - 6],
      widthMm: wide,
      heightMm: SENTENCE_MM,
    });
    const list = [
      makeLettering("title", [MARGIN_MM, -MARGIN_MM - TITLE_MM], `${step.number}  ${step.title}`, {
        heightMm: TITLE_MM,
        anchor: "start",
      }),
      line("part", MARGIN_MM + wide, -MARGIN_MM - TITLE_MM, step.part, SMALL_MM, true),
      ...words.list,
      line("caution", MARGIN_MM, -MARGIN_MM - high, `${exercise.title}. ${CAUTION}`, SMALL_MM * 0.8),
      line("number", MARGIN_MM + wide, -MARGIN_MM - high, `${step.number} of ${steps.length}`, SMALL_MM, true),
    ];
    return {
      title: `${exercise.title}: step ${step.number}`,
      widthMm,
      heightMm,
      layers: [...layers(step, [MARGIN_MM, MARGIN_MM + HEAD_HIGH_MM]), { list, scaleRatio: PAPER_RATIO, at: [0, 0] }],
    };
  });
}
