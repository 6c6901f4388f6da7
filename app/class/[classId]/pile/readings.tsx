import { type CheckedDrawing, isOpen } from "@/app/_photo/checked-drawing";
import { toSheet } from "@/app/_photo/places";

/** How large a ring round a reading is on the small picture, millimetres of the sheet. */
const RING_MM = 3.4;

/** The straightened drawing, small, with a ring at every reading: a doubtful one in dashes, with a question mark. */
export function Readings({ drawing }: { readonly drawing: CheckedDrawing }) {
  const { box, picture, points, frame } = drawing;
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const missing = points.filter(({ state }) => state === "missing").length;
  return (
    <>
      <svg viewBox={`${box.left} ${box.top} ${width} ${height}`} aria-hidden="true" className="pile-picture">
        <image
          href={picture}
          x={box.left}
          y={box.top}
          width={width}
          height={height}
          preserveAspectRatio="none"
          className="photo-image"
        />
        {points.map((one) => {
          if (one.at === null) return null;
          const [right, down] = toSheet(frame, one.at);
          return (
            <g key={one.point} className="pile-ring" data-open={isOpen(one) || undefined}>
              <circle cx={right} cy={down} r={RING_MM} />
              {isOpen(one) && (
                <text x={right + RING_MM} y={down - RING_MM} className="lettering">
                  ?
                </text>
              )}
            </g>
          );
        })}
      </svg>
      {missing > 0 && <span className="pile-missing">{missing} not found</span>}
    </>
  );
}
