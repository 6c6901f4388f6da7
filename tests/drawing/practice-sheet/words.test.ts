import { execFileSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { pageMarks } from "@/lib/drawing/paper/page-marks";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";
import { practiceSheetPages } from "@/lib/drawing/practice-sheet/practice-sheet-pages";
import { taskLines } from "@/lib/drawing/practice-sheet/task-lines";
import { SHIPPED } from "@/tests/exercises/shipped";
import { hasPoppler, withPdf } from "../rasterise";
import { shippedExercise } from "./exercises";

/** The words of pages as poppler reads them from their PDF; on a computer without it, as they were set. */
async function wordsOf(pages: readonly PaperPage[]): Promise<string> {
  const words = hasPoppler
    ? await withPdf(pages, (file) => execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }))
    : pages
        .flatMap(pageMarks)
        .flatMap((mark) => (mark.kind === "text" ? [mark.text] : []))
        .join(" ");
  return words.replace(/\s+/g, " ");
}

describe("what a sheet asks", () => {
  it("says where the plan has each point, and of a point above another only its height", () => {
    expect(taskLines(shippedExercise("raking-wall"))).toEqual({
      lead: "Place each point in the picture, in this order, and draw the lines it completes:",
      lines: [
        "The foot of A: 3600 mm stage right, 600 mm upstage.",
        "The top of A: 3600 mm up.",
        "The foot of B: 1200 mm stage right, 4800 mm upstage.",
        "The top of B: 3600 mm up.",
        "The foot of C: 2700 mm stage left, 5700 mm upstage.",
        "The top of C: 3600 mm up.",
      ],
    });
  });

  it("says no dimension where the plan is to be read with the scale rule, but at which scale", () => {
    const { lead, lines } = taskLines({ ...shippedExercise("the-tide-office"), scale: "1/8in=1ft", scaleRatio: 96 });
    expect(lead).toContain(`a scale rule at 1/8" = 1'-0"`);
    expect(lines).toHaveLength(16);
    expect(lines[0]).toBe("The foot of A.");
    expect(lines.join(" ")).not.toMatch(/\d'-/);
  });

  it("gives no place away where the picture is to be read back", () => {
    const { lead, lines } = taskLines(shippedExercise("room-from-its-picture"));
    expect(lead).toContain("mark it on the plan");
    expect(lines).toEqual(["A", "B", "C", "D", "E", "F"].map((name) => `The foot of ${name}.`));
  });

  it("has a line for every mark of every exercise", () => {
    for (const { exercise } of SHIPPED) expect(taskLines(exercise).lines).toHaveLength(exercise.task.marks.length);
  });
});

describe("the words on a sheet", () => {
  it("are text in the PDF: title, lines to write on, the task, the scale, the bar's and the caution", async () => {
    const words = await wordsOf(practiceSheetPages(shippedExercise("raking-wall"), { paper: "a4", copy: 7 }));
    for (const each of [
      "A RAKING WALL",
      "Name",
      "Class",
      "Date",
      "This wall runs neither square nor parallel.",
      "The foot of A: 3600 mm stage right, 600 mm upstage.",
      "SCALE 1:100",
      "raking-wall, version 1, sheet 7",
      "Measure this bar before you draw: it is exactly",
      "A teaching sketch is not a construction drawing:",
      "HORIZON 2600 mm",
      "CVP",
      "PLASTER LINE",
    ])
      expect(words).toContain(each);
    expect(words).not.toContain("Answer key".toUpperCase());
  });

  it("of the key say that it is one, on each of its pages", async () => {
    const [, ...keys] = practiceSheetPages(shippedExercise("raking-wall"), { paper: "letter", key: "all" });
    expect(keys).toHaveLength(3);
    for (const page of keys) expect(await wordsOf([page])).toContain("ANSWER KEY");
  });
});
