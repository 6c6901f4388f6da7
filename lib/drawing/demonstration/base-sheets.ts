import type { Exercise } from "../../exercise/exercise";
import { apronDrop } from "../../exercise/inside-frame";
import { toPaperMm } from "../../measure/scale";
import { BLANK_PLAN } from "../../plan/blank-plan";
import { clearest } from "../clear-lettering";
import type { DisplayItem, DisplayList, Lettering } from "../display-list";
import { drawPlan } from "../draw-plan";
import { drawSheetPicture } from "../draw-sheet-picture";
import { textWidthMm } from "../lettering-box";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";
import { drawPlasterRule } from "../picture-parts/draw-plaster-rule";
import { thinFigures } from "./thin-figures";

const PLASTER_LINE_NAME = "plan.stage.plaster-line.name";
const RAKE_RATIO = "plan.stage.rake.ratio";
/** Letters keep this clear of a line, mm. */
const NAME_CLEAR_MM = 1.2;
/** How far the rule's figures hang, and rows closer than letters are high, mm. */
const RULE_ROOM_MM = 5.5;
const RULE_ROW_MM = 1.8;

/** The empty picture with letters that a room can read, for the exercise's scale; picture metres. */
export function pictureSheet(exercise: Exercise): DisplayList {
  const sheet = drawSheetPicture(exercise).map((item) => shortHorizon(legible(item), exercise));
  return thinFigures(sheet, isFigure, exercise.scaleRatio);
}

export type PlanSheet = {
  /** The stage: plaster line, centre line, proscenium wall. */
  readonly stage: DisplayList;
  /** The set with its corners' names. */
  readonly set: DisplayList;
  /** Letters on the pieces of the set: too many to be read at this size all at once. */
  readonly names: DisplayList;
};

/** The plan with letters that a room can read, for the exercise's scale; plan metres. */
export function planSheet(exercise: Exercise): PlanSheet {
  const plan = drawPlan(exercise).filter(isKept).map(legible);
  return {
    stage: [...plan.filter(isStage), namePlasterLine(exercise, plan)],
    set: plan.filter((item) => !isStage(item) && !isPieceName(item)),
    names: plan.filter(isPieceName),
  };
}

/** The stage in plan with nothing on it, and the true-size rule along its plaster line: what a picture is read back on to. */
export function ruledStage(exercise: Exercise): DisplayList {
  const { stage, viewer, units, scaleRatio } = exercise;
  const rule = drawPlasterRule({ ...stage, apron: 0 }, viewer, units, scaleRatio).map((item) =>
    underApron({ ...item, id: `plan.${item.id}` }, exercise),
  );
  const bare = drawPlan({ ...exercise, plan: BLANK_PLAN }).filter(isKept);
  return thinFigures([...bare, ...rule].map(legible), isFigure, scaleRatio);
}

/** Rows under the plaster line as far as the rule's figures hang, where a corner's name would be taken for one; never drawn. */
export function ruleRoom({ stage, viewer, scaleRatio }: Exercise): DisplayList {
  const half = stage.opening.width / 2;
  const mm = scaleRatio / 1000;
  const lowest = apronDrop(stage, viewer) - RULE_ROOM_MM * mm;
  const rows = Math.ceil(-lowest / (RULE_ROW_MM * mm));
  return Array.from({ length: rows }, (_, i) => {
    const z = -(i + 1) * RULE_ROW_MM * mm;
    return makeStroke(`rule.room.${i}`, [
      [-half, z],
      [half, z],
    ]);
  });
}

function isFigure({ id }: Lettering): boolean {
  return id.endsWith(".figure");
}

/** The rake's figures stand past the stage, where there is no room, and are said in a sentence; the line's name finds its own place. */
function isKept({ id }: DisplayItem): boolean {
  return id !== PLASTER_LINE_NAME && id !== RAKE_RATIO;
}

function isStage({ id }: DisplayItem): boolean {
  return id.startsWith("plan.stage");
}

function isPieceName(item: DisplayItem): boolean {
  return item.kind === "lettering" && !item.id.startsWith("plan.corner") && !isStage(item);
}

/** No letter is smaller than a note. */
export function legible(item: DisplayItem): DisplayItem {
  return item.kind === "lettering" && item.heightMm < LETTER_MM.note ? { ...item, heightMm: LETTER_MM.note } : item;
}

/** The plaster line's name goes under the line or over it, at either end, not past it: where it crosses least. */
function namePlasterLine({ stage, scaleRatio }: Exercise, items: DisplayList): DisplayItem {
  const half = stage.opening.width / 2;
  const heightMm = LETTER_MM.note;
  const places = [-heightMm - NAME_CLEAR_MM, NAME_CLEAR_MM].flatMap((up) =>
    ([1, -1] as const).map((side) =>
      makeLettering(PLASTER_LINE_NAME, [side * half, 0], "PLASTER LINE", {
        heightMm,
        anchor: side === 1 ? "end" : "start",
        shiftMm: [-side * NAME_CLEAR_MM, up],
      }),
    ),
  );
  return clearest(places, { items, scaleRatio });
}

/** The rule's figures go under the apron's edge, where no line crosses them. */
function underApron(item: DisplayItem, { stage }: Exercise): DisplayItem {
  if (item.kind !== "lettering") return item;
  return { ...item, at: [item.at[0], -stage.apron], shiftMm: [0, -LETTER_MM.note - NAME_CLEAR_MM] };
}

/** The horizon's name goes without its height where the two would reach the CVP's. */
function shortHorizon(item: DisplayItem, { stage, viewer, scaleRatio }: Exercise): DisplayItem {
  if (item.kind !== "lettering" || item.id !== "picture.horizon.name") return item;
  const room = toPaperMm(stage.opening.width / 2 + viewer.offset, scaleRatio) - 2 * item.shiftMm[0];
  return textWidthMm(item.text, item.heightMm) < room ? item : { ...item, text: "HORIZON" };
}
