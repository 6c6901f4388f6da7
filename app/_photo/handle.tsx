import { AtPoint } from "@/app/_sheet/end-marks";

/** How a handle differs: by its ring, its letters and its size, not by colour alone. */
export type HandleLook = "sure" | "doubtful" | "settled" | "selected";

type Props = {
  readonly at: readonly [number, number];
  readonly scaleRatio: number;
  readonly look: HandleLook;
  /** What stands beside it: its number. */
  readonly letters: string;
};

/** One point on the photograph that can be dragged. */
export function Handle({ at, scaleRatio, look, letters }: Props) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <g className="handle" data-look={look}>
        {look === "selected" && <circle r={19} className="held-ring" />}
        <circle r={9} className="mark-halo" />
        <circle r={9} className="handle-ring" />
        {look === "selected" && <path d="M-17 0H-4M4 0H17M0 -17V-4M0 4V17" className="mark-hair" />}
        <circle r={1.3} className="mark-point" />
        <text x={13} y={-11} className="letters mark-letters handle-letters">
          {look === "doubtful" ? `${letters} ?` : letters}
        </text>
      </g>
    </AtPoint>
  );
}
