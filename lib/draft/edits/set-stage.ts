import { sheetScaleRatio } from "../../exercise/limits";
import { printLength } from "../../measure/print-length";
import { FOOT_SCALES, METRIC_SCALES } from "../../measure/scale";
import type { Stage } from "../../stage/stage";
import { distanceForBackWallRise, type Viewer } from "../../stage/viewer";
import type { Draft } from "../draft";
import { type Changed, type EditOf, refuse } from "./changed";

/** Another stage. An eye that was set by the back wall's foot goes where it shows it as high as before. */
export function setStage(draft: Draft, { stage }: EditOf<"set-stage">): Changed {
  return withView(draft, stage, draft.exercise.viewer, draft.backWallRise);
}

/**
 * Another eye. Where it stands at the same distance as before and that was set by the back wall's foot, the foot stays as high
 * and the distance follows; a new distance is a distance of its own.
 */
export function setViewer(draft: Draft, { viewer }: EditOf<"set-viewer">): Changed {
  const rise = viewer.distance === draft.exercise.viewer.distance ? draft.backWallRise : null;
  return withView(draft, draft.exercise.stage, viewer, rise);
}

/** The eye so far back that the picture shows the back wall's foot so high; null leaves it where it is, on its own. */
export function setBackWallRise(draft: Draft, { rise }: EditOf<"set-back-wall-rise">): Changed {
  return withView(draft, draft.exercise.stage, draft.exercise.viewer, rise);
}

function withView(draft: Draft, stage: Stage, viewer: Viewer, rise: number | null): Changed {
  const distance = rise === null ? viewer.distance : distanceForBackWallRise(stage, viewer.eyeHeight, rise);
  if (distance === null || !Number.isFinite(distance)) return refuse(noSuchEye(draft, stage, viewer, rise ?? 0));
  const exercise = { ...draft.exercise, stage, viewer: { ...viewer, distance } };
  return { ok: true, draft: { ...draft, exercise, backWallRise: rise }, made: [] };
}

function noSuchEye(draft: Draft, stage: Stage, viewer: Viewer, rise: number): string {
  const print = (metres: number) => printLength(metres, draft.exercise.units);
  return (
    `No eye shows the back wall's foot ${print(rise)} up: it must stand above the floor there ` +
    `(${print(stage.rake * stage.depth)}) and below the eye (${print(viewer.eyeHeight)}). ` +
    "Change that height first, or give the eye a distance of its own."
  );
}

/** Another scale, or lengths shown in the other measure; nothing on the plan changes. */
export function setSheet(draft: Draft, { units, scale }: EditOf<"set-sheet">): Changed {
  const ratio = sheetScaleRatio(scale);
  if (ratio === null)
    return refuse(`"${scale}" is not a scale. Write one like ${FOOT_SCALES[2]} or ${METRIC_SCALES[1]}.`);
  const exercise = { ...draft.exercise, units, scale, scaleRatio: ratio };
  return { ok: true, draft: { ...draft, exercise }, made: [] };
}
