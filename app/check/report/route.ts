import { findExercise, readCourse } from "@/app/_parts/course/course";
import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { readPost } from "@/app/_server/read-post";
import { pagesToPdf } from "@/lib/drawing/paper/pages-to-pdf";
import { atScale } from "@/lib/drawing/practice-sheet/at-scale";
import type { Exercise } from "@/lib/exercise/exercise";
import { readMarksJson } from "@/lib/exercise/read-marks";
import { unaskedMark } from "@/lib/grading/grade-marks";
import { exerciseForOwnEye } from "@/lib/grading/own-eye/exercise-for-own-eye";
import { parseScale } from "@/lib/measure/scale";
import { reportPage } from "./report-page";

const refuse = (status: number, sentence: string) => Response.json({ ok: false, sentence }, { status });

/** The report on confirmed marks as a PDF of one page. Nothing is kept of what comes here. */
export async function POST(request: Request): Promise<Response> {
  const read = await readPost(request);
  if (!read.ok) return refuse(read.status, read.sentence);
  if (!isRecord(read.value)) return refuse(400, "This did not arrive whole. Try once more.");
  const reading = readMarksJson(read.value.marks);
  if (!reading.ok) return refuse(400, `These marks cannot be read: ${reading.problems[0]?.message ?? "unclear"}.`);
  const { marks } = reading;
  const found = findExercise(await readCourse(), marks.exercise);
  if (found.kind !== "found") return refuse(404, "The exercise of these marks is not here.");
  const { exercise } = found;
  if (marks.version !== undefined && marks.version !== exercise.version)
    return refuse(409, "The exercise has changed since these marks were made.");
  if (marks.marks.length === 0 || unaskedMark(exercise, marks) !== null)
    return refuse(400, "These marks are not those that the exercise asks for.");
  const written = marks.scale ?? exercise.scale;
  const ratio = parseScale(written);
  if (ratio === null) return refuse(400, "The scale of these marks cannot be read.");
  const held = atScale(forOwnEye(exercise, read.value.ownEye, ratio), { written, ratio });
  const page = reportPage(held, marks);
  return new Response(new Uint8Array(await pagesToPdf([page], { title: page.title })), {
    headers: {
      "Content-Type": "application/pdf",
      "Content-Disposition": 'attachment; filename="report.pdf"',
      "Cache-Control": "no-store",
    },
  });
}

/** The exercise for the eye that the student drew, where they drew one that can be told. */
function forOwnEye(exercise: Exercise, ownEye: unknown, ratio: number): Exercise {
  if (!isRecord(ownEye)) return exercise;
  const { horizonZ, backWallFootZ } = ownEye;
  if (typeof horizonZ !== "number" || typeof backWallFootZ !== "number") return exercise;
  const own = exerciseForOwnEye(exercise, { horizonZ, backWallFootZ }, ratio);
  return own.kind === "ready" ? own.exercise : exercise;
}
