import { type CSSProperties, memo } from "react";
import type { DisplayList, Lettering, Stroke } from "@/lib/drawing/display-list";
import { handPath, ruledPath } from "@/lib/drawing/hand-stroke";
import { CAP_SHARE } from "@/lib/drawing/lettering-box";
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

function Letters({ lettering, scaleRatio }: { readonly lettering: Lettering; readonly scaleRatio: number }) {
  const [x, y] = toPaper(lettering.at, scaleRatio);
  const { heightMm } = lettering;
  const [right = 0, up = 0] = lettering.shiftMm.map(tenThousandths);
  return (
    <text
      className={`letters p-${lettering.pencil}${lettering.faint ? " faint" : ""}`}
      textAnchor={lettering.anchor}
      style={
        {
          "--lm": `max(var(--whole-mm) * 1px, var(--letter-min) * ${CAP_SHARE / heightMm})`,
          transform: `translate(${x}px, ${y}px) scale(var(--unit)) translate(calc(${right} * var(--lm)), calc(${-up} * var(--lm)))`,
          fontSize: `calc(${heightMm / CAP_SHARE} * var(--lm))`,
        } as CSSProperties
      }
    >
      {lettering.text}
    </text>
  );
}
