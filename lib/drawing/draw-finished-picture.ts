import type { Exercise } from "../exercise/exercise";
import type { SolidLine } from "../plan/solids/solid";
import type { PlanPoint } from "../stage/frame";
import type { DisplayList, Stroke } from "./display-list";
import { finishedScene } from "./finished/finished-scene";
import { frameStrokes } from "./finished/frame-strokes";
import { hatchLines } from "./finished/hatch-lines";
import { joinHatching } from "./finished/join-hatching";
import { type JoinPiece, joinPieces } from "./finished/join-pieces";
import { lookThrough } from "./finished/look-through";
import { shadowLines } from "./finished/shadow-lines";
import { type Pencilled, weighPiece } from "./finished/weigh-piece";
import { drawOnce } from "./hidden-lines/draw-once";
import { type VisibleLine, visibleLines } from "./hidden-lines/visible-lines";
import { makeStroke } from "./make-stroke";

export type FinishedOptions = {
  /** Drawn by hand; ruled when false. */
  readonly hand?: boolean;
  /** Where a figure stands for scale; none when left out. */
  readonly figureAt?: PlanPoint | null;
  /** What its ids start with. */
  readonly idPrefix?: string;
};

/** Hatching reaches so many times the opening's width and height away from it. */
const FRAMES_AWAY = 2;

/**
 * The set as a draughtsman would leave it: a display list in picture metres, [X, Z]. The proscenium, the stage and the set with
 * hidden lines removed, in three weights, with pencil hatching on what is turned from the light (`TO_LIGHT`). No horizon, rule
 * or lettering. `hand` strokes are steady at any zoom: ids are those of the set's own lines.
 */
export function drawFinishedPicture(
  { plan, stage, viewer, scaleRatio }: Pick<Exercise, "plan" | "stage" | "viewer" | "scaleRatio">,
  { hand = true, figureAt = null, idPrefix = "finished" }: FinishedOptions = {},
): DisplayList {
  const mm = scaleRatio / 1000;
  const { faces, lines } = finishedScene({ plan, stage, viewer }, figureAt);
  const gaze = lookThrough(faces, viewer, stage);

  const backings = new Set(plan.masking.filter(({ kind }) => kind === "backing").map(({ id }) => id));
  const paper = { mm, reach: FRAMES_AWAY * (stage.opening.width + stage.opening.height + stage.apron) };
  const hatching = [
    ...hatchLines(faces, gaze.faces, backings, viewer, paper),
    ...shadowLines(faces, plan, stage, viewer, paper),
  ];
  const hatched = joinHatching(visibleLines({ faces, lines: hatching }, viewer), hatching, mm);

  const once = drawOnce(visibleLines({ faces, lines }, viewer), (piece) => rankOf(press(piece)));
  const styled = once.map((piece): JoinPiece => {
    const { id } = lines[piece.line] as SolidLine;
    const { weight, faint } = press(piece);
    return {
      id,
      stem: id.replace(/\.\d+$/, ""),
      style: faint ? `${weight} faint` : weight,
      from: piece.from,
      to: piece.to,
    };
  });
  const drawn = joinPieces(styled).map(({ id, style, points, closed }) => {
    const [weight, faint] = style.split(" ") as [Pencilled["weight"], string?];
    return makeStroke(`${idPrefix}.${id}`, points, { closed, weight, faint: faint !== undefined, hand });
  });
  return [
    ...frameStrokes(faces, stage, viewer, { hand, idPrefix }),
    ...hatched.map(({ id, points }) => makeStroke(`${idPrefix}.hatch.${id}`, points, { faint: true, hand })),
    ...drawn.filter(isFaint),
    ...drawn.filter((stroke) => !isFaint(stroke) && stroke.weight === "thin"),
    ...drawn.filter((stroke) => !isFaint(stroke) && stroke.weight !== "thin"),
  ];

  function press(piece: VisibleLine): Pencilled {
    const line = lines[piece.line] as SolidLine;
    const middle = (piece.start + piece.end) / 2;
    const of = faces[line.faces[0] ?? -1]?.kind ?? null;
    return weighPiece(piece, line, of, gaze, depthAlong(line, middle, viewer.distance), mm);
  }
}

function isFaint({ faint }: Stroke): boolean {
  return faint;
}

function rankOf({ weight, faint }: Pencilled): number {
  return weight === "thin" ? (faint ? 2 : 1) : 0;
}

/** How far upstage of the eye a point of a line lies that is so far along it in the picture: 1 / depth goes evenly. */
function depthAlong({ from, to }: SolidLine, share: number, distance: number): number {
  const [near, far] = [distance + from[1], distance + to[1]];
  return 1 / ((1 - share) / near + share / far);
}
