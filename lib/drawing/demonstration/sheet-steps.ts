import type { Exercise } from "../../exercise/exercise";
import { exercisePoints } from "../../exercise/exercise-points";
import { printLength } from "../../measure/print-length";
import { sayAcross } from "../../plan/say-place";
import { sayPoint } from "../../plan/say-point";
import { NOTHING_LIT, SHEET_PARTS, type Shown, type UnnumberedStep } from "./demonstration-step";

type Words = { readonly title: string; readonly sentence: string; readonly ask: string };

/**
 * The plan alone, then the empty sheet part by part, then what is given on it; for reading back, the picture before the plan.
 * Everything is said with the exercise's own figures.
 */
export function sheetSteps(exercise: Exercise): readonly UnnumberedStep[] {
  const parts = [proscenium, plasterRule, horizon, cvp, stageFloor].map((say, i) =>
    step(say(exercise), { parts: SHEET_PARTS.slice(0, i + 1) }),
  );
  const given = givenWords(exercise);
  const whole = { parts: SHEET_PARTS, placed: exercise.task.given };
  if (exercise.task.kind === "picture-to-plan")
    return [...parts, step(readingWords(exercise), { ...whole, toRead: true })];
  return [step(planWords(exercise), {}), ...parts, ...(given ? [step(given, whole)] : [])];
}

function step({ title, sentence, ask }: Words, shown: Partial<Shown>): UnnumberedStep {
  return {
    kind: "sheet",
    point: null,
    title,
    part: "The empty sheet",
    sentence,
    note: { worth: "", watch: [], ask },
    shown: {
      parts: [],
      placed: [],
      lines: [],
      drawn: 0,
      lit: NOTHING_LIT,
      fresh: null,
      toRead: false,
      finished: false,
      ...shown,
    },
  };
}

function planWords({ stage, units }: Exercise): Words {
  return {
    title: "The ground plan",
    sentence: `The set seen from above. The audience is at the foot of the sheet; the back wall is ${printLength(stage.depth, units)} upstage of the plaster line.`,
    ask: "Which way is stage left on the plan, and which way will it be in the picture?",
  };
}

function readingWords({ task }: Exercise): Words {
  return {
    title: "The picture to read",
    sentence: `This is what the audience sees. ${task.marks.length} places of the floor are to be found on the plan, where only the stage is drawn.`,
    ask: "Which of these corners stands farthest upstage? How can you tell?",
  };
}

function proscenium({ stage, units }: Exercise): Words {
  const { width, height } = stage.opening;
  return {
    title: "The proscenium opening",
    sentence: `Draw the opening at its true size: ${printLength(width, units)} wide and ${printLength(height, units)} high.`,
    ask: "Why may the opening be drawn at scale, and nothing upstage of it?",
  };
}

function plasterRule({ units }: Exercise): Words {
  return {
    title: "The plaster line and its rule",
    sentence: `The opening stands on the plaster line. On it everything is true size: the rule counts ${units === "m" ? "metres" : "feet"} both ways from the centre line.`,
    ask: "Where else in the picture is a measurement true?",
  };
}

function horizon({ viewer, units }: Exercise): Words {
  return {
    title: "The horizon",
    sentence: `The horizon is as high as the eye: ${printLength(viewer.eyeHeight, units)} above the stage floor at the plaster line.`,
    ask: "Would someone in a higher seat see more of the floor, or less?",
  };
}

function cvp({ viewer, units }: Exercise): Words {
  const where = sayAcross(viewer.offset, units);
  return {
    title: "The centre vanishing point",
    sentence: `The CVP lies on the horizon straight before the eye, ${where}. All level lines square to the plaster line run to it.`,
    ask: "Which lines of this plan run to the CVP?",
  };
}

function stageFloor({ stage, units }: Exercise): Words {
  const depth = printLength(stage.depth, units);
  return {
    title: stage.rake === 0 ? "The floor and the back wall" : "The raked floor and the back wall",
    sentence:
      stage.rake === 0
        ? `From the corners of the opening the sides of the floor run to the CVP, as far as the back wall, ${depth} upstage.`
        : `The floor rises upstage, 1 in ${Number((1 / stage.rake).toFixed(1))}: its sides run to a point above the CVP, as far as the back wall, ${depth} upstage.`,
    ask: "The middle of the depth: is it half way up the drawn floor, higher or lower?",
  };
}

function givenWords(exercise: Exercise): Words | null {
  const points = exercisePoints(exercise);
  const names = exercise.task.given.flatMap((name) => {
    const point = points.get(name);
    return point ? [sayPoint(point)] : [];
  });
  const last = names.at(-1);
  if (last === undefined) return null;
  const list =
    names.length > GIVEN_NAMED
      ? `${names.length} points of the set`
      : names.length === 1
        ? last
        : `${names.slice(0, -1).join(", ")} and ${last}`;
  return {
    title: "What is given",
    sentence: `Drawn already: ${list}. The rest is found from here.`,
    ask: "What do the lines that are there already tell about the ones to come?",
  };
}

/** More given points than this are counted, not named. */
const GIVEN_NAMED = 4;
