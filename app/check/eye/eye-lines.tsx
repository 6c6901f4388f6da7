import { BOARD_RATIO } from "@/app/_photo/corner-lines";
import { AtPoint, PlainLine } from "@/app/_sheet/end-marks";
import type { WhoseEye } from "@/lib/perspective/whose-eye/eye-answer";
import type { DrawingPlace, MarkedDrawing } from "@/lib/perspective/whose-eye/marked-drawing";
import { GROUP_LETTERS } from "./eye-work";

type Props = {
  readonly drawing: MarkedDrawing;
  readonly eye: WhoseEye | null;
  readonly left: number;
  readonly right: number;
};

/** What is marked, and over it in blue what follows: lines led on to where they meet, the horizon, the CVP. */
export function EyeLines({ drawing, eye, left, right }: Props) {
  const { parallels, uprights, rectangle, length } = drawing;
  const horizon = eye?.kind === "told" ? (eye.figures.horizon?.value ?? null) : null;
  const cvp = eye?.kind === "told" ? (eye.figures.cvp?.value ?? null) : null;
  return (
    <g className="eye-lines">
      {parallels.map(({ lines }, g) => {
        const meeting = eye?.meetings[g];
        const letter = GROUP_LETTERS[g] ?? "";
        return (
          <g key={letter} data-group={letter}>
            {lines.map((ends) => (
              <Marked key={String(ends)} from={ends[0]} to={ends[1]} kind={letter} />
            ))}
            {meeting?.kind === "point" &&
              lines.map((ends) => (
                <PlainLine
                  key={String(ends)}
                  from={nearer(ends, meeting.at)}
                  to={meeting.at}
                  scaleRatio={BOARD_RATIO}
                  className="eye-led"
                />
              ))}
            {meeting?.kind === "point" && <Found at={meeting.at} letters={letter} />}
          </g>
        );
      })}
      {uprights.map((ends) => (
        <Marked key={String(ends)} from={ends[0]} to={ends[1]} kind="U" />
      ))}
      {rectangle?.corners.map((corner, i) => (
        <Marked key={String(corner)} from={corner} to={rectangle.corners[(i + 1) % 4] as DrawingPlace} kind="F" />
      ))}
      {eye?.kind === "told" &&
        horizon !== null &&
        rectangle &&
        eye.sidesVanishAt.map((X, i) =>
          X === null ? null : (
            // biome-ignore lint/suspicious/noArrayIndexKey: the two pairs of sides, in their order
            <g key={i}>
              {sidesOf(rectangle.corners, i).map((side) => (
                <PlainLine
                  key={String(side)}
                  from={nearer(side, [X, horizon])}
                  to={[X, horizon]}
                  scaleRatio={BOARD_RATIO}
                  className="eye-led"
                />
              ))}
              <Found at={[X, horizon]} letters={i === 0 ? "F 1–2" : "F 2–3"} before />
            </g>
          ),
        )}
      {length && <Marked from={length.ends[0]} to={length.ends[1]} kind="L" />}
      {horizon !== null && (
        <g data-horizon={horizon}>
          <PlainLine
            from={[left, horizon]}
            to={[right, horizon]}
            scaleRatio={BOARD_RATIO}
            className="eye-horizon-halo"
          />
          <PlainLine from={[left, horizon]} to={[right, horizon]} scaleRatio={BOARD_RATIO} className="eye-horizon" />
          <AtPoint at={[left, horizon]} scaleRatio={BOARD_RATIO}>
            <text x={8} y={-7} className="letters eye-letters">
              horizon
            </text>
          </AtPoint>
        </g>
      )}
      {horizon !== null && cvp !== null && (
        <AtPoint at={[cvp, horizon]} scaleRatio={BOARD_RATIO}>
          <path d="M-10 0H10M0 -10V10" className="eye-found" />
          <circle r={6} className="eye-found" />
          <text x={10} y={20} className="letters eye-letters">
            CVP
          </text>
        </AtPoint>
      )}
    </g>
  );
}

function Marked({ from, to, kind }: { readonly from: DrawingPlace; readonly to: DrawingPlace; readonly kind: string }) {
  return (
    <g data-kind={kind}>
      <PlainLine from={from} to={to} scaleRatio={BOARD_RATIO} className="eye-marked-halo" />
      <PlainLine from={from} to={to} scaleRatio={BOARD_RATIO} className="eye-marked" />
    </g>
  );
}

/** Where lines meet: a small blue square. */
function Found({
  at,
  letters,
  before = false,
}: {
  readonly at: DrawingPlace;
  readonly letters: string;
  /** Left of it, where another's letters stand to the right. */
  readonly before?: boolean;
}) {
  return (
    <AtPoint at={at} scaleRatio={BOARD_RATIO}>
      <path d="M-5 -5H5V5H-5Z" className="eye-found" />
      <text x={before ? -8 : 8} y={-8} textAnchor={before ? "end" : "start"} className="letters eye-letters">
        {letters}
      </text>
    </AtPoint>
  );
}

function nearer([a, b]: readonly [DrawingPlace, DrawingPlace], at: DrawingPlace): DrawingPlace {
  return Math.hypot(a[0] - at[0], a[1] - at[1]) <= Math.hypot(b[0] - at[0], b[1] - at[1]) ? a : b;
}

/** The rectangle's two sides of one pair. */
function sidesOf([a, b, c, d]: readonly [DrawingPlace, DrawingPlace, DrawingPlace, DrawingPlace], pair: number) {
  return pair === 0
    ? ([
        [a, b],
        [d, c],
      ] as const)
    : ([
        [b, c],
        [a, d],
      ] as const);
}
