import { StillDrawing } from "@/app/_sheet/still-drawing";
import { drawEdges, OWN_LINES } from "@/lib/drawing/draw-edges";
import { drawFigure } from "@/lib/drawing/draw-figure";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { listEdges } from "@/lib/plan/list-edges";

/** White paper round the opening, metres for each metre of its width. */
const MARGIN = 0.045;
/** Where the figure stands, shares of the opening's width and the stage's depth. */
const FIGURE = [-0.12, 0.22] as const;

/** One of the course's own sets, drawn true. */
export function CoverDrawing({ exercise }: { readonly exercise: Exercise }) {
  const { stage, plan, scaleRatio } = exercise;
  const points = exercisePoints(exercise);
  const places = new Map(
    [...points].flatMap(([name, point]) => (point.picture ? [[name, point.picture] as const] : [])),
  );
  const half = stage.opening.width / 2;
  const room = stage.opening.width * MARGIN;
  const list = [
    ...drawSheetPicture(exercise).filter((item) => item.kind === "stroke"),
    ...drawEdges(listEdges(plan, points), places, OWN_LINES, { plan, points }),
    ...drawFigure(exercise, [stage.opening.width * FIGURE[0], stage.depth * FIGURE[1]]),
  ];
  return (
    <StillDrawing
      list={list}
      bounds={{ left: -half - room, right: half + room, bottom: -room * 1.3, top: stage.opening.height + room }}
      scaleRatio={scaleRatio}
      pxPerMm={2.6}
      label={`The set of "${exercise.title}" seen through its proscenium`}
    />
  );
}
