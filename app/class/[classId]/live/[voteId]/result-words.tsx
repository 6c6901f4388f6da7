import type { RoundResult, VoteResult } from "@/lib/classroom/live/vote-result";
import { type Advice, WORTH_AGAIN } from "@/lib/classroom/live/vote-stage";
import { toPaperMm } from "@/lib/measure/scale";

/** Fewer marks than this say little of a class; common practice, no source. */
const FEW = 8;

/** The sign never stands on a line by itself. */
const percent = (share: number) => `${Math.round(share * 100)}\u00a0%`;

const ADVICE: Readonly<Record<Advice, string>> = {
  explain: `Fewer than ${percent(WORTH_AGAIN.least)} are right. Explain it once more before they place it again.`,
  again: `Between ${percent(WORTH_AGAIN.least)} and ${percent(WORTH_AGAIN.most)} are right: talk it over with a neighbour, then place it again.`,
  "go-on": `More than ${percent(WORTH_AGAIN.most)} are right. Have someone say why, and go on.`,
};

const SHAPES = { newest: "rings", before: "triangles" } as const;

/** What the marks say, in words: how many are right, how far they scatter, and what went wrong. */
export function ResultWords({ result, scaleRatio }: { readonly result: VoteResult; readonly scaleRatio: number }) {
  const { rounds, truth, stage } = result;
  const shown = rounds.slice(-2);
  const newest = shown.at(-1);
  if (!newest) return null;
  return (
    <div className="vote-result">
      {shown.map((round) => (
        <RoundWords
          key={round.round}
          round={round}
          scaleRatio={scaleRatio}
          shape={shown.length === 1 ? null : round === newest ? SHAPES.newest : SHAPES.before}
        />
      ))}
      {stage.state === "revealed" && newest.marks.length > 0 && <p className="vote-advice">{ADVICE[newest.advice]}</p>}
      {truth && <p>The red cross is the true point; within {result.toleranceMm.toFixed(1)} mm of paper is right.</p>}
      {newest.habits.length > 0 && (
        <>
          <p>Marks that look like a wrong idea:</p>
          <ul>
            {newest.habits.map(({ name, count }) => (
              <li key={name}>
                {name}: {count} ({percent(count / newest.marks.length)})
              </li>
            ))}
          </ul>
        </>
      )}
      {newest.marks.length > 0 && newest.marks.length < FEW && (
        <p className="vote-quiet">So few marks say little of a class.</p>
      )}
    </div>
  );
}

type RoundProps = { readonly round: RoundResult; readonly scaleRatio: number; readonly shape: string | null };

function RoundWords({ round: { round, marks, within, cloud }, scaleRatio, shape }: RoundProps) {
  const { spread } = cloud;
  const mm = (metres: number) => Math.round(toPaperMm(metres, scaleRatio));
  return (
    <div data-round={round}>
      <p className="vote-share">
        {shape && (
          <>
            Round {round} ({shape}):{" "}
          </>
        )}
        {marks.length === 0
          ? "nobody placed it."
          : `${within} of ${marks.length} right, ${percent(within / marks.length)}.`}
      </p>
      {spread.kind === "ellipse" && (
        <p className="vote-quiet">
          Two in three lie in the {shape === SHAPES.before ? "dotted" : "dashed"} ellipse, {mm(2 * spread.halfLong)} by{" "}
          {mm(2 * spread.halfShort)} mm of paper about the mean.
        </p>
      )}
    </div>
  );
}
