import { countElements, MAX_ELEMENTS } from "../../exercise/limits";
import type { Plan } from "../../plan/plan";
import type { Draft } from "../draft";
import type { Edit, Edited } from "../edit";
import { addOpening, addPoint, addThing } from "./add-things";
import { addWalls } from "./add-walls";
import { bringWalls } from "./bring-walls";
import { moveCorner, renameCorner, setWallLength, splitWall } from "./change-corners";
import { changeOpening, changeThing, changeWall } from "./change-things";
import { type Changed, refuse } from "./changed";
import { checkEdit } from "./check-edit";
import { copyMirrored, copyThings } from "./copy-things";
import { mirrorThings, moveThings, turnThings } from "./place-things";
import { addPlatformCorner, takePlatformCorner } from "./platform-corners";
import { setBackWallRise, setSheet, setStage, setViewer } from "./set-stage";
import { setTask, setWords } from "./set-task";
import { settleMarks } from "./settle-marks";
import { takeAway } from "./take-away";

/**
 * A draft after an edit, with the things the edit made, or why it cannot be done. The draft given is not touched. Marks and
 * given points follow: renamed with their points, gone with them, and worked out anew where the order is worked out. An edit
 * that changes nothing gives back the same draft.
 */
export function applyEdit(draft: Draft, edit: Edit): Edited {
  const wrong = checkEdit(edit);
  if (wrong !== null) return refuse(wrong);
  const changed = change(draft, edit);
  if (!changed.ok) return changed;
  if (changed.draft === draft) return { ok: true, draft, made: changed.made };
  const { plan } = changed.draft.exercise;
  const parts = countParts(plan);
  if (parts > MAX_ELEMENTS && parts > countParts(draft.exercise.plan))
    return refuse(`A plan has at most ${MAX_ELEMENTS.toLocaleString("en")} parts. Take something off it first.`);
  const settled = edit.edit === "set-words" ? changed.draft : settleMarks(changed.draft, changed.renaming);
  return { ok: true, draft: settled, made: changed.made };
}

function change(draft: Draft, edit: Edit): Changed {
  switch (edit.edit) {
    case "set-stage":
      return setStage(draft, edit);
    case "set-viewer":
      return setViewer(draft, edit);
    case "set-back-wall-rise":
      return setBackWallRise(draft, edit);
    case "set-sheet":
      return setSheet(draft, edit);
    case "add-walls":
      return addWalls(draft, edit);
    case "bring-walls":
      return bringWalls(draft, edit);
    case "add-point":
      return addPoint(draft, edit);
    case "add-opening":
      return addOpening(draft, edit);
    case "add-platform":
    case "add-stair":
    case "add-furniture":
    case "add-column":
    case "add-masking":
      return addThing(draft, edit);
    case "change-wall":
      return changeWall(draft, edit);
    case "change-opening":
      return changeOpening(draft, edit);
    case "change-platform":
    case "change-stair":
    case "change-furniture":
    case "change-column":
    case "change-masking":
      return changeThing(draft, edit);
    case "add-platform-corner":
      return addPlatformCorner(draft, edit);
    case "take-platform-corner":
      return takePlatformCorner(draft, edit);
    case "rename-corner":
      return renameCorner(draft, edit);
    case "move-corner":
      return moveCorner(draft, edit);
    case "set-wall-length":
      return setWallLength(draft, edit);
    case "split-wall":
      return splitWall(draft, edit);
    case "move":
      return moveThings(draft, edit);
    case "turn":
      return turnThings(draft, edit);
    case "copy":
      return copyThings(draft, edit);
    case "mirror":
      return edit.copy ? copyMirrored(draft, edit) : mirrorThings(draft, edit);
    case "take-away":
      return takeAway(draft, edit);
    case "set-task":
      return setTask(draft, edit);
    case "set-words":
      return setWords(draft, edit);
  }
}

function countParts(plan: Plan): number {
  return countElements({ ...plan, corners: plan.corners.size });
}
