import { describe, expect, it } from "vitest";
import { reportPage } from "@/app/check/report/report-page";
import { POST } from "@/app/check/report/route";
import { displayBounds } from "@/lib/drawing/display-bounds";
import { PAPER_RATIO } from "@/lib/drawing/paper/paper-page";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { MarkSet } from "@/lib/exercise/marks";
import { courseExercise } from "../../browser/drive";

function trueMarks(id: string): MarkSet {
  const exercise = courseExercise(id);
  const points = exercisePoints(exercise);
  const marks = exercise.task.marks.map((point) => {
    const known = points.get(point);
    const at = exercise.task.kind === "picture-to-plan" ? known?.at : known?.picture;
    return { point, at: [at?.[0] ?? 0, at?.[1] ?? 0] as [number, number], with: "paper" as const };
  });
  return { format: "plasterline.marks/1", exercise: id, version: exercise.version, scale: exercise.scale, marks };
}

function ask(body: unknown, headers: Readonly<Record<string, string>> = {}): Promise<Response> {
  return POST(
    new Request("http://127.0.0.1/check/report", {
      method: "POST",
      headers: { "Content-Type": "application/json", Origin: "http://127.0.0.1", Host: "127.0.0.1", ...headers },
      body: JSON.stringify(body),
    }),
  );
}

describe("the report on a checked drawing", () => {
  it.each(["the-tide-office", "where-the-furniture-stood", "nine-lamps"])("is one page of PDF: %s", async (id) => {
    const answer = await ask({ marks: trueMarks(id), ownEye: null });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe("application/pdf");
    const text = Buffer.from(await answer.arrayBuffer()).toString("latin1");
    expect(text.startsWith("%PDF-")).toBe(true);
    expect(text.match(/\/Type \/Page\b(?!s)/g)).toHaveLength(1);
  });

  it.each(["the-tide-office", "where-the-furniture-stood"])("keeps everything on the paper: %s", (id) => {
    const page = reportPage(courseExercise(id), trueMarks(id));
    for (const { list, scaleRatio, at } of page.layers) {
      const mm = scaleRatio / PAPER_RATIO;
      const [left = 0, bottom = 0, right = 0, top = 0] = displayBounds(list, scaleRatio) ?? [];
      expect(at[0] + left / mm).toBeGreaterThan(0);
      expect(at[0] + right / mm).toBeLessThan(page.widthMm);
      expect(at[1] - top / mm).toBeGreaterThan(0);
      expect(at[1] - bottom / mm).toBeLessThan(page.heightMm);
    }
  });

  it.each([
    ["another site asks", { marks: trueMarks("nine-lamps") }, { Origin: "http://elsewhere.example" }, 403],
    ["there are no marks", { marks: { ...trueMarks("nine-lamps"), marks: [] } }, {}, 400],
    ["they are of no exercise here", { marks: { ...trueMarks("nine-lamps"), exercise: "nowhere" } }, {}, 404],
    ["they are of another version", { marks: { ...trueMarks("nine-lamps"), version: 99 } }, {}, 409],
    ["they are no marks", { marks: "A.foot" }, {}, 400],
    ["nothing is sent", null, {}, 400],
    [
      "they name a point that is not asked",
      { marks: { ...trueMarks("nine-lamps"), marks: [{ point: "B.foot", at: [0, 0] }] } },
      {},
      400,
    ],
  ] as const)("is refused when %s", async (_, body, headers, status) => {
    const answer = await ask(body, headers);
    expect(answer.status).toBe(status);
    expect(await answer.json()).toMatchObject({ ok: false, sentence: expect.stringMatching(/\.$/) });
  });
});
