import { describe, expect, it } from "vitest";
import { PAPERS, paperSize } from "@/lib/sheet/paper-size";

/** Of an inch, exactly (international yard and pound agreement, 1959). */
const INCH_MM = 25.4;

describe("the papers", () => {
  it.each([
    // ISO 216.
    ["a4", 210, 297],
    ["a3", 297, 420],
    // ANSI/ASME Y14.1: size A is 8 1/2 by 11 in, size B 11 by 17 in.
    ["letter", 8.5 * INCH_MM, 11 * INCH_MM],
    ["tabloid", 11 * INCH_MM, 17 * INCH_MM],
  ] as const)("%s is %d by %d mm, upright", (paper, width, height) => {
    expect(paperSize(paper).widthMm).toBeCloseTo(width, 9);
    expect(paperSize(paper).heightMm).toBeCloseTo(height, 9);
  });

  it("are four", () => expect(PAPERS).toHaveLength(4));
});
