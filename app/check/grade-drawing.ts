import type { Place } from "@/app/_parts/kept-work/attempt";
import { type CheckedDrawing, marksOf } from "@/app/_photo/checked-drawing";
import { type SetRoom, setRoom } from "@/app/_sheet/set-room";
import type { Exercise } from "@/lib/exercise/exercise";
import { asDrawn } from "@/lib/grading/as-drawn";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { judgeLines } from "@/lib/grading/lines/judge-lines";
import type { PaperLine } from "@/lib/grading/lines/judgement";
import { exerciseForOwnEye } from "@/lib/grading/own-eye/exercise-for-own-eye";
import type { Edge } from "@/lib/plan/edge";
import type { PicturePoint } from "@/lib/stage/frame";

/** A drawing graded, with the exercise that it was held against. */
export type GradedDrawing = {
  readonly room: SetRoom;
  readonly grade: Grade;
  /** What paper alone shows, in sentences. */
  readonly remarks: readonly string[];
  /** Why it could not be graded for the eye that the student drew; null where it was, or where none was drawn. */
  readonly eyeRefused: string | null;
};

/** A pencil line whose ends are so near to two confirmed points, millimetres of paper, is the line between them. */
const END_MM = 4;

/** Grades the confirmed points at the sheet's own scale, for the exercise's eye or for the one that the student drew. */
export function gradeDrawing(exercise: Exercise, drawing: CheckedDrawing): GradedDrawing {
  const { ratio } = drawing.frame;
  const own = drawing.ownEye && exerciseForOwnEye(exercise, drawing.ownEye, ratio);
  const held = own?.kind === "ready" ? own.exercise : exercise;
  const set = marksOf(drawing);
  const printed = asDrawn({ ...held, scale: drawing.scale, scaleRatio: ratio }, set);
  const room = setRoom(printed);
  const judged = judgeLines(printed, drawnLines(drawing, room.edges), ratio);
  return {
    room,
    grade: gradeMarks(printed, set),
    remarks: judged.kind === "judged" ? judged.remarks : [],
    eyeRefused: own?.kind === "refused" ? own.say : null,
  };
}

/** The pencil lines that run between two confirmed points where the set has an edge, with the ends that the pencil gave them. */
function drawnLines({ points, lines, frame }: CheckedDrawing, edges: readonly Edge[]): readonly PaperLine[] {
  const reach = (END_MM * frame.ratio) / 1000;
  const placed = new Map(points.flatMap(({ point, at }): [string, Place][] => (at ? [[point, at]] : [])));
  return edges.flatMap(({ from, to }): PaperLine[] => {
    const [a, b] = [placed.get(from), placed.get(to)];
    if (!a || !b) return [];
    const ends = lines.flatMap(([p, q]) => [[p, q] as const, [q, p] as const]);
    const near = ends
      .map(([p, q]) => ({ p, q, far: Math.max(apart(p, a), apart(q, b)) }))
      .filter(({ far }) => far <= reach)
      .sort((one, other) => one.far - other.far)[0];
    return near ? [{ from, to, at: [near.p as PicturePoint, near.q as PicturePoint] }] : [];
  });
}

function apart(a: Place, b: Place): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
