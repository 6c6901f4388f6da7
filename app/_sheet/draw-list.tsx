import { memo } from "react";
import type { DisplayList, Lettering, Stroke } from "@/lib/drawing/display-list";
import { handPath, ruledPath } from "@/lib/drawing/hand-stroke";
import { CAP_SHARE, letteringBox } from "@/lib/drawing/lettering-box";
import { tenThousandths, toPaper } from "./view";

type Props = { readonly list: DisplayList; readonly scaleRatio: number; readonly prefix?: string };

/** Draws a display list in paper millimetres. It never depends on the view, so zooming re-renders nothing. */
export const DrawList = memo(function DrawList({ list, scaleRatio, prefix = "" }: Props) {
  return list.map((item) =>
    item.kind === "stroke" ? (
      <DrawnStroke key={`${prefix}${item.id}`} stroke={item} scaleRatio={scaleRatio} />
    ) : (
      <Letters key={`${prefix}${item.id}`} lettering={item} scaleRatio={scaleRatio} />
    ),
  );
});

function DrawnStroke({ stroke, scaleRatio }: { readonly stroke: Stroke; readonly scaleRatio: number }) {
  const points = stroke.points.map((point) => toPaper(point, scaleRatio));
  const ruled = ruledPath(points, stroke.closed);
  if (stroke.fillOnly) return <path d={ruled} className={`tone-${stroke.fill}`} />;
  const line = stroke.hand ? handPath(points, stroke.id, { unitsPerMm: 1, closed: stroke.closed }) : ruled;
  const classes = `stroke w-${stroke.weight} l-${stroke.line} p-${stroke.pencil}${stroke.faint ? " faint" : ""}`;
  return (
    <>
      {stroke.fill !== "none" && <path d={ruled} className={`tone-${stroke.fill}`} />}
      <path d={line} className={classes} data-stroke={stroke.id} />
    </>
  );
}

/** Letters are part of the paper: they grow with it, and need no transform of their own, which a browser pays for. */
function Letters({ lettering, scaleRatio }: { readonly lettering: Lettering; readonly scaleRatio: number }) {
  const { heightMm } = lettering;
  const [x, y] = toPaper(lettering.at, scaleRatio);
  const [right, up] = lettering.shiftMm;
  const box = lettering.boxed && letteringBox(lettering);
  const text = (
    <text
      className={`letters p-${lettering.pencil}${lettering.faint ? " faint" : ""}`}
      textAnchor={lettering.anchor}
      x={tenThousandths(x + right)}
      y={tenThousandths(y - up)}
      fontSize={tenThousandths(heightMm / CAP_SHARE)}
    >
      {lettering.text}
    </text>
  );
  if (!box) return text;
  const corners = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ] as const;
  const d = ruledPath(
    corners.map(([across, above]) => [tenThousandths(x + across), tenThousandths(y - above)] as const),
    true,
  );
  return (
    <>
      <path d={d} className="tone-paper" />
      <path d={d} className={`stroke w-thin p-${lettering.pencil}`} />
      {text}
    </>
  );
}
