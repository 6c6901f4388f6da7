import { AtPoint } from "@/app/_sheet/end-marks";
import { type Bounds, toPaper } from "@/app/_sheet/view";
import type { ClassMark } from "@/lib/classroom/teach-again/read-teach-again";
import { SHARES } from "@/lib/classroom/teach-again/say-figures";
import { ellipseAxes, type Spread } from "@/lib/classroom/teach-again/spread-ellipse";
import { toPaperMm } from "@/lib/measure/scale";

/** One student's mark: a dot, or an open ring where a habit explains it. */
export function CloudMark({ mark, scaleRatio }: { readonly mark: ClassMark; readonly scaleRatio: number }) {
  return (
    <AtPoint at={mark.at} scaleRatio={scaleRatio}>
      <circle r={5} className={mark.habit === null ? "cloud-mark" : "cloud-mark habit"} />
    </AtPoint>
  );
}

type SpreadProps = { readonly spread: Spread; readonly scaleRatio: number };

/** The mean as a square, and the ellipses that hold half and nearly all of marks spread like these. */
export function SpreadMarks({ spread, scaleRatio }: SpreadProps) {
  if (spread.kind === "few") return null;
  const [x, y] = toPaper(spread.mean, scaleRatio);
  const mean = (
    <AtPoint at={spread.mean} scaleRatio={scaleRatio}>
      <path d="M-6 -6H6V6H-6Z" className="cloud-mean" />
    </AtPoint>
  );
  if (spread.kind === "one-place") return mean;
  const turnDeg = (-spread.turn * 180) / Math.PI;
  return (
    <>
      {SHARES.map((share) => {
        const [long, short] = ellipseAxes(spread, share).map((metres) => toPaperMm(metres, scaleRatio));
        return (
          <ellipse
            key={share}
            cx={x}
            cy={y}
            rx={long}
            ry={short}
            transform={`rotate(${turnDeg} ${x} ${y})`}
            className={share === SHARES[0] ? "cloud-ring" : "cloud-ring outer"}
          />
        );
      })}
      {mean}
    </>
  );
}

/** The part that is seen from close by, on the whole sheet. */
export function CloseFrame({ bounds, scaleRatio }: { readonly bounds: Bounds; readonly scaleRatio: number }) {
  const [x, y] = toPaper([bounds.left, bounds.top], scaleRatio);
  const [right, bottom] = toPaper([bounds.right, bounds.bottom], scaleRatio);
  return <rect x={x} y={y} width={right - x} height={bottom - y} className="cloud-frame" />;
}
