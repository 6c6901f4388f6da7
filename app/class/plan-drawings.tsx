import { StillDrawing } from "@/app/_sheet/still-drawing";
import { type Bounds, toPaper } from "@/app/_sheet/view";
import { displayBounds } from "@/lib/drawing/display-bounds";
import type { DisplayList } from "@/lib/drawing/display-list";
import { drawEdges, OWN_LINES } from "@/lib/drawing/draw-edges";
import { drawPlan } from "@/lib/drawing/draw-plan";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { listEdges } from "@/lib/plan/list-edges";
import "./plan-drawings.css";

/** White paper round a drawing, millimetres. */
const MARGIN_MM = 4;
/** About so wide a drawing stands on the page, pixels. */
const WIDTH_PX = 420;
/** Its lines are as on a sheet that is looked at, whatever its scale, pixels to the millimetre. */
const LINE_PX_PER_MM = 2.4;

/** A plan as it is known again by: the set seen through its opening, and the ground plan. Lettering is left out. */
export function PlanDrawings({ exercise }: { readonly exercise: Exercise }) {
  const { title, plan, stage } = exercise;
  const points = exercisePoints(exercise);
  const places = new Map(
    [...points].flatMap(([name, point]) => (point.picture ? [[name, point.picture] as const] : [])),
  );
  const half = stage.opening.width / 2;
  const picture = [
    ...drawSheetPicture(exercise).filter(isLine),
    ...drawEdges(listEdges(plan, points), places, OWN_LINES, { plan, points }),
  ];
  const ground = drawPlan(exercise).filter(isLine);
  const box = displayBounds(ground, exercise.scaleRatio);
  return (
    <div className="plan-drawings">
      <Drawing
        exercise={exercise}
        list={picture}
        bounds={{ left: -half, right: half, bottom: 0, top: stage.opening.height }}
        label={`The set of "${title}" seen through its proscenium`}
      />
      {box && (
        <Drawing
          exercise={exercise}
          list={ground}
          bounds={{ left: box[0], right: box[2], bottom: box[1], top: box[3] }}
          label={`The ground plan of "${title}"`}
        />
      )}
    </div>
  );
}

type DrawingProps = {
  readonly exercise: Exercise;
  readonly list: DisplayList;
  readonly bounds: Bounds;
  readonly label: string;
};

function Drawing({ exercise: { scaleRatio }, list, bounds, label }: DrawingProps) {
  const room = (MARGIN_MM * scaleRatio) / 1000;
  const { left, right, bottom, top } = bounds;
  const wide = { left: left - room, right: right + room, bottom: bottom - room, top: top + room };
  const widthMm = toPaper([wide.right, 0], scaleRatio)[0] - toPaper([wide.left, 0], scaleRatio)[0];
  return (
    <StillDrawing
      list={list}
      bounds={wide}
      scaleRatio={scaleRatio}
      pxPerMm={WIDTH_PX / widthMm}
      linePxPerMm={LINE_PX_PER_MM}
      label={label}
    />
  );
}

function isLine(item: DisplayList[number]): boolean {
  return item.kind === "stroke";
}
