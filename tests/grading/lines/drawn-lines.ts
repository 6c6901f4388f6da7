import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { judgeLines } from "@/lib/grading/lines/judge-lines";
import type { LinesJudgement, PaperLine } from "@/lib/grading/lines/judgement";
import { listEdges } from "@/lib/plan/list-edges";
import type { PicturePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";

/** Every edge of an exercise's set that the eye sees both ends of, drawn as `viewer` sees it, each end moved by `slip`. */
export function drawEdges(
  exercise: Exercise,
  viewer: Viewer = exercise.viewer,
  slip: (at: PicturePoint) => PicturePoint = (at) => at,
): readonly PaperLine[] {
  const points = exercisePoints({ ...exercise, viewer });
  return listEdges(exercise.plan, points).flatMap(({ from, to }) => {
    const [a, b] = [points.get(from)?.picture, points.get(to)?.picture];
    return a && b ? [{ from, to, at: [slip(a), slip(b)] as const }] : [];
  });
}

export type Judged = Extract<LinesJudgement, { readonly kind: "judged" }>;

/** The judgement of lines of a picture. */
export function judged(exercise: Exercise, lines: readonly PaperLine[]): Judged {
  const judgement = judgeLines(exercise, lines);
  if (judgement.kind !== "judged") throw new Error("The lines were not judged.");
  return judgement;
}
