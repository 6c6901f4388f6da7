import type { TaskKind } from "../exercise/exercise";
import { toPaperMm } from "../measure/scale";
import { capital } from "../plan/first-letter";
import type { PicturePoint } from "../stage/frame";
import type { Judged } from "./judge-mark";

/** Errors smaller than this along one axis are not worth a word, mm. */
const WORTH_SAYING_MM = 0.1;

/** Where a mark lies on the sheet against the truth: "3.1 mm low and 0.4 mm left on the sheet". Right and left on paper. */
function sayOffset(at: PicturePoint, target: PicturePoint, scaleRatio: number, where: string): string {
  const right = toPaperMm(at[0] - target[0], scaleRatio);
  const up = toPaperMm(at[1] - target[1], scaleRatio);
  const parts = [
    { size: Math.abs(up), words: `${millimetres(up)} ${up > 0 ? "high" : "low"}` },
    { size: Math.abs(right), words: `${millimetres(right)} ${right > 0 ? "right" : "left"}` },
  ]
    .filter(({ size }) => size >= WORTH_SAYING_MM / 2)
    .sort((a, b) => b.size - a.size);
  return parts.length === 0 ? "exactly on the mark" : `${parts.map(({ words }) => words).join(" and ")} ${where}`;
}

/** A place read back is measured in the picture, with that place drawn into it. */
const WHERE: Readonly<Record<TaskKind, string>> = {
  "plan-to-picture": "on the sheet",
  "picture-to-plan": "in the picture, were your place drawn back into it",
};

export function sayWhere(
  judged: Judged,
  kind: TaskKind,
  within: boolean,
  toleranceMm: number,
  scaleRatio: number,
): string {
  if (!judged.seen || judged.offMm === null) return "This place lies behind the eye, so the picture cannot show it.";
  const offset = sayOffset(judged.seen, judged.target, scaleRatio, WHERE[kind]);
  if (!within) return `${capital(offset)}.`;
  return judged.offMm < WORTH_SAYING_MM / 2
    ? "Right: exactly on the mark."
    : `Right: ${offset}, within the ${millimetres(toleranceMm)} a hand is allowed here.`;
}

function millimetres(mm: number): string {
  return `${Math.abs(mm).toFixed(1)} mm`;
}
