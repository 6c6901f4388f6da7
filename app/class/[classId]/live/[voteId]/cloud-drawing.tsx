"use client";

import { AtPoint, TrueMark } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import { tenThousandths, toPaper } from "@/app/_sheet/view";
import type { RoundResult, VoteResult } from "@/lib/classroom/live/vote-result";

/** Half axes of a spread that is only a line, as a share of its length: a sliver that can be seen. */
const SLIVER = 0.01;

/** The marks of the rounds: the newest as rings, the one before as small triangles, each with its mean and spread; and the truth. */
export function CloudDrawing({ result }: { readonly result: VoteResult }) {
  const { scaleRatio } = useSheet();
  const shown = result.rounds.slice(-2);
  return (
    <g data-cloud={shown.length}>
      {shown.map((round, i) => (
        <RoundCloud key={round.round} round={round} newest={i === shown.length - 1} scaleRatio={scaleRatio} />
      ))}
      {result.truth && (
        <g data-true="">
          <TrueMark at={result.truth} scaleRatio={scaleRatio} />
        </g>
      )}
    </g>
  );
}

type Props = { readonly round: RoundResult; readonly newest: boolean; readonly scaleRatio: number };

function RoundCloud({ round: { round, marks, cloud }, newest, scaleRatio }: Props) {
  return (
    <g data-round={round} className={newest ? "cloud-newest" : "cloud-before"}>
      <SpreadDrawing cloud={cloud} scaleRatio={scaleRatio} />
      {marks.map((at, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks come sorted and have nobody's name
        <AtPoint key={i} at={at} scaleRatio={scaleRatio}>
          {newest ? <circle r={5} className="cloud-mark" /> : <path d="M0 -5L4.5 3.5H-4.5Z" className="cloud-mark" />}
        </AtPoint>
      ))}
      {cloud.mean && (
        <AtPoint at={cloud.mean} scaleRatio={scaleRatio}>
          {newest ? (
            <path d="M0 -9L9 0L0 9L-9 0Z" className="cloud-mean" />
          ) : (
            <path d="M0 -8L7 6H-7Z" className="cloud-mean" />
          )}
        </AtPoint>
      )}
    </g>
  );
}

function SpreadDrawing({
  cloud: { mean, spread },
  scaleRatio,
}: Pick<RoundResult, "cloud"> & { readonly scaleRatio: number }) {
  if (!mean || spread.kind === "none") return null;
  const [x, y] = toPaper(mean, scaleRatio);
  const mm = (metres: number) => tenThousandths((metres * 1000) / scaleRatio);
  const [long, short] =
    spread.kind === "line" ? [spread.half, spread.half * SLIVER] : [spread.halfLong, spread.halfShort];
  // The drawing's second axis points up, the paper's down.
  const turnDeg = tenThousandths((-spread.turn * 180) / Math.PI);
  return (
    <ellipse
      cx={x}
      cy={y}
      rx={mm(long)}
      ry={mm(short)}
      transform={`rotate(${turnDeg} ${x} ${y})`}
      className="cloud-spread"
    />
  );
}
